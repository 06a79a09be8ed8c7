package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.process.AcidKind;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.quantity.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Order of work and figures: AIB 539 (2015) Guide 1, pp. 1-14 to 1-27. */
class BoilingWaterStepsTest {
  private static PlannedBatch plums() {
    return PlannedBatch.of("plums-halved-or-whole", Method.BOILING_WATER, Pack.RAW, JarSize.QUART)
        .cover("light");
  }

  /** What the plan says that there is stands in the first box, in the plan's own unit. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          35 lb   | - Set out produce for 11 to 13 jars [35 lb (15.9 kg)]
          18.5 kg | - Set out produce for 13 to 15 jars [18.5 kg (40-3/4 lb)]
          """)
  void theFirstBoxIsTheProduceThatThereIs(String weight, String first) {
    PlannedBatch tomatoes =
        PlannedBatch.of("tomatoes-crushed", Method.BOILING_WATER, Pack.HOT, JarSize.QUART)
            .acid(AcidKind.CITRIC_ACID)
            .produce(weight);
    assertEquals(first, Outline.section("before", tomatoes.sections()).get(0));
  }

  @Test
  void rawPlumsInQuartsFromTheKettleToTheShelf() {
    assertEquals(
        """
        # Before the stove is on
        - Set out produce, about [28 lb (12.8 kg)]
        - Altitude is [420 m (1,378 ft)]
        - Feel each rim for nicks [14]
        - Count new lids and bands [14]
        - Lay out lifter, funnel, bubble tool, cloths, timer
        # Jars and lids
        - Half-fill the canner, rack in
        - Heat water to [140 °F (60 °C)] !Boiling water cracks raw-packed jars.
        - Wash jars in hot suds, rinse
        - Keep jars hot until filled !Hot food cracks a cold jar.
        - Get lids ready as the lid box says
        # Produce
        - Measure for the syrup: 4-1/2 cups (1.05 L) sugar in 18 cups (4.25 L) water
        - Heat the light syrup, stirring until any sugar dissolves; cover it and keep it hot
        - Stem and wash the plums
        - Prick plums left whole on 2 sides with a fork, so that they do not split
        - Halve and pit freestone plums, if you want halves
        - Bring the light syrup to a boil
        # Fill, jar by jar
        - Fill one canner load at a time [7 + 7]
        - Fill the jars with raw plums, packing them firmly
        - Cover the plums with hot light syrup
        | Leave headspace [1/2 in (13 mm)]
        - Run the bubble tool around the inside; top up !No metal: it cracks jars.
        - Wipe the rim with a clean damp cloth
        - Put on lid and band, fingertip-tight
        # Canner
        - Stand the jars upright on the rack
        - Add boiling water around jars, over lids [2 in (51 mm)]
        - Put the canner lid on
        - Turn the heat to its highest
        - Wait for a full rolling boil !Bubbles at the edge are not a boil.
        # Processing time
        = Start the timer at the full rolling boil [30 min] [7, 7] [Full boil at, Start, End]\
         !Boil lost? Bring back the full boil and start the whole time over.
        ~ Keep the canner lid on and the boil full to the end
        ~ Keep the jars under water: add boiling water if it drops
        - At the end, turn the heat off
        # Take out and cool
        ~ Take canner lid off; wait [5 min]
        - Lift jars upright onto a towel
        - Stand 1 in (25 mm) apart
        - Leave the bands alone !Tightening breaks the seal.
        ~ Cool, no drafts [12 to 24 h]
        # Next day
        - Take the bands off
        - Press each lid: it must not move
        - Tap each lid: it must ring clear
        - At eye level, lid curves down
        - Wash and dry sealed jars
        - Label each sealed jar
        - Store cool, dark and dry, 50 to 70 °F (10 to 21 °C)
        - Write down [Sealed, Not sealed, Jars low on liquid, By]
        """,
        Outline.of(plums().jars(14).sections()));
  }

  @Test
  void acidGoesIntoEveryEmptyJarAndIsTickedJarByJar() {
    List<String> fill =
        section(
            "fill",
            PlannedBatch.of("tomatoes-whole-in-water", Method.BOILING_WATER, Pack.RAW, JarSize.PINT)
                .acid(AcidKind.CITRIC_ACID)
                .salted());
    assertEquals(
        "- Put citric acid into every empty jar first [1/4 tsp (1.25 mL)] x9"
            + " !Without acid it is not safe. Check off each jar.",
        fill.get(0));
    assertEquals("- Salt, optional, for taste [1/2 tsp (2.5 mL)]", fill.get(1));
  }

  @Test
  void jarsAreBoiledFirstOnlyWhereTheProcessIsUnderTenMinutes() {
    PlannedBatch low = jelly().at("500 ft");
    assertEquals(
        List.of(
            "- Half-fill the canner, rack in",
            "- Heat water to [180 °F (82 °C)]",
            "- Wash jars in hot suds, rinse",
            "~ Boil the empty jars upright, 1 in (25 mm) under water [10 min]",
            "- Keep them there until filled",
            "- Get lids ready as the lid box says"),
        section("jars", low));
    assertTrue(section("clock", low).get(0).contains("[5 min]"));

    PlannedBatch high = jelly().at("1800 ft");
    assertTrue(section("jars", high).stream().noneMatch(s -> s.contains("Boil the empty jars")));
    assertTrue(section("clock", high).get(0).contains("[10 min]"));
  }

  @Test
  void waterStandsAnInchOverTheLidsAndTwoFromThirtyMinutesOn() {
    assertTrue(section("canner", plums().at("300 ft")).contains(cover("1 in (26 mm)")));
    assertTrue(section("canner", plums().at("1001 ft")).contains(cover("2 in (51 mm)")));
  }

  @Test
  void theJellyingPointFollowsTheAltitudeAsFarAsTheGuideGoes() {
    assertTrue(section("produce", jelly().at("500 ft")).contains(boil("220 °F (104 °C)")));
    assertTrue(section("produce", jelly().at("5400 ft")).contains(boil("211 °F (99 °C)")));
    assertTrue(section("produce", jelly().at("8100 ft")).contains(boil("the jellying point")));
  }

  @Test
  void measuredWaterIsToldInsteadOfTheRule() {
    Figure water = new Figure("7 quarts", "6.6 L");
    assertEquals(
        "- Put in rack and water [7 quarts (6.6 L)]", section("jars", plums().water(water)).get(0));
  }

  @Test
  void aProductThatMakesItsOwnSyrupIsToldOfNoOther() {
    PlannedBatch figs =
        PlannedBatch.of("figs", Method.BOILING_WATER, Pack.HOT, JarSize.PINT).cover("light");
    assertTrue(section("produce", figs).stream().noneMatch(s -> s.contains("Boil the syrup")));
  }

  @Test
  void aHouseholdReadsItsOwnUnits() {
    assertTrue(section("canner", plums().shownIn(Units.METRIC)).contains(cover("51 mm")));
    assertTrue(section("canner", plums().shownIn(Units.US)).contains(cover("2 in")));
  }

  private static PlannedBatch jelly() {
    return PlannedBatch.of(
        "apple-jelly-no-added-pectin", Method.BOILING_WATER, Pack.HOT, JarSize.HALF_PINT);
  }

  private static String cover(String depth) {
    return "- Add boiling water around jars, over lids [" + depth + "]";
  }

  private static String boil(String to) {
    return "- Boil hard to " + to + ", or until the jelly sheets off a spoon";
  }

  private static List<String> section(String id, PlannedBatch batch) {
    return Outline.section(id, batch.sections());
  }
}
