package jarwright.batch;

import static jarwright.batch.Plans.BIG_POT;
import static jarwright.batch.Plans.DIAL_POT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import jarwright.lot.LotCode;
import jarwright.process.Book;
import jarwright.process.JarSize;
import jarwright.process.Source;
import jarwright.process.Syrup;
import jarwright.process.SyrupRow;
import jarwright.quantity.Altitude;
import jarwright.quantity.Mass;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import jarwright.quantity.Volume;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much of everything a batch takes. */
class BatchAmountsTest {
  private static final Style BOTH = Style.english(Units.BOTH);

  @ParameterizedTest(name = "{0} {1} jars of tomatoes with {2}: {3} each, {4} in all")
  @CsvSource({
    "7, quart, citric acid, 1/2 tsp (2.5 mL), 3-1/2 tsp (17.5 mL)",
    "9, pint, citric acid, 1/4 tsp (1.25 mL), 2-1/4 tsp (12.5 mL)",
    "9, pint, bottled lemon juice, 1 Tbsp (15 mL), 1/2 cup + 1 Tbsp (135 mL)",
    "7, quart, vinegar 5%, 4 Tbsp (60 mL), 1-3/4 cups (415 mL)",
    "1, half-pint, citric acid, 1/8 tsp (0.75 mL), 1/8 tsp (0.75 mL)"
  })
  void acid(int jars, String jar, String kind, String each, String total) {
    AcidPerJar acid =
        Plans.of(
                "product: tomatoes-whole-in-water; pack: raw; jars: "
                    + jars
                    + "; jar: "
                    + jar
                    + "; acid: "
                    + kind,
                BIG_POT)
            .batch()
            .acid()
            .orElseThrow();
    assertEquals(each, acid.each().text(BOTH, Rounding.UP));
    assertEquals(total, acid.total().text(BOTH, Rounding.UP));
  }

  /** AIB 539 (2015) p. 3-10: 21 lb for 7 quarts, 13 lb for 9 pints, 15 to 21 quarts of 53 lb. */
  @ParameterizedTest(name = "tomatoes for {0} {1} jars: {2}")
  @CsvSource({
    "7, quart, 17-2/3 lb to 21 lb to 24-11/15 lb",
    "9, pint, 11-5/14 lb to 13 lb to 15-9/10 lb",
    "1, quart, 2-11/21 lb to 3 lb to 3-8/15 lb"
  })
  void produceForJars(int jars, String jar, String range) {
    ProduceRange produce =
        Plans.of(
                "product: tomatoes-whole-in-water; pack: raw; acid: citric acid; jars: "
                    + jars
                    + "; jar: "
                    + jar,
                BIG_POT)
            .batch()
            .produce()
            .orElseThrow();
    assertEquals(range, produce.least() + " to " + produce.about() + " to " + produce.most());
  }

  @ParameterizedTest(name = "{0} of tomatoes in {1} jars: {2}")
  @CsvSource({
    "21 lb, quart, 5 to 7 to 8",
    "13 lb, pint, 7 to 9 to 10",
    "53 lb, quart, 15 to 17 to 21",
    "18 kg, quart, 11 to 13 to 15",
    "2-2/3 lb, quart, 0 to 0 to 1"
  })
  void jarsFromProduce(String produce, String jar, String range) {
    Batch batch =
        Plans.of(
                "product: tomatoes-whole-in-water; pack: raw; acid: citric acid; produce: "
                    + produce
                    + "; jar: "
                    + jar,
                BIG_POT)
            .batch();
    JarRange jars = batch.expected();
    assertEquals(range, jars.fewest() + " to " + jars.likely() + " to " + jars.most());
    assertEquals(jars.most(), batch.jars(), "jars are made ready for the best yield");
    assertEquals(jars.most(), batch.acid().orElseThrow().jars(), "and so is their acid");
  }

  @Test
  void aFormulaTakesTheWeightThatItPrintsAndNothingIsKnownWhereNoneIsPrinted() {
    assertEquals(
        Mass.parse("8 lb"),
        Plans.of("product: apple-butter; jar: pint", BIG_POT)
            .batch()
            .produce()
            .filter(ProduceRange::isExact)
            .orElseThrow()
            .most());
    assertEquals(
        Optional.empty(),
        Plans.of("product: chile-salsa-ii; jar: pint", BIG_POT).batch().produce());
  }

