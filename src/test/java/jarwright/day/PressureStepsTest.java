package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.quantity.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Order of work: AIB 539 (2015) Guide 1; fish routines: Guide 5, pp. 5-10 to 5-13. */
class PressureStepsTest {
  @Test
  void aDialGaugeIsHeldAtItsFigureOrAbove() {
    List<Section> beans =
        PlannedBatch.of("beans-snap-italian", Method.DIAL_GAUGE, Pack.HOT, JarSize.QUART)
            .at("5400 ft")
            .sections();
    assertEquals(
        List.of(
            "- Set out produce, about [14 lb (6.4 kg)]",
            "- Altitude is [5,400 ft (1,646 m)]",
            "- Check gauge: tested this year !Off by more than 2 psi? Replace the gauge.",
            "- Check vent pipe, gasket, rim",
            "- Feel each rim for nicks [7]",
            "- Count new lids and bands [7]",
            "- Lay out lifter, funnel, bubble tool, cloths, timer"),
        Outline.section("before", beans));
    assertEquals(
        List.of(
            "- Fasten the canner lid; petcock open or weight off",
            "- Heat on high until steam blows in a steady jet",
            "~ Let steam blow, every load [10 min]",
            "- Close the petcock or put the weight on"),
        Outline.section("canner", beans));
    assertEquals(
        List.of(
            "- Bring the dial up to the pressure below, in 3 to 5 min",
            "= Start the timer when the dial shows [13 psi (90 kPa)] [25 min] [7]"
                + " [Vent from, Start, End, Lowest psi]"
                + " !Below it, even once? Bring the pressure back and start the whole time over.",
            "~ Hold it there or a little above; change the heat a little at a time",
            "- At the end, turn the heat off"),
        Outline.section("clock", beans));
    assertEquals(
        List.of(
            "~ Wait for [0 psi] !Never force-cool the canner.",
            "- Open petcock or take weight off",
            "~ Wait, canner lid on [10 min]",
            "- Open canner lid away from you",
            "- Lift jars upright onto a towel",
            "- Stand 1 in (25 mm) apart",
            "- Leave the bands alone !Tightening breaks the seal.",
            "~ Cool, no drafts [12 to 24 h]"),
        Outline.section("out", beans));
  }

  @ParameterizedTest
  @CsvSource({"US,13 psi,''", "METRIC,13 psi,90 kPa", "BOTH,13 psi,90 kPa"})
  void thePressureIsSaidAsTheGaugeShowsIt(Units units, String main, String also) {
    List<Section> beans =
        PlannedBatch.of("beans-snap-italian", Method.DIAL_GAUGE, Pack.HOT, JarSize.QUART)
            .at("5400 ft")
            .shownIn(units)
            .sections();
    List<Figure> pressures =
        beans.stream()
            .flatMap(s -> s.steps().stream())
            .filter(Step.Clock.class::isInstance)
            .map(s -> ((Step.Clock) s).pressure().orElseThrow())
            .toList();
    assertEquals(List.of(new Figure(main, also)), pressures);
  }

  @Test
  void aWeightedGaugeIsHeardAndNotRead() {
    List<Section> chicken =
        PlannedBatch.of("chicken-or-rabbit-bone-in", Method.WEIGHTED_GAUGE, Pack.RAW, JarSize.QUART)
            .at("1200 ft")
            .sections();
    assertTrue(
        Outline.section("before", chicken).stream().noneMatch(s -> s.contains("gauge")),
        "there is no dial to be tested");
    assertEquals(
        "- Put on the weight for the pressure below", last(Outline.section("canner", chicken)));
    assertEquals(
        List.of(
            "- Wait until the weight moves as its maker says, 3 to 5 min",
            "= Start the timer, weight moving at [15 psi (104 kPa)] [75 min] [7]"
                + " [Vent from, Start, End, Kept moving]"
                + " !Did the weight stop, even once? Bring the pressure back and start the whole"
                + " time over.",
            "~ Keep the weight moving as its maker says",
            "- At the end, turn the heat off"),
        Outline.section("clock", chicken));
  }

  @Test
  void fishInQuartsIsHeatedAndVentedInItsOwnWay() {
    List<Section> fish =
        PlannedBatch.of("fish-in-quart-jars", Method.DIAL_GAUGE, Pack.RAW, JarSize.QUART)
            .at("1500 ft")
            .sections();
    assertEquals(
        List.of(
            "- Pour 3 quarts (2.85 L) water into the pressure canner",
            "- Stand the jars upright on the rack",
            "- Fasten the canner lid; petcock open or weight off",
            "~ Heat on high 20 min",
            "- Go on heating, if need be, until steam comes in a steady jet",
            "~ Vent 10 min more from the steady jet"
                + " !Heating and venting together never take less than half an hour.",
            "- Check the clock: heating and venting took 30 min or more",
            "- Close the petcock or put the weight on"),
        Outline.section("canner", fish));
    assertTrue(Outline.section("clock", fish).get(1).contains("[11 psi (76 kPa)] [160 min]"));
    assertEquals(1, count(fish, "160"), "the time stands in one place");
  }

  @Test
  void smokedFishGoesIntoCoolWater() {
    List<Section> fish =
        PlannedBatch.of("fish-smoked", Method.WEIGHTED_GAUGE, Pack.RAW, JarSize.PINT)
            .at("300 ft")
            .sections();
    assertFalse(Outline.of(fish).contains("heat water"), "nothing is preheated");
    assertEquals(
        List.of(
            "- Use a pressure canner of 16 to 22 quarts (15.15 to 20.8 L)"
                + " !Never a smaller pressure saucepan: there is no tested time for one.",
            "- Pour 4 quarts (3.8 L) cool tap water into the canner"
                + " !No less water, and do not heat it before the process starts.",
            "- Stand the jars upright on the rack",
            "- Fasten the canner lid; weight off",
            "- Heat on high until steam blows in a steady jet",
            "~ Let steam blow, every load [10 min]",
            "- Put on the weight for the pressure below"),
        Outline.section("canner", fish));
    assertTrue(Outline.section("clock", fish).get(1).contains("[10 psi (69 kPa)] [110 min]"));
  }

  private static long count(List<Section> sections, String figure) {
    return Outline.of(sections).lines().filter(l -> l.contains(figure)).count();
  }

  private static String last(List<String> lines) {
    return lines.get(lines.size() - 1);
  }
}
