package jarwright.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.plan.Canner;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.TestedProcess;
import jarwright.quantity.Length;
import jarwright.quantity.Volume;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WaterLevelTest {
  private static WaterAdvice advise(Canner canner, JarSize jar, int jars, TestedProcess process) {
    return new WaterLevel(Published.BOOK.jars()).advise(canner, jar, jars, process);
  }

  private static Canner pot(String height) {
    return Canners.canner(Method.BOILING_WATER, "33 cm", height, "15 mm", 0, null);
  }

  /** AIB 539 (2015) Guide 1: an inch over the lids, two from 30 minutes on. */
  @Test
  void theLidsAreCoveredByOneInchAndFromThirtyMinutesByTwo() {
    assertEquals("1 in", cover(29).aboveLids().toString());
    assertEquals("2 in", cover(30).aboveLids().toString());
    assertEquals("1 in", cover(30).belowRim().toString());
  }

  private static WaterAdvice.Cover cover(int minutes) {
    WaterAdvice advice = advise(pot("30 cm"), JarSize.QUART, 7, Canners.boiling(minutes));
    return assertInstanceOf(WaterAdvice.Covering.class, advice).cover();
  }

  /** By hand: π/4·33²·(1.5 + 19.1 + 2.54) cm³ less 7 × (946.35 + 397/2.6) mL is 12.1 L. */
  @Test
  void sevenQuartsInTheBigPotTakeThirteenQuartsOfWater() {
    WaterAdvice advice = advise(pot("30 cm"), JarSize.QUART, 7, Canners.boiling(20));
    var covering = assertInstanceOf(WaterAdvice.Covering.class, advice);
    assertEquals(Volume.parse("13 quarts"), covering.before());
    assertEquals(Length.parse("5-5/8 in"), covering.depth());
    assertEquals(Length.parse("9-1/8 in"), covering.from());
    assertEquals(Length.parse("10-3/4 in"), covering.to());
    assertFalse(covering.measureJars());
    assertFalse(covering.rackAssumed());
  }

  @Test
  void aPotThatCoversOnlyShortJarsAsksForTheirMeasure() {
    WaterAdvice advice = advise(pot("25 cm"), JarSize.QUART, 7, Canners.boiling(20));
    var covering = assertInstanceOf(WaterAdvice.Covering.class, advice);
    assertTrue(covering.measureJars());
    assertEquals(Length.parse("7-1/8 in"), covering.tallest());
    assertTrue(covering.from().compareTo(covering.to()) <= 0);
  }

  /** 15 + 175 + 25.4 + 25.4 = 240.8 mm for the shortest quart, 16 mm more for the tallest. */
  @Test
  void aPotTooShallowIsToldTheDepthItNeeds() {
    WaterAdvice advice = advise(pot("24 cm"), JarSize.QUART, 7, Canners.boiling(20));
    var shallow = assertInstanceOf(WaterAdvice.TooShallow.class, advice);
    assertEquals(Length.parse("9-1/2 in"), shallow.least());
    assertEquals(Length.parse("10-1/8 in"), shallow.sure());
    var deepEnough = advise(pot("9-1/2 in"), JarSize.QUART, 7, Canners.boiling(20));
    assertInstanceOf(WaterAdvice.Covering.class, deepEnough);
  }

  @Test
  void whatIsNotMeasuredIsSaidAndTheRuleGiven() {
    Canner unknown = Canners.canner(Method.BOILING_WATER, "", "", "", 0, null);
    WaterAdvice advice = advise(unknown, JarSize.QUART, 7, Canners.boiling(45));
    var unmeasured = assertInstanceOf(WaterAdvice.Unmeasured.class, advice);
    assertEquals(List.of("inside-diameter", "inside-height"), unmeasured.missing());
    assertEquals("2 in", unmeasured.cover().aboveLids().toString());
    var noJar = advise(pot("30 cm"), JarSize.HALF_GALLON, 4, Canners.boiling(5));
    assertEquals(List.of("jar"), assertInstanceOf(WaterAdvice.Unmeasured.class, noJar).missing());
  }

  /** AIB 539 (2015) Guide 1: two to three inches of hot water in a pressure canner. */
  @Test
  void aPressureCannerTakesTwoToThreeInches() {
    Canner canner = Canners.canner(Method.DIAL_GAUGE, "12 in", "", "", 0, null);
    var water =
        assertInstanceOf(
            WaterAdvice.Pressure.class, advise(canner, JarSize.QUART, 7, Canners.pressure(25)));
    assertEquals("2 in", water.from().toString());
    assertEquals("3 in", water.to().toString());
    // π/4·12²·2 in³ is 226.2 in³ or 3.917 quarts; three inches are 5.875.
    assertEquals("4 quart", water.volumes().orElseThrow().from().toString());
    assertEquals("5-3/4 quart", water.volumes().orElseThrow().to().toString());
    Canner unknown = Canners.canner(Method.DIAL_GAUGE, "", "", "", 0, null);
    var rule =
        assertInstanceOf(
            WaterAdvice.Pressure.class, advise(unknown, JarSize.QUART, 7, Canners.pressure(25)));
    assertTrue(rule.volumes().isEmpty());
  }

  @Test
  void measuredJarsTakeThePlaceOfThePublishedRanges() {
    JarDimensions hers =
        new JarDimensions(
            JarSize.QUART, Range.exactly(176), Range.exactly(92), Optional.of(Range.exactly(410)));
    JarBook book = Published.BOOK.jars().with(hers);
    WaterAdvice advice =
        new WaterLevel(book).advise(pot("25 cm"), JarSize.QUART, 7, Canners.boiling(20));
    assertFalse(assertInstanceOf(WaterAdvice.Covering.class, advice).measureJars());
    assertEquals(191, Published.BOOK.jars().of(JarSize.QUART).orElseThrow().heightMm().high());
  }
}
