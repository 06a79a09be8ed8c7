package jarwright.pantry;

import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Jars were looked over for every sign of spoilage, each answered with yes or no. Any yes throws
 * them away and puts their lot in doubt; all no lifts a doubt that looking can lift.
 *
 * @param signs those that were seen
 * @param note what else is said; lifts nothing
 */
public record Checked(Set<Sign> signs, String note) implements Happening, JarReport {
  public static final String KIND = "checked";

  public Checked {
    signs = Collections.unmodifiableSet(Spoiled.copy(signs));
  }

  /** Whether no sign was seen. */
  public boolean isClean() {
    return signs.isEmpty();
  }

  /** The jar once it has been looked over. */
  public Jar after(Jar jar, OffsetDateTime when) {
    return isClean()
        ? jar.with(Optional.empty())
        : jar.with(new Reason.FoundSpoiled(when, spoiled()));
  }

  /** The same as a finding of spoilage. */
  Spoiled spoiled() {
    return new Spoiled(signs, note, "");
  }

  @Override
  public List<Happening> happenings(Jar jar) {
    return List.of(this);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public Detail detail() {
    Detail detail = Detail.NONE;
    for (Sign sign : Sign.values()) {
      detail = detail.with(sign.word(), Ticked.of(signs.contains(sign)).word());
    }
    return detail.with("note", note);
  }

  static Checked from(Detail detail) {
    Set<Sign> signs = Spoiled.copy(Set.of());
    for (Sign sign : Sign.values()) {
      Ticked ticked = detail.need(sign.word(), Ticked::parse);
      if (ticked == Ticked.BLANK) {
        throw new IllegalArgumentException("the detail " + sign.word() + "= is neither yes nor no");
      }
      if (ticked == Ticked.YES) {
        signs.add(sign);
      }
    }
    return new Checked(signs, detail.text("note"));
  }

  @Override
  public Optional<String> hindrance(Jar jar, OffsetDateTime when) {
    Standing standing = jar.standing();
    boolean inHand = standing.isHere() || standing instanceof Standing.Missing;
    if (!inHand) {
      return Optional.of("is " + standing.kind().text());
    }
    if (!isClean()) {
      return Optional.empty();
    }
    if (jar.isCondemned()) {
      return Optional.of("is to be thrown away, and no look lifts that");
    }
    return jar.doubt().isEmpty() ? Optional.of("is not in doubt") : Optional.empty();
  }
}
