package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.batch.Batch;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a checklist says of the clock is what the day plans. */
class SectionTimesTest {
  private static final DayPlan DAY =
      Days.day(
          Days.kitchen(4, Days.ZONE, Days.POT, Days.DIAL),
          Days.Wish.plums(14).from("08:30"),
          Days.Wish.beans(7));

  private static Batch batch(int load) {
    return DAY.loads().get(load).load().batch();
  }

  @Test
  void theClockOfEachLoadRunsForTheTestedMinutes() {
    for (int load : List.of(0, 2)) {
      SectionTimes times = SectionTimes.of(DAY, batch(load).lot());
      assertEquals(load == 0 ? 2 : 1, times.starts().size());
      for (int i = 0; i < times.starts().size(); i++) {
        Duration runs = Duration.between(times.starts().get(i), times.ends().get(i));
        assertEquals(batch(load).process().minutes(), runs.toMinutes());
      }
    }
  }

  @Test
  void eachLoadGoesThroughTheSectionsInTheirOrder() {
    for (int load : List.of(0, 2)) {
      SectionTimes times = SectionTimes.of(DAY, batch(load).lot());
      for (int i = 0; i < times.starts().size(); i++) {
        List<ZonedDateTime> order = new ArrayList<>();
        for (String section : List.of("produce", "fill", "canner", "clock", "out", "next-day")) {
          order.add(times.due().get(section).get(i));
        }
        for (int j = 1; j < order.size(); j++) {
          assertTrue(!order.get(j).isBefore(order.get(j - 1)), order.toString());
        }
        assertTrue(!times.due().get("before").get(0).isAfter(order.get(0)));
      }
    }
  }
}
