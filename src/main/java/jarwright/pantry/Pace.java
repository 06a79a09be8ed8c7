package jarwright.pantry;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * How fast a household eats a food: jars eaten over days in which there was some.
 *
 * @param eaten jars
 * @param days in which they were eaten, the first and the last included
 */
public record Pace(int eaten, int days) {
  /** Days of a year, the longest that is looked back. */
  public static final int YEAR = 365;

  /** With fewer days or jars than these, nothing is reckoned: common sense, no source. */
  public static final int LEAST_DAYS = 84;

  public static final int LEAST_JARS = 3;

  private static final int WEEK = 7;

  public Pace {
    if (eaten < LEAST_JARS || days < LEAST_DAYS || days > YEAR) {
      throw new IllegalArgumentException(eaten + " jars in " + days + " days tell nothing");
    }
  }

  /** The pace from the first day to the last; empty where that is too little to tell. */
  static Optional<Pace> of(int eaten, LocalDate first, LocalDate last) {
    long days = ChronoUnit.DAYS.between(first, last) + 1;
    return eaten < LEAST_JARS || days < LEAST_DAYS
        ? Optional.empty()
        : Optional.of(new Pace(eaten, Math.toIntExact(days)));
  }

  /** The first day that is looked at for a pace on the given day. */
  static LocalDate start(LocalDate last) {
    return last.minusDays(YEAR - 1L);
  }

  /** Whole weeks that so many jars last. */
  public int weeks(int jars) {
    return Math.toIntExact((long) jars * days / ((long) eaten * WEEK));
  }

  /** Jars eaten in a year, rounded up. */
  public int jarsInYear() {
    return Math.toIntExact(((long) eaten * YEAR + days - 1) / days);
  }
}
