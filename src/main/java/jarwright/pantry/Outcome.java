package jarwright.pantry;

import java.util.List;

/**
 * How jars came out, and the verdict that was given then: later changes of the rules do not reach
 * it.
 *
 * @param because ids of the rules behind the verdict; none for a sound jar
 */
public record Outcome(
    int load, boolean sealed, Liquid lost, String note, Verdict verdict, List<String> because)
    implements Happening {
  public static final String KIND = "outcome";

  public Outcome {
    because = List.copyOf(because);
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
    Detail seen =
        Detail.of("load", load).with("sealed", sealed ? "yes" : "no").with("lost", lost.word());
    return verdict.into(seen).with("because", String.join(" ", because)).with("note", note);
  }

  static Outcome from(Detail detail) {
    return new Outcome(
        detail.need("load", Integer::valueOf),
        detail.need("sealed", Ticked::parse) == Ticked.YES,
        detail.need("lost", Liquid::parse),
        detail.text("note"),
        Verdict.from(detail),
        detail.maybe("because", t -> List.of(t.split(" "))).orElse(List.of()));
  }
}
