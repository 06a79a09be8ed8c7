package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlannedGapTest {
  private static DayPlan day(Days.Wish wish) {
    return Days.day(Days.kitchen(4, Days.ZONE, Days.POT, Days.DIAL), wish.from("08:30"));
  }

  /** Where the jars are ready in time, nothing but the gap lies between two clocks. */
  @Test
  void isWhatLiesBetweenTwoClocks() {
    DayPlan plums = day(Days.Wish.plums(14));
    PlannedGap gap = PlannedGap.of(plums, false).orElseThrow();
    SectionTimes times = SectionTimes.of(plums, plums.loads().get(0).load().batch().lot());
    long between = Duration.between(times.ends().get(0), times.starts().get(1)).toMinutes();
    assertEquals(true, gap.minutes() <= between, gap + " in " + between);
    assertEquals(Optional.empty(), PlannedGap.of(plums, true));
    assertEquals(true, PlannedGap.of(day(Days.Wish.beans(14)), true).isPresent());
  }

  @Test
  void aBatchOfOneLoadHasNone() {
    assertEquals(Optional.empty(), PlannedGap.of(day(Days.Wish.plums(7)), false));
  }

  @Test
  void theRefillTakesUpWhatTheDayReallyTook() {
    PlannedGap gap = new PlannedGap(false, 51, 8);
    assertEquals(Optional.of(19), gap.refillFor(62));
    assertEquals(Optional.of(1), gap.refillFor(44));
    assertEquals(Optional.empty(), gap.refillFor(43));
  }
}