  /**
   * AIB 539 (2015): p. 3-8 a bushel of 53 lb gives 17 to 20 quarts of crushed tomatoes, 2-3/4 lb a
   * quart; p. 3-5 juice 15 to 18, 3-1/4 lb; p. 2-9 apricots 20 to 25 of 50 lb, 2-1/4 lb; p. 4-14 a
   * bag of 50 lb of white potatoes 18 to 22.
   */
  @ParameterizedTest(name = "{1} of {0}: {2}")
  @CsvSource({
    "tomatoes-crushed, 53 lb, 17 to 19 to 20",
    "tomatoes-crushed, 35 lb, 11 to 12 to 13",
    "tomato-juice, 53 lb, 15 to 16 to 18",
    "tomato-juice, 65 lb, 18 to 20 to 22",
    "apricots-halved-or-sliced, 50 lb, 20 to 22 to 25",
    "potatoes-white, 50 lb, 18 to 18 to 22"
  })
  void produceAtHandIsJudgedByTheBushelAndTheAverage(String id, String produce, String range) {
    JarRange jars =
        ProducePerJar.of(Book.product(id).produce(), JarSize.QUART)
            .orElseThrow()
            .fromProduce(Mass.parse(produce));
    assertEquals(range, jars.fewest() + " to " + jars.likely() + " to " + jars.most());
  }

  /** AIB 539 (2015) p. 2-5: medium syrup for 9 pints is 5-1/4 cups of water, 2-1/4 of sugar. */
  @ParameterizedTest(name = "{0} syrup for {1} {2} jars: {3} water, {4} sugar")
  @CsvSource({
    "medium, 9, pint, 5-1/4 cups, 2-1/4 cups",
    "medium, 18, pint, 10-1/2 cups, 4-1/2 cups",
    "medium, 1, pint, 3/4 cup, 6 Tbsp",
    "very-light, 1, pint, 3/4 cup, 2 Tbsp",
    "very-light, 7, quart, 10-1/2 cups, 1-1/4 cups",
    "heavy, 5, quart, 5-3/4 cups, 3-3/4 cups + 3 Tbsp",
    "very-light, 1, half-pint, 1/2 cup, 1 Tbsp"
  })
  void syrup(String strength, int jars, String jar, String water, String sugar) {
    Batch batch =
        Plans.of(
                "product: plums-halved-or-whole; pack: raw; syrup: "
                    + strength
                    + "; jars: "
                    + jars
                    + "; jar: "
                    + jar,
                BIG_POT)
            .batch();
    SyrupNeed need = batch.syrup().orElseThrow();
    assertEquals(water, need.water().text(Style.english(Units.US), Rounding.UP));
    assertEquals(sugar, need.sugar().text(Style.english(Units.US), Rounding.UP));
    assertEquals(strength, need.syrup().id());
    assertEquals("AIB 539 (2015) p. 2-5", need.source());
  }

  @Test
  void sugarIsRoundedToTheTablespoonBelowFourCupsAndToTheQuarterCupFromThere() {
    assertEquals("63 Tbsp", sugar("63/16 cup"));
    assertEquals("64 Tbsp", sugar("255/64 cup"));
    assertEquals("4 cup", sugar("4 cup"));
    assertEquals("4-1/4 cup", sugar("65/16 cup"));
  }

  private static String sugar(String sugar) {
    Volume one = Volume.parse("1 cup");
    SyrupRow row =
        new SyrupRow(
            Syrup.LIGHT, 20, 9, JarSize.PINT, one, Volume.parse(sugar), new Source("p. 2-5"));
    return SyrupNeed.of(row, 9, JarSize.PINT).sugar().toString();
  }

  @Test
  void waterAndJuiceNeedNoSugar() {
    for (String cover : List.of("water", "juice")) {
      assertEquals(
          Optional.empty(),
          Plans.of("product: plums-halved-or-whole; pack: raw; jar: pint; syrup: " + cover, BIG_POT)
              .batch()
              .syrup());
    }
  }

