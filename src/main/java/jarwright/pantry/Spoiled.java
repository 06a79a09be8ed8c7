package jarwright.pantry;

import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Jars were found spoiled. They are to be thrown away; what becomes of the others of their lot
 * hangs on its food.
 *
 * @param signs what was seen of them; may be empty where it was told in words alone
 * @param seen the same in words; may be empty
 * @param cause what is wrong with the whole lot, as {@code acid left out}; empty where not known
 */
public record Spoiled(Set<Sign> signs, String seen, String cause) implements Happening, JarReport {
  public static final String KIND = "spoiled";

  public Spoiled {
    signs = Collections.unmodifiableSet(copy(signs));
  }

  /** Told in words alone. */
  public Spoiled(String seen) {
    this(Set.of(), seen, "");
  }

  static Set<Sign> copy(Set<Sign> signs) {
    return signs.isEmpty() ? EnumSet.noneOf(Sign.class) : EnumSet.copyOf(signs);
  }

  @Override
  public Optional<String> hindrance(Jar jar, OffsetDateTime when) {
    if (jar.harm().filter(Reason.FoundSpoiled.class::isInstance).isPresent()) {
      return Optional.of("is recorded as spoiled already");
    }
    return jar.wasPacked() ? Optional.empty() : Optional.of("is " + jar.standing().kind().text());
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
    return Detail.of("seen", seen).with("signs", Sign.text(signs)).with("cause", cause);
  }

  static Spoiled from(Detail detail) {
    return new Spoiled(
        detail.maybe("signs", Sign::parse).orElse(Set.of()),
        detail.text("seen"),
        detail.text("cause"));
  }
}
