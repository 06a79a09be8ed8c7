package jarwright.lot;

import java.time.LocalDate;

/**
 * The last day on which a jar should be used: a date of quality, as home-canned food is best within
 * a year (CDC, FSIS and several state extension services).
 */
public record UseBy(LocalDate date) {
  /** Months for which a home-canned jar keeps best. */
  public static final int USUAL_MONTHS = 12;

  /** More months than this are refused. */
  public static final int MOST_MONTHS = 18;

  /**
   * The same day of the month, or the last one of a shorter month, which is never later.
   *
   * @throws IllegalArgumentException when months are not 1 to {@value #MOST_MONTHS}
   */
  public static UseBy after(LocalDate packed, int months) {
    if (months < 1 || months > MOST_MONTHS) {
      throw new IllegalArgumentException(
          "months to use-by are 1 to " + MOST_MONTHS + ", not " + months);
    }
    return new UseBy(packed.plusMonths(months));
  }

  /** ISO 8601. */
  @Override
  public String toString() {
    return date.toString();
  }
}
