package jarwright.batch;

import jarwright.quantity.Altitude;

/** How long empty jars are boiled before a process of under 10 minutes: AIB 539 (2015) p. 1-14. */
public final class JarSterilising {
  private static final int MINUTES_LOW = 10;
  private static final int STEP_FEET = 1_000;

  private JarSterilising() {}

  /** 10 minutes up to 1,000 ft, and one more for each further 1,000 ft begun. */
  public static int minutesAt(Altitude altitude) {
    int above = Math.max(0, altitude.feetRoundedUp() - STEP_FEET);
    return MINUTES_LOW + (above + STEP_FEET - 1) / STEP_FEET;
  }
}
