package jarwright.water;

import jarwright.quantity.Fraction;
import jarwright.quantity.Length;
import jarwright.quantity.Rounding;
import jarwright.quantity.Volume;
import java.math.BigDecimal;
import java.math.MathContext;

/** The way from exact amounts to doubles, and back to steps that a kitchen can measure. */
final class Doubles {
  /** Keeps a value that is a step but for the last bits of its double from moving a whole step. */
  private static final double NOISE = 1e-9;

  private static final Fraction EIGHTH = Fraction.of(1, 8);
  private static final Fraction QUARTER = Fraction.of(1, 4);

  private Doubles() {}

  static double of(Fraction exact) {
    return new BigDecimal(exact.numerator())
        .divide(new BigDecimal(exact.denominator()), MathContext.DECIMAL64)
        .doubleValue();
  }

  static double millimetres(Length length) {
    return of(length.inMillimetres());
  }

  /** A depth in whole eighths of an inch. */
  static Length eighthsOfAnInch(double millimetres, Rounding rounding) {
    double inch = of(Length.Unit.IN.inBase());
    return Length.inches(steps(millimetres / inch, EIGHTH, rounding));
  }

  /** A volume in whole quarters of a quart. */
  static Volume quarterQuarts(double millilitres, Rounding rounding) {
    double quart = of(Volume.Unit.QUART.inBase());
    return Volume.of(steps(millilitres / quart, QUARTER, rounding), Volume.Unit.QUART);
  }

  private static Fraction steps(double amount, Fraction step, Rounding rounding) {
    double count = amount / of(step);
    double whole =
        switch (rounding) {
          case UP -> Math.ceil(count - NOISE);
          case DOWN -> Math.floor(count + NOISE);
          case NEAREST -> Math.rint(count);
        };
    return step.times((long) whole);
  }
}
