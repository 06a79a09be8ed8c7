package jarwright.process;

import jarwright.quantity.Fraction;
import jarwright.quantity.Rounding;
import java.util.List;

/**
 * One ingredient of a fixed formula.
 *
 * @param least as printed, in the unit; 0 where it is used to taste
 * @param most the upper end of a printed range, else the same as the least
 * @param unit a measure, or a word such as {@code each}, {@code stick} or {@code clove}
 * @param note as {@code optional} or {@code 1 per jar}; may be empty
 */
public record FormulaLine(
    String ingredient, Fraction least, Fraction most, String unit, String note) {
  private static final String PER_JAR = "per jar";
  private static final List<String> SAUCES = List.of("molasses sauce", "tomato sauce, version");
  private static final List<String> INSTEAD =
      List.of("alternative to", "instead of", "with the sticks");
  private static final List<String> SPOONS = List.of("tsp", "Tbsp");
  private static final List<String> ACIDS =
      List.of("vinegar", "lemon juice", "lime juice", "lemon or lime juice", "citric acid");

  public FormulaLine {
    if (least.signum() < 0 || most.compareTo(least) < 0) {
      throw new IllegalArgumentException(
          "an amount is not below nothing, its range not upside down");
    }
  }

  public boolean isToTaste() {
    return most.signum() == 0;
  }

  /** Whether the ingredient is one of the acids of known strength that make the food safe. */
  public boolean isAcid() {
    return ACIDS.stream().anyMatch(ingredient::contains);
  }

  /**
   * Which way an amount that has no spoon, jug or scale mark is rounded, so that the food never
   * becomes less acid or less salt than printed: up for these two, down for the food itself.
   */
  public Rounding rounding() {
    if (isAcid() || ingredient.contains("salt")) {
      return Rounding.UP;
    }
    boolean harmless = ingredient.contains("sugar") || SPOONS.contains(unit);
    return harmless ? Rounding.NEAREST : Rounding.DOWN;
  }

  public boolean isOptional() {
    return note.contains("optional");
  }

  /** Whether it is used in place of another line, which is bought. */
  public boolean isInstead() {
    return INSTEAD.stream().anyMatch(note::contains);
  }

  /** The sauce that it belongs to, where the formula has several to choose from; else empty. */
  public String choice() {
    return SAUCES.stream().anyMatch(note::contains) ? note : "";
  }

  /** Whether it is counted by the jar, not by the formula. */
  public boolean isPerJar() {
    return unit.equals(PER_JAR);
  }

  /** Whether the amount may not be changed, not even a little. */
  public boolean isFixed() {
    return !isOptional()
        && (isAcid() || note.contains("reduce") || note.contains("do not increase"));
  }

  /** So many times the amount, exactly; what is counted by the jar stays as it is. */
  public FormulaLine times(Fraction factor) {
    if (isPerJar()) {
      return this;
    }
    return new FormulaLine(ingredient, least.times(factor), most.times(factor), unit, note);
  }
}
