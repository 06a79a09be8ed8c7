package jarwright.pantry;

/**
 * Jars from an old list, not made with the program: what vouches for them is told apart.
 *
 * @param known what the list said besides
 */
public record Imported(LotFacts facts, String known) implements Happening {
  public static final String KIND = "imported";

  public Imported {
    if (facts.madeHere()) {
      throw new IllegalArgumentException("what was made here is planned, not brought in");
    }
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public Detail detail() {
    return facts.into(Detail.NONE).with("known", known);
  }

  static Imported from(Detail detail) {
    return new Imported(LotFacts.from(detail, false), detail.text("known"));
  }
}
