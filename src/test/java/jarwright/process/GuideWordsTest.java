package jarwright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.quantity.Fraction;
import jarwright.quantity.GaugePressure;
import jarwright.quantity.MeasuredText;
import jarwright.quantity.Volume;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The guide's own words and small rules: sizes, packs, methods, bands, syrups, formulas. */
class GuideWordsTest {
  @Test
  void wordsAreThoseOfTheTables() {
    assertEquals(List.of("boiling-water", "dial-gauge", "weighted-gauge"), Method.ids());
    assertEquals(List.of("raw", "hot"), Pack.choices());
    assertEquals(
        List.of("half-pint", "12-ounce", "pint", "1-1/2-pint", "quart", "half-gallon"),
        JarSize.ids());
    assertEquals(List.of("citric acid", "bottled lemon juice", "vinegar 5%"), AcidKind.ids());
    assertEquals(List.of("very-light", "light", "medium", "heavy", "very-heavy"), Syrup.ids());
  }

  @Test
  void everyWordIsReadBackAndNoOther() {
    Method.ids().forEach(id -> assertEquals(id, Method.named(id).orElseThrow().toString()));
    JarSize.ids().forEach(id -> assertEquals(id, JarSize.named(id).orElseThrow().toString()));
    AcidKind.ids().forEach(id -> assertEquals(id, AcidKind.named(id).orElseThrow().toString()));
    Syrup.ids().forEach(id -> assertEquals(id, Syrup.named(id).orElseThrow().toString()));
    List.of("raw", "hot", "raw-or-hot")
        .forEach(id -> assertEquals(id, Pack.named(id).orElseThrow().toString()));
    for (String other : List.of("", "Pint", "steam", "fresh lemon juice", "vinegar")) {
      assertEquals(Optional.empty(), Method.named(other));
      assertEquals(Optional.empty(), JarSize.named(other));
      assertEquals(Optional.empty(), AcidKind.named(other));
      assertEquals(Optional.empty(), Pack.named(other));
      assertEquals(Optional.empty(), Syrup.named(other));
    }
  }

  @ParameterizedTest(name = "{0} holds {1} pints, {2} quarts")
  @CsvSource({
    "half-pint, 1/2, 1/4",
    "12-ounce, 3/4, 3/8",
    "pint, 1, 1/2",
    "1-1/2-pint, 1-1/2, 3/4",
    "quart, 2, 1",
    "half-gallon, 4, 2"
  })
  void jarsHoldWhatTheirNamesSay(String jar, String pints, String quarts) {
    JarSize size = JarSize.named(jar).orElseThrow();
    assertEquals(Fraction.parse(pints), size.pints());
    assertEquals(Fraction.parse(quarts), size.quarts());
    assertEquals(0, size.volume().compareTo(Volume.parse(pints + " pint")));
  }

  @Test
  void onlyBoilingWaterIsWithoutPressure() {
    assertFalse(Method.BOILING_WATER.isPressure());
    assertTrue(Method.DIAL_GAUGE.isPressure() && Method.WEIGHTED_GAUGE.isPressure());
  }

  @Test
  void aPrintedPackCoversItselfAndBothCoversEach() {
    assertTrue(Pack.RAW.covers(Pack.RAW) && Pack.HOT.covers(Pack.HOT));
    assertFalse(Pack.RAW.covers(Pack.HOT) || Pack.HOT.covers(Pack.RAW));
    assertTrue(Pack.RAW_OR_HOT.covers(Pack.RAW) && Pack.RAW_OR_HOT.covers(Pack.HOT));
  }

  @Test
  void aBandHoldsBothItsEndsAndTheShoreHoldsTheLandBelow() {
    AltitudeBand shore = band(0, 1_000);
    assertTrue(shore.holds(-1_400) && shore.holds(0) && shore.holds(1_000));
    assertFalse(shore.holds(1_001));
    AltitudeBand middle = band(1_001, 3_000);
    assertTrue(middle.holds(1_001) && middle.holds(3_000));
    assertFalse(middle.holds(1_000) || middle.holds(3_001) || middle.holds(-1));
    AltitudeBand above = new AltitudeBand(6_001, OptionalInt.empty());
    assertTrue(above.holds(6_001) && above.holds(29_000));
    assertFalse(above.holds(6_000));
    assertTrue(shore.isFollowedBy(middle));
    assertFalse(shore.isFollowedBy(above) || above.isFollowedBy(shore));
    assertTrue(shore.compareTo(middle) < 0 && middle.compareTo(shore) > 0);
  }

  @ParameterizedTest
  @CsvSource({"-1, 1000", "1000, 1000", "1001, 1000"})
  void aBandRunsUpwardsFromTheShore(int from, int to) {
    assertEquals(
        "a band runs upwards from 0 ft or more",
        assertThrows(IllegalArgumentException.class, () -> band(from, to)).getMessage());
  }

