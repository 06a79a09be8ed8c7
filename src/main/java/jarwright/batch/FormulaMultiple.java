package jarwright.batch;

import jarwright.process.Formula;
import jarwright.process.FormulaLine;
import jarwright.process.JarSize;
import jarwright.quantity.Fraction;
import jarwright.quantity.Rounding;
import java.util.List;

/**
 * A fixed formula made so many times, its proportions untouched.
 *
 * @param times whole
 */
public record FormulaMultiple(Formula formula, int times) {
  /** As often as it takes to fill the jars by the formula's lower yield. */
  static FormulaMultiple filling(Formula formula, int jars, JarSize jar) {
    Fraction wanted = jar.pints().times(jars);
    Fraction each = formula.jar().pints().times(formula.fewest());
    Fraction times = Rounding.UP.toStep(wanted.dividedBy(each), Fraction.ONE);
    return new FormulaMultiple(formula, times.numerator().intValueExact());
  }

  /** All ingredients for all the times together. */
  public List<FormulaLine> lines() {
    return formula.lines().stream()
        .map(l -> new FormulaLine(l.ingredient(), l.amount().times(times), l.unit(), l.note()))
        .toList();
  }
}
