package jarwright.quantity;

import java.math.BigInteger;

/** The direction in which an amount may be rounded, chosen by name at each use. */
public enum Rounding {
  /** Never less than the exact amount: acid, pressure, minutes, produce to buy. */
  UP,
  /** Never more than the exact amount: what fits in, what a case yields. */
  DOWN,
  /** To the closer step, a half going up: only where either side is harmless. */
  NEAREST;

  /** The multiple of a positive step that this direction gives. */
  public Fraction toStep(Fraction amount, Fraction step) {
    Fraction steps = amount.dividedBy(step);
    BigInteger whole =
        switch (this) {
          case UP -> steps.ceiling();
          case DOWN -> steps.floor();
          case NEAREST -> steps.plus(Fraction.of(1, 2)).floor();
        };
    return new Fraction(whole, BigInteger.ONE).times(step);
  }
}
