package jarwright.day;

import jarwright.process.Cooling;
import java.time.LocalTime;
import java.time.ZonedDateTime;

/**
 * A load with what comes after the canner: it cools 12 to 24 hours (AIB 539 (2015) Guide 1), often
 * into the next day.
 *
 * @param canner number of the canner in the day, from 1; also the number of its burner
 * @param out when the jars stand on the bench
 * @param testFrom when the seals can first be tested
 * @param testBy when they should have been: what did not seal can be canned again up to then
 */
public record PlannedLoad(
    CannerLoad load, int canner, ZonedDateTime out, ZonedDateTime testFrom, ZonedDateTime testBy) {
  private static final int RECAN_HOURS = 24;

  /** Common practice, no source: nobody gets up at night to look at seals. */
  private static final LocalTime EVENING = LocalTime.of(21, 0);

  private static final LocalTime MORNING = LocalTime.of(7, 0);

  /**
   * Whether the 12 hours end at night. The rule allows up to 24: the morning after is soon enough.
   */
  public boolean isTestedInTheMorning() {
    LocalTime from = testFrom.toLocalTime();
    return from.isAfter(EVENING) || from.isBefore(MORNING);
  }

  /**
   * @param processed when the clock has run out: the hours for canning again count from there, as
   *     in the verdict on a jar
   */
  static PlannedLoad of(CannerLoad load, int canner, ZonedDateTime processed, ZonedDateTime out) {
    return new PlannedLoad(
        load, canner, out, out.plus(Cooling.LEAST), processed.plusHours(RECAN_HOURS));
  }
}
