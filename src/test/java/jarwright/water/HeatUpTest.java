package jarwright.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.plan.Canner;
import jarwright.plan.Energy;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.quantity.Altitude;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HeatUpTest {
  private static final Altitude LOW = Altitude.feet(500);

  private static Canner standard(int watts, Energy energy) {
    return Canners.canner(Method.BOILING_WATER, "13 in", "11-1/2 in", "15 mm", watts, energy);
  }

  private static Range water(Canner canner, JarSize jar, int jars) {
    return HeatUp.litres(
        new WaterLevel(Published.BOOK.jars()).advise(canner, jar, jars, Canners.boiling(25)));
  }

  private static Estimate toBoil(Canner canner, JarSize jar, int jars, Pack pack) {
    return new HeatUp(Published.BOOK.jars())
        .toBoil(canner, water(canner, jar, jars), jar, jars, pack, LOW);
  }

  private static Estimate preheat(Canner canner, JarSize jar, int jars, Pack pack) {
    return new HeatUp(Published.BOOK.jars()).preheat(canner, water(canner, jar, jars), pack);
  }

  /** Measured from 180 °F: 4.3 to 21 min (Flores Verdad Ixta et al., IAFP 2013). */
  @Test
  void theStandardCannerBoilsFromHotWaterWithinTheMeasuredTimes() {
    for (int watts : new int[] {2_400, 3_000, 3_500}) {
      Estimate quarts = toBoil(standard(watts, Energy.ELECTRIC), JarSize.QUART, 7, Pack.HOT);
      Estimate pints = toBoil(standard(watts, Energy.ELECTRIC), JarSize.PINT, 9, Pack.HOT);
      assertTrue(pints.min() >= 4 && quarts.max() <= 21, pints + " to " + quarts);
    }
  }

  /** The same work: 23 to 49 min with the preheating, from 77 °F. */
  @Test
  void preheatingAndBoilingTogetherTakeTheMeasuredTimes() {
    for (Energy energy : new Energy[] {Energy.ELECTRIC, Energy.INDUCTION}) {
      Canner canner = standard(2_400, energy);
      int planned =
          preheat(canner, JarSize.QUART, 7, Pack.HOT).planned()
              + toBoil(canner, JarSize.QUART, 7, Pack.HOT).planned();
      assertTrue(planned >= 23 && planned <= 49, energy + ": " + planned);
    }
  }

  /** USDA planning figure for a loaded boiling-water canner: 20 to 30 min. */
  @Test
  void thePlanningFigureLiesInsideTheEstimates() {
    Estimate raw = toBoil(Canners.STANDARD, JarSize.QUART, 7, Pack.RAW);
    assertTrue(raw.min() <= 20 && raw.max() >= 30, raw.toString());
    Estimate strong = toBoil(standard(3_000, Energy.ELECTRIC), JarSize.QUART, 7, Pack.RAW);
    assertTrue(strong.planned() >= 20 && strong.planned() <= 30, strong.toString());
  }

  @Test
  void withoutPowerTheRangeHoldsEveryMeasuredTimeAndSaysSo() {
    Canner unknown = standard(0, null);
    assertTrue(toBoil(unknown, JarSize.PINT, 9, Pack.HOT).min() <= 4);
    Estimate hot = toBoil(unknown, JarSize.QUART, 7, Pack.HOT);
    assertTrue(hot.max() >= 21, hot.toString());
    Estimate preheat = preheat(unknown, JarSize.QUART, 7, Pack.HOT);
    assertTrue(preheat.min() + hot.min() <= 23 && preheat.max() + hot.max() >= 49);
    assertTrue(HeatUp.assumesPower(unknown));
    assertTrue(HeatUp.assumesPower(standard(2_400, null)));
    assertFalse(HeatUp.assumesPower(standard(2_400, Energy.GAS)));
  }

  @ParameterizedTest
  @EnumSource(Energy.class)
  void anUnknownPowerOrEnergyOnlyWidens(Energy energy) {
    Estimate known = toBoil(standard(2_000, energy), JarSize.QUART, 7, Pack.RAW);
    Estimate noEnergy = toBoil(standard(2_000, null), JarSize.QUART, 7, Pack.RAW);
    Estimate noPower = toBoil(standard(0, energy), JarSize.QUART, 7, Pack.RAW);
    assertEquals(noEnergy, noEnergy.hull(known));
    assertEquals(noPower, noPower.hull(known));
  }

  /** By hand: 11.4 L and the pot take up 48 to 54 kJ/K; 2.4 kW at 0.74 to 0.80 give 1.8 kW. */
  @Test
  void aStrongerBurnerAndThinnerAirAreFaster() {
    Estimate weak = toBoil(standard(1_500, Energy.ELECTRIC), JarSize.QUART, 7, Pack.HOT);
    Estimate strong = toBoil(standard(3_000, Energy.ELECTRIC), JarSize.QUART, 7, Pack.HOT);
    assertTrue(strong.min() < weak.min() && strong.max() < weak.max());
    Canner canner = Canners.STANDARD;
    HeatUp heat = new HeatUp(Published.BOOK.jars());
    Estimate high =
        heat.toBoil(
            canner,
            water(canner, JarSize.QUART, 7),
            JarSize.QUART,
            7,
            Pack.HOT,
            Altitude.feet(7_000));
    assertTrue(high.max() < toBoil(canner, JarSize.QUART, 7, Pack.HOT).max());
  }

  /** USDA: 12 to 15 min to steam, 5 to pressure, 20 to 60 to cool down. */
  @Test
  void aPressureCannerIsNeverReckonedShorterThanItsPlanningFigure() {
    Canner canner = Canners.canner(Method.DIAL_GAUGE, "12 in", "", "", 3_500, Energy.INDUCTION);
    Estimate steam =
        new HeatUp(Published.BOOK.jars())
            .toBoil(canner, new Range(4, 5.5), JarSize.PINT, 9, Pack.HOT, LOW);
    assertEquals(new Estimate(12, 15), steam);
    assertTrue(HeatUp.toPressure().max() == 5 && HeatUp.toPressure().min() == 3);
    assertEquals(new Estimate(20, 60), HeatUp.coolDown());
  }

  @Test
  void whatIsPlannedIsTheGeometricMiddleRoundedUp() {
    assertEquals(15, new Estimate(10, 20).planned());
    assertEquals(35, new Estimate(20, 60).planned());
    assertEquals(12, new Estimate(12, 12).planned());
    assertEquals(3, new Estimate(0, 8).planned());
    assertEquals(0, new Estimate(0, 0).planned());
  }
}
