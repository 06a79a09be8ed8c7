package jarwright.process;

import jarwright.quantity.Fraction;

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
  public FormulaLine {
    if (least.signum() < 0 || most.compareTo(least) < 0) {
      throw new IllegalArgumentException(
          "an amount is not below nothing, its range not upside down");
    }
  }

  public boolean isToTaste() {
    return most.signum() == 0;
  }

  public FormulaLine times(int factor) {
    return new FormulaLine(ingredient, least.times(factor), most.times(factor), unit, note);
  }
}
