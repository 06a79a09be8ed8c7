package jarwright.pantry;

/**
 * Jars were found spoiled. They are to be thrown away; the others of their lot are to be looked at.
 *
 * @param seen the sign of spoilage
 */
public record Spoiled(String seen) implements Happening {
  public static final String KIND = "spoiled";

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public Detail detail() {
    return Detail.of("seen", seen);
  }

  static Spoiled from(Detail detail) {
    return new Spoiled(detail.text("seen"));
  }
}
