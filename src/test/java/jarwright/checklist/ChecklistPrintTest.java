package jarwright.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.PlannedBatch;
import jarwright.day.SectionTimes;
import jarwright.page.PaperSize;
import jarwright.process.AcidKind;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a reader finds on the paper. */
class ChecklistPrintTest {
  @Test
  void anOrdinaryProductFillsTheTwoSidesOfOneSheet() {
    List<PlannedBatch> ordinary =
        List.of(
            Samples.plums(),
            Samples.tomatoes(),
            Samples.beans(),
            Samples.beans().jars(14),
            PlannedBatch.of(
                    "tomatoes-whole-in-water", Method.BOILING_WATER, Pack.HOT, JarSize.QUART)
                .acid(AcidKind.BOTTLED_LEMON_JUICE)
                .jars(14)
                .salted()
                .at("1500 m"),
            PlannedBatch.of(
                "chicken-or-rabbit-bone-in", Method.WEIGHTED_GAUGE, Pack.RAW, JarSize.QUART));
    for (PaperSize paper : PaperSize.NAMED) {
      for (PlannedBatch batch : ordinary) {
        assertEquals(2, Printed.sides(Printed.pdf(paper, false, batch)).size(), batch::toString);
      }
    }
  }

  @Test
  void noSideCanBeMisreadAlone() {
    List<String> sides = Printed.sides(Printed.pdf(Samples.pickles()));
    for (int i = 0; i < sides.size(); i++) {
      String side = sides.get(i);
      assertTrue(side.contains("14-day sweet pickles (whole, strips or slices)"), side);
      assertTrue(side.contains("Side " + (i + 1) + " of " + sides.size()), side);
      assertTrue(side.contains("0 to 1,000 ft"), side);
      assertTrue(side.contains("Raw pack · 9 pints · Boiling water"), side);
      assertTrue(side.contains("AIB 539 (2015) Guide 6"), side);
    }
  }

  @Test
  void everyBatchBeginsOnANewSheet() {
    byte[] pdf = Printed.pdf(PaperSize.LETTER, false, Samples.pickles(), Samples.plums());
    List<String> sides = Printed.sides(pdf);
    assertTrue(sides.get(2).contains("Side 3 of 3"), sides.get(2));
    assertTrue(sides.get(3).isBlank(), sides.get(3));
    assertTrue(sides.get(4).contains("Side 1 of 2"), sides.get(4));
    assertEquals(6, sides.size());
  }

  @Test
  void theFiguresStandWhereTheyAreActedOn() {
    String tomatoes = Printed.words(Printed.pdf(Samples.tomatoes()));
    assertTrue(
        tomatoes.contains("Put citric acid into every empty jar first 1\u20444 tsp 1.25 mL"));
    assertTrue(tomatoes.contains("hold this behind the jar 1\u20442 in 13 mm"));
    assertTrue(tomatoes.contains("Start the timer at the full rolling boil 45 min"));
    assertTrue(tomatoes.contains("Add boiling water around jars, over lids 2 in 51 mm"));
    String beans = Printed.words(Printed.pdf(Samples.beans()));
    assertTrue(beans.contains("Start the timer when the dial shows 13 psi 90 kPa 25 min"));
  }

  @Test
  void theSheetEndsWithDoubtfulJarsAndWhomToAsk() {
    List<String> sides = Printed.sides(Printed.pdf(Samples.plums()));
    String last = sides.get(sides.size() - 1);
    assertTrue(last.contains("Do not taste: leaks, bulges, spurts, smells, mold."), last);
    assertTrue(last.contains("Not sealed: within 24 h (2 h if the process went wrong)"), last);
    assertTrue(last.contains("CDC: leave shut, bag twice, tape, outside trash."), last);
    // AIB 539 (2015) Guide 1, identifying and handling spoiled canned food: containers and lids in
    // a
    // pot, an inch or more under water, lid on, 30 minutes; then discard.
    assertTrue(
        last.contains(
            "USDA: open or leaking? With gloves, boil jar and lid 30 min, 1 in (25 mm) under water,"
                + " pot covered; then throw it away."),
        last);
    assertTrue(last.contains("your local extension service or health authority"), last);
  }

