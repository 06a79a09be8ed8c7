package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.batch.Batch;
import jarwright.files.GelPointTable;
import jarwright.page.Wording;
import jarwright.problem.Refused;
import jarwright.process.GelPoints;
import jarwright.process.JarSize;
import jarwright.process.Pack;
import jarwright.process.PreparationStep;
import jarwright.render.WordBundle;
import java.io.IOException;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a checklist says of the clock is what the day plans. */
class SectionTimesTest {
  private static final DayPlan DAY =
      Days.day(
          Days.kitchen(4, Days.ZONE, Days.POT, Days.DIAL),
          Days.Wish.plums(14).from("08:30"),
          Days.Wish.beans(7));

  private static final GelPoints GEL = gel();

  private static GelPoints gel() {
    try {
      return GelPointTable.read();
    } catch (IOException | Refused e) {
      throw new AssertionError(e);
    }
  }

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

  /** AIB 539 (2015) Guide 6: the cucumbers stand 12 hours in the brine. */
  @Test
  void theSheetSaysWhenTheWorkAheadBeginsAndWhenEachWaitIsOver() {
    DayPlan day =
        Days.day(
            Days.kitchen(4, Days.ZONE, Days.POT),
            Days.Wish.of("quick-fresh-pack-dill-pickles", Pack.RAW, JarSize.QUART, 7)
                .from("08:30"));
    Batch dill = day.loads().get(0).load().batch();
    SectionTimes times = SectionTimes.of(day, dill.lot());
    Ahead ahead = day.ahead().get(0);
    assertEquals(List.of(ahead.start()), times.due().get("ahead"));
    assertEquals(Map.of(ahead.step(), ahead.until()), times.ready());
    assertEquals(ahead.waits().plusHours(12), ahead.until());
    PreparationStep stand = Days.steps(dill.product()).get(ahead.step());
    Wording words = WordBundle.load("en");
    CannerFigures canner = new CannerFigures(List.of(7), Optional.empty());
    List<Section> sections =
        new Checklist(
                dill,
                Days.steps(dill.product()),
                GEL,
                canner,
                words,
                step -> step.equals(stand) ? Optional.of("until 8:30 AM") : Optional.empty())
            .sections();
    List<String> figures =
        sections.get(0).steps().stream()
            .flatMap(s -> s.figure().stream())
            .map(Figure::main)
            .toList();
    assertEquals("ahead", sections.get(0).id());
    assertEquals(List.of("until 8:30 AM"), figures);
  }

  @Test
  void sealsAreDueInTheMorningWhereTwelveHoursEndAtNight() {
    assertTrue(SectionTimes.of(DAY, batch(0).lot()).inTheMorning());
    DayPlan early =
        Days.day(Days.kitchen(4, Days.ZONE, Days.POT), Days.Wish.plums(7).from("05:00"));
    assertFalse(SectionTimes.of(early, early.loads().get(0).load().batch().lot()).inTheMorning());
  }
}
