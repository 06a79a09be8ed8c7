package jarwright.process;

import jarwright.quantity.Fraction;

/**
 * One ingredient of a fixed formula.
 *
 * @param amount as printed, in the unit; a word such as {@code each}, {@code stick} or {@code
 *     clove} where the unit is not a measure
 */
public record FormulaLine(String ingredient, Fraction amount, String unit, String note) {}
