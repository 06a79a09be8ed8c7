package jarwright.water;

import jarwright.process.TestedProcess;
import jarwright.quantity.Fraction;
import jarwright.quantity.Length;

/** Depth of water that must stand over the lids all through a boiling: AIB 539 (2015) Guide 1. */
public final class WaterOverLids {
  private static final Length USUAL = Length.inches(Fraction.ONE);
  private static final Length LONG = Length.inches(Fraction.of(2));

  /** Texts say "over 30" or "30 or longer"; the deeper water is used from 30 on. */
  private static final int LONG_FROM_MINUTES = 30;

  private WaterOverLids() {}

  public static Length of(TestedProcess process) {
    return process.minutes() >= LONG_FROM_MINUTES ? LONG : USUAL;
  }
}
