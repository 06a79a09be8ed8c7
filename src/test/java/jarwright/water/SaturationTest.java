package jarwright.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.hummeling.if97.IF97;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SaturationTest {
  private static final double MPA_PER_PSI = 0.006894757293168;

  /** IAPWS R7-97(2012), table 35. */
  @ParameterizedTest
  @CsvSource({"300, 0.353658941e-2", "500, 0.263889776e1", "600, 0.123443146e2"})
  void pressureIsAsTheReleaseVerifiesIt(double kelvin, double megapascals) {
    assertEquals(megapascals, Saturation.megapascals(kelvin), megapascals * 2e-9);
  }

  /** IAPWS R7-97(2012), table 36. */
  @ParameterizedTest
  @CsvSource({"0.1, 0.372755919e3", "1, 0.453035632e3", "10, 0.584149488e3"})
  void temperatureIsAsTheReleaseVerifiesIt(double megapascals, double kelvin) {
    assertEquals(kelvin, Saturation.kelvin(megapascals), 5e-7);
  }

  /** A steam-table library by others. */
  @Test
  void agreesWithAnotherLibrary() {
    IF97 other = new IF97(IF97.UnitSystem.DEFAULT);
    for (double kelvin = 274; kelvin < 647; kelvin += 1) {
      double expected = other.saturationPressureT(kelvin);
      assertEquals(expected, Saturation.megapascals(kelvin), expected * 1e-9);
      assertEquals(other.saturationTemperatureP(expected), Saturation.kelvin(expected), 1e-6);
    }
  }

  static List<Map<String, String>> steam() {
    return Table.rows("steam-pressure.csv");
  }

  /** Steam under a gauge pressure at altitude, computed elsewhere. */
  @ParameterizedTest
  @MethodSource("steam")
  void agreesWithATableOfGaugePressures(Map<String, String> row) {
    double kelvin = Saturation.kelvin(Table.number(row, "absolute_psia") * MPA_PER_PSI);
    assertEquals(Table.number(row, "saturation_C"), kelvin - 273.15, 0.055);
    assertEquals(Table.number(row, "saturation_F"), (kelvin - 273.15) * 1.8 + 32, 0.055);
  }

  @Test
  void refusesWhatLiesOutsideTheEquation() {
    assertThrows(IllegalArgumentException.class, () -> Saturation.kelvin(22.1));
    assertThrows(IllegalArgumentException.class, () -> Saturation.kelvin(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Saturation.megapascals(273.0));
  }
}