  @Test
  void theFormulaIsPrintedInBothUnitsWithWhatMustNotChange() {
    String pickles = Printed.words(Printed.pdf(Samples.pickles()));
    assertTrue(pickles.contains("Made once. In all it fills about 5 to 9 pints."));
    assertTrue(pickles.contains("The plan asks for 8."));
    assertTrue(pickles.contains("Keep every proportion."), pickles);
    assertTrue(pickles.contains("Never use less of this"), pickles);
    assertTrue(pickles.contains("vinegar (5% acidity) 4 cups 950 mL"), pickles);
    assertTrue(pickles.contains("celery seed 2 tsp 10 mL"), pickles);
  }

  @Test
  void jelliesAreNeverDoubledInOnePot() {
    PlannedBatch jelly =
        PlannedBatch.of(
                "apple-jelly-no-added-pectin", Method.BOILING_WATER, Pack.HOT, JarSize.HALF_PINT)
            .jars(8);
    String words = Printed.words(Printed.pdf(jelly));
    assertTrue(
        words.contains("Cook it 2 times, one pot after the other: never double it in one pot."));
    assertTrue(words.contains("sugar 3 cups 710 mL"), "the amounts of one pot: " + words);
  }

  @Test
  void borrowedTimesOtherPressuresAndDisputedAltitudesAreTold() {
    PlannedBatch crushed =
        PlannedBatch.of("tomatoes-crushed", Method.DIAL_GAUGE, Pack.HOT, JarSize.HALF_PINT)
            .at("2500 ft");
    String words = Printed.words(Printed.pdf(crushed));
    assertTrue(words.contains("12 psi 83 kPa 15 min"), words);
    assertTrue(words.contains("No time is printed for half-pints: the pint time is used"), words);
    assertTrue(words.contains("Also tested for these jars: 7 psi (49 kPa) for 20 min."), words);
    String high = Printed.words(Printed.pdf(Samples.plums().at("8001 ft")));
    assertTrue(high.contains("Above 8,000 ft (2,439 m) one state service prints longer"), high);
    assertFalse(Printed.words(Printed.pdf(Samples.plums())).contains("state service"));
    PlannedBatch sauce = Samples.meatSauce();
    assertFalse(Printed.words(Printed.pdf(sauce.at("8000 ft"))).contains("no upper altitude"));
    String above = Printed.words(Printed.pdf(sauce.at("8001 ft")));
    assertTrue(
        above.contains(
            "The guide gives this pressure no upper altitude, but its dial pressures end at 8,000"
                + " ft (2,439 m): ask your local extension service first."),
        above);
  }

  @Test
  void aSheetToUseAgainHasNoDateAndOneForOnceHas() {
    assertFalse(Printed.words(Printed.pdf(Samples.plums())).contains("2026"));
    ZonedDateTime start = ZonedDateTime.of(2026, 8, 24, 9, 51, 0, 0, ZoneOffset.UTC);
    SectionTimes times =
        new SectionTimes(
            Map.of(
                "fill", List.of(start.minusMinutes(48), start.plusMinutes(40)),
                "clock", List.of(start, start.plusMinutes(88)),
                "next-day", List.of(start.plusHours(12), start.plusHours(15))),
            List.of(start.plusMinutes(30), start.plusMinutes(118)),
            Map.of(),
            false);
    String dated = Printed.words(Printed.dated(Samples.plums(), times));
    assertTrue(dated.contains("Fill, jar by jar about 9:03 AM, 10:31 AM"), dated);
    assertTrue(dated.contains("1: 7 jars ~9:51 AM ~10:21 AM"), dated);
    assertTrue(dated.contains("2: 7 jars ~11:19 AM ~11:49 AM"), dated);
    assertTrue(dated.contains("Next day from Aug 25 12:51 AM"), dated);
    assertTrue(dated.contains("Lot 260824A-"), dated);
    assertTrue(dated.contains("packed August 24, 2026 · use by August 24, 2027"), dated);
  }

  @Test
  void manyLoadsGoOnOverTheSides() {
    String words =
        Printed.words(
            Printed.pdf(
                PlannedBatch.of(
                        "tomatoes-whole-in-water", Method.BOILING_WATER, Pack.RAW, JarSize.QUART)
                    .jars(200)));
    assertTrue(words.contains("Fill one canner load at a time 28 × 7 + 4"), words);
    assertTrue(words.contains("29: 4 jars"), words);
    assertTrue(words.contains(" 199 200 "), words);
  }

  @Test
  void theSameBatchGivesTheSameBytes() {
    byte[] first = Printed.pdf(Samples.beans());
    assertEquals(List.of(box(first)), List.of(box(Printed.pdf(Samples.beans()))));
  }

  private static String box(byte[] pdf) {
    return java.util.Base64.getEncoder().encodeToString(pdf);
  }
}
