package jarwright.pantry;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How jars came out, and the verdict that was given then: later changes of the rules do not reach
 * it.
 *
 * @param sealed blank where the load failed, and the seals were not looked at
 * @param lost empty there
 * @param cloudy the canner's water, where it was told with the seals
 * @param otherwise what else was seen with the seals
 * @param because ids of the rules behind the verdict; none for a sound jar
 */
public record Outcome(
    int load,
    Ticked sealed,
    Optional<Liquid> lost,
    Ticked cloudy,
    Set<Otherwise> otherwise,
    String note,
    Verdict verdict,
    List<String> because)
    implements Happening {
  public static final String KIND = "outcome";

  public Outcome {
    because = List.copyOf(because);
    otherwise = Set.copyOf(otherwise);
    if ((sealed == Ticked.BLANK) != lost.isEmpty()) {
      throw new IllegalArgumentException("seal and liquid are looked at together");
    }
    boolean shelved = !verdict.grade().isStricterThan(Grade.USE_FIRST);
    if (shelved && sealed != Ticked.YES) {
      throw new IllegalArgumentException("a jar goes on the shelf only where its seal was tested");
    }
  }

  /** A jar of which nothing else was seen. */
  public Outcome(
      int load, boolean sealed, Liquid lost, String note, Verdict verdict, List<String> because) {
    this(
        load, Ticked.of(sealed), Optional.of(lost), Ticked.BLANK, Set.of(), note, verdict, because);
  }

  /** Whether the verdict lets the jar stand on a shelf. */
  public boolean shelved() {
    return !verdict.grade().isStricterThan(Grade.USE_FIRST);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public Detail detail() {
    String others =
        EnumSet.allOf(Otherwise.class).stream()
            .filter(otherwise::contains)
            .map(Otherwise::word)
            .collect(Collectors.joining(" "));
    Detail seen =
        Detail.of("load", load)
            .with("sealed", sealed.word())
            .with("lost", lost.map(Liquid::word))
            .with("cloudy", cloudy.word())
            .with("otherwise", others);
    return verdict.into(seen).with("because", String.join(" ", because)).with("note", note);
  }

  static Outcome from(Detail detail) {
    return new Outcome(
        detail.need("load", Integer::valueOf),
        Ticked.parse(detail.text("sealed")),
        detail.maybe("lost", Liquid::parse),
        Ticked.parse(detail.text("cloudy")),
        detail.maybe("otherwise", Outcome::words).orElse(Set.of()),
        detail.text("note"),
        Verdict.from(detail),
        detail.maybe("because", t -> List.of(t.split(" "))).orElse(List.of()));
  }

  private static Set<Otherwise> words(String text) {
    return Arrays.stream(text.split(" ")).map(Otherwise::parse).collect(Collectors.toSet());
  }
}