  /** AIB 539 (2015) p. 1-14: jars for under 10 minutes in boiling water are sterile. */
  @Test
  void jarsAreSterileUnderTenMinutesInBoilingWaterOnly() {
    assertTrue(new TestedProcess(9, Optional.empty()).needsSterileJars());
    assertFalse(new TestedProcess(10, Optional.empty()).needsSterileJars());
    TestedProcess pressure = new TestedProcess(8, Optional.of(GaugePressure.psi(6)));
    assertFalse(pressure.needsSterileJars());
    assertTrue(pressure.isPressure());
    assertFalse(new TestedProcess(9, Optional.empty()).isPressure());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1})
  void aProcessTakesAMinuteOrMore(int minutes) {
    assertEquals(
        "a process takes a minute or more, not " + minutes,
        assertThrows(
                IllegalArgumentException.class, () -> new TestedProcess(minutes, Optional.empty()))
            .getMessage());
  }

  /** AIB 539 (2015) p. 2-5, sugar and water for 9 pints or 7 quarts. */
  @ParameterizedTest(name = "{0} for {1} jars: {2} water, {3} sugar, for {4} {5} jars")
  @CsvSource({
    "very-light, pint, 6-1/2 cup, 3/4 cup, 9, pint",
    "very-light, quart, 10-1/2 cup, 1-1/4 cup, 7, quart",
    "light, half-pint, 5-3/4 cup, 1-1/2 cup, 9, pint",
    "medium, 1-1/2-pint, 8-1/4 cup, 3-3/4 cup, 7, quart",
    "heavy, half-gallon, 7-3/4 cup, 5-1/4 cup, 7, quart",
    "very-heavy, pint, 4-1/4 cup, 4-1/4 cup, 9, pint"
  })
  void syrups(String name, String jar, String water, String sugar, int load, String loadJar) {
    SyrupRow row =
        Book.get().syrup(Syrup.named(name).orElseThrow(), JarSize.named(jar).orElseThrow());
    assertEquals(Volume.parse(water), row.water());
    assertEquals(Volume.parse(sugar), row.sugar());
    assertEquals(load, row.jars());
    assertEquals(loadJar, row.jar().id());
    assertEquals(Fraction.ONE, row.share(load, row.jar()));
    assertEquals(Fraction.of(2), row.share(load * 2, row.jar()));
  }

  @ParameterizedTest
  @EnumSource(Syrup.class)
  void aBookWithoutSyrupsSaysSo(Syrup syrup) {
    ProcessBook empty = new ProcessBook(List.of(), List.of(), List.of(), List.of());
    assertEquals(
        "no row for " + syrup + " syrup",
        assertThrows(IllegalArgumentException.class, () -> empty.syrup(syrup, JarSize.PINT))
            .getMessage());
  }

  @Test
  void aFormulaIsMultipliedLineByLine() {
    FormulaLine line =
        new FormulaLine("onions", Fraction.of(3, 2), Fraction.of(2), "cup", "optional");
    assertEquals(
        new FormulaLine("onions", Fraction.of(9, 2), Fraction.of(6), "cup", "optional"),
        line.times(Fraction.of(3)));
    assertFalse(line.isToTaste());
    assertTrue(new FormulaLine("pepper", Fraction.ZERO, Fraction.ZERO, "tsp", "").isToTaste());
    assertThrows(
        IllegalArgumentException.class,
        () -> new FormulaLine("salt", Fraction.of(-1), Fraction.ONE, "tsp", ""));
    assertThrows(
        IllegalArgumentException.class,
        () -> new FormulaLine("salt", Fraction.of(2), Fraction.ONE, "tsp", ""));
  }

  @Test
  void aFormulasYieldCountsJarsFromOneUp() {
    JarYield yield = new JarYield(4, 5, JarSize.QUART);
    assertEquals(Fraction.of(8), yield.leastPints());
    assertEquals(Fraction.of(10), yield.mostPints());
    assertEquals(4, new JarYield(4, 4, JarSize.PINT).most());
    assertThrows(IllegalArgumentException.class, () -> new JarYield(0, 1, JarSize.PINT));
    assertThrows(IllegalArgumentException.class, () -> new JarYield(2, 1, JarSize.PINT));
  }

  /** AIB 539 (2015) Guide 2 prints 8 to 9 pints of apple butter, Guide 7 the jelly's own yield. */
  @Test
  void everyFixedFormulaIsThere() {
    Formula butter = Book.get().formulas("apple-butter").get(0);
    assertEquals("about 8 to 9 pints", butter.yield());
    assertEquals(Optional.of(new JarYield(8, 9, JarSize.PINT)), butter.jars());
    assertEquals("apples", butter.lines().get(0).ingredient());
    for (Product product : Book.get().products()) {
      if (product.acid() instanceof AcidRule.InFormula && !product.note().contains("pectin")) {
        assertFalse(Book.get().formulas(product.id()).isEmpty(), product.id());
      }
    }
  }

  @Test
  void aStepIsForItsPackOrForAll() {
    PreparationStep both = step(Optional.empty());
    PreparationStep raw = step(Optional.of(Pack.RAW));
    assertTrue(both.isFor(Pack.RAW) && both.isFor(Pack.HOT) && raw.isFor(Pack.RAW));
    assertFalse(raw.isFor(Pack.HOT));
  }

  @Test
  void produceIsPrintedInAnyOfThreeWays() {
    Optional<Fraction> some = Optional.of(Fraction.ONE);
    Optional<Fraction> none = Optional.empty();
    assertTrue(new ProduceNeed(some, none, none, Optional.empty()).isPrinted());
    assertTrue(new ProduceNeed(none, some, none, Optional.empty()).isPrinted());
    assertTrue(new ProduceNeed(none, none, some, Optional.empty()).isPrinted());
    assertFalse(new ProduceNeed(none, none, none, Optional.empty()).isPrinted());
  }

  private static AltitudeBand band(int from, int to) {
    return new AltitudeBand(from, OptionalInt.of(to));
  }

  private static PreparationStep step(Optional<Pack> pack) {
    return new PreparationStep(
        "plums-halved-or-whole",
        pack,
        PreparationStep.Stage.PRODUCE,
        PreparationStep.Kind.ACTION,
        MeasuredText.parse("Wash the plums"),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