  @ParameterizedTest(name = "{0}: salt {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          product: asparagus; pack: raw; jar: quart; salt: yes          | 1 tsp
          product: asparagus; pack: raw; jar: pint; salt: yes           | 1/2 tsp
          product: asparagus; pack: raw; jar: quart                     | none
          product: plums-halved-or-whole; pack: raw; jar: pint; salt: yes; method: boiling-water | none
          product: pickled-bell-peppers; jar: pint                      | 1/2 tsp
          product: soups; jar: pint; salt: yes                          | none
          """)
  void saltIsForTasteWhereAskedAndAlwaysWhereTheFormulaHasIt(String plan, String salt) {
    assertEquals(
        salt,
        Plans.of(plan, BIG_POT, DIAL_POT).batch().salt().map(Volume::toString).orElse("none"));
  }

  /** AIB 539 (2015) p. 1-14: 10 minutes, and one more for each further 1,000 ft. */
  @ParameterizedTest(name = "at {0} jars are boiled {1} min")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          -1,000 ft  | 10
          0 ft       | 10
          1,000 ft   | 10
          304.8 m    | 10
          1,000.5 ft | 11
          1,001 ft   | 11
          2,000 ft   | 11
          2,001 ft   | 12
          420 m      | 11
          12,000 ft  | 21
          """)
  void emptyJarsAreBoiledAMinuteLongerForEachThousandFeetBegun(String altitude, int minutes) {
    assertEquals(minutes, JarSterilising.minutesAt(Altitude.parse(altitude)));
  }

  @ParameterizedTest(name = "apple butter at {0}: {1} min, empty jars boiled {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0 ft     | 5  | 10
          1,001 ft | 10 | none
          """)
  void onlyJarsForLessThanTenMinutesAreBoiledFirst(String altitude, int minutes, String boiled) {
    Batch batch =
        Plans.of("product: apple-butter; jar: pint; altitude: " + altitude, BIG_POT).batch();
    assertEquals(minutes, batch.process().minutes());
    assertEquals(boiled, batch.sterilise().map(String::valueOf).orElse("none"));
  }

  @ParameterizedTest(name = "kept {0} months: use by {1}")
  @CsvSource({"12, 2027-08-24", "6, 2027-02-24", "18, 2028-02-24"})
  void useByIsTheHouseholdsMonthsAfterPacking(int months, String useBy) {
    Batch batch = Plans.of("product: applesauce; jar: pint; months: " + months, BIG_POT).batch();
    assertEquals(useBy, batch.useBy().toString());
    assertEquals(new LotCode(Plans.DAY, 'A'), batch.lot());
  }

  @Test
  void aBatchNeedsATestedProcess() {
    Batch batch = Plans.of("product: applesauce; jar: pint", BIG_POT).batch();
    var closed =
        new jarwright.process.TableRow(
            "applesauce",
            batch.method(),
            batch.pack(),
            batch.jar(),
            batch.row().band(),
            Optional.empty(),
            batch.row().source(),
            "");
    assertEquals(
        "a batch needs a tested process",
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    new Batch(
                        batch.lot(),
                        batch.plan(),
                        batch.kitchen(),
                        batch.canner(),
                        batch.pack(),
                        closed,
                        batch.offered(),
                        batch.printedFor(),
                        batch.jars(),
                        batch.expected(),
                        batch.recan(),
                        batch.acid(),
                        batch.salt(),
                        batch.syrup(),
                        batch.produce(),
                        batch.formula(),
                        batch.headspace(),
                        batch.sterilise(),
                        batch.useBy(),
                        batch.covering()))
            .getMessage());
  }

  @Test
  void aRecordKeepsWhatWasWorkedOut() {
    Batch batch =
        Plans.of(
                "product: tomatoes-whole-in-water; pack: raw; acid: citric acid; jar: quart; salt:"
                    + " yes; altitude: 420 m",
                BIG_POT)
            .batch();
    BatchRecord record = BatchRecord.of(batch, List.of(4, 3), List.of());
    assertEquals(batch.lot(), record.lot());
    assertEquals(50, record.processing().tested().minutes());
    assertEquals("1/2 tsp", record.additions().acid().orElseThrow().each().toString());
    assertEquals("1 tsp", record.additions().salt().orElseThrow().toString());
    assertEquals(7, record.jars().ready());
    assertEquals(
        Optional.of(new BatchRecord.Weight(Mass.parse("17-3/4 lb"), Mass.parse("24-3/4 lb"))),
        record.jars().produce(),
        "each rounded up");
    assertEquals("2027-08-24", record.days().useBy().toString());
    assertEquals(
        "loads [4, 4] do not make 7 jars",
        assertThrows(
                IllegalArgumentException.class,
                () -> BatchRecord.of(batch, List.of(4, 4), List.of()))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> BatchRecord.of(batch, List.of(7, 0), List.of()));
  }
}
