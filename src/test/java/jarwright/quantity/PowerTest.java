package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PowerTest {
  @ParameterizedTest
  @CsvSource({"2400 W, 2400", "2.4 kW, 2400", "'1,800 watts', 1800"})
  void wattsAreExact(String text, String watts) {
    assertEquals(Fraction.parse(watts), Power.parse(text).inWatts());
  }

  /** NIST Special Publication 811 (2008), B.8: 1 Btu(IT)/h is 2.930 711 E-01 W. */
  @Test
  void aBtuAnHourAsPublished() {
    Fraction watts = Power.parse("1000000 BTU/h").inWatts();
    assertEquals(Fraction.of(293_071), Rounding.NEAREST.toStep(watts, Fraction.ONE));
  }

  @ParameterizedTest
  @CsvSource({"2400", "2400 hp", "W", "much W"})
  void aPowerNeedsNumberAndUnit(String text) {
    assertThrows(IllegalArgumentException.class, () -> Power.parse(text));
  }

  @Test
  void powersCompareAcrossUnits() {
    assertEquals(0, Power.parse("2.4 kW").compareTo(Power.parse("2400 W")));
    assertEquals(Power.parse("2.4 kW"), Power.parse(Power.parse("2.4 kW").toString()));
  }
}
