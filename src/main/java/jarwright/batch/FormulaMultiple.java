package jarwright.batch;

import jarwright.process.Formula;
import jarwright.process.FormulaLine;
import jarwright.process.JarSize;
import jarwright.process.JarYield;
import jarwright.quantity.Fraction;
import jarwright.quantity.Rounding;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A fixed formula made so many times, its proportions untouched.
 *
 * @param times whole; empty where the guide prints no count of jars, so that the cook has to decide
 *     how often she makes it
 */
public record FormulaMultiple(Formula formula, OptionalInt times) {
  /**
   * The formula that leaves the least over, as often as it takes to fill the jars by its lower
   * yield. One that is printed for the very size comes before the others.
   */
  static Optional<FormulaMultiple> filling(List<Formula> printed, int jars, JarSize jar) {
    List<Formula> sameSize =
        printed.stream().filter(f -> f.jars().filter(y -> y.jar() == jar).isPresent()).toList();
    Fraction wanted = jar.pints().times(jars);
    return (sameSize.isEmpty() ? printed : sameSize)
        .stream()
            .map(f -> of(f, wanted))
            .min(
                Comparator.comparing((FormulaMultiple m) -> m.over(wanted))
                    .thenComparing(m -> m.times().orElse(1)));
  }

  private static FormulaMultiple of(Formula formula, Fraction pints) {
    return new FormulaMultiple(
        formula,
        formula
            .jars()
            .map(y -> Rounding.UP.toStep(pints.dividedBy(y.pints()), Fraction.ONE))
            .map(times -> OptionalInt.of(times.numerator().intValueExact()))
            .orElse(OptionalInt.empty()));
  }

  private Fraction over(Fraction pints) {
    return formula
        .jars()
        .map(JarYield::pints)
        .map(each -> each.times(times.orElse(1)).minus(pints))
        .orElse(Fraction.ZERO);
  }

  /** All ingredients for all the times together; as printed where no times are known. */
  public List<FormulaLine> lines() {
    return formula.lines().stream().map(l -> l.times(times.orElse(1))).toList();
  }
}
