package jarwright.day;

import jarwright.process.Cooling;
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

  /**
   * @param processed when the clock has run out: the hours for canning again count from there, as
   *     in the verdict on a jar
   */
  static PlannedLoad of(CannerLoad load, int canner, ZonedDateTime processed, ZonedDateTime out) {
    return new PlannedLoad(
        load, canner, out, out.plus(Cooling.LEAST), processed.plusHours(RECAN_HOURS));
  }
}
