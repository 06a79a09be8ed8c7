package jarwright.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.quantity.Altitude;
import jarwright.quantity.Fraction;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BoilingPointTest {
  static List<Map<String, String>> rows() {
    return Table.rows("boiling-point.csv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheStandardsComputedElsewhere(Map<String, String> row) {
    assertEquals(Table.number(row, "computed_boiling_C"), celsius(row), 0.0051);
    assertEquals(Table.number(row, "computed_boiling_F"), fahrenheit(row), 0.2);
  }

  /**
   * Printed kitchen tables run in a straight line of about 1.75 °F a 1,000 ft from sea level, where
   * the standards' curve falls by 1.9; so they drift up from it, by no more than a degree at 10,000
   * ft. The print is never below.
   */
  @ParameterizedTest
  @MethodSource("rows")
  void printedTablesDriftUpFromItByATenthOfADegreeAThousandFeet(Map<String, String> row) {
    double thousands = Table.number(row, "altitude_ft") / 1_000;
    for (String column : List.of("published_F_usda_mirror", "published_F_linear_calculator")) {
      if (Table.has(row, column)) {
        double drift = Table.number(row, column) - fahrenheit(row);
        assertTrue(drift > -0.1 && drift < 0.15 + 0.1 * thousands, row + " drifts by " + drift);
      }
    }
    if (Table.has(row, "published_F_high_altitude_page")) {
      double page = Table.number(row, "published_F_high_altitude_page");
      assertEquals(page, fahrenheit(row), 1.2);
    }
  }

  @Test
  void showsTenthsOfADegreeFahrenheit() {
    assertEquals(Fraction.parse("212"), BoilingPoint.at(Altitude.feet(0)).inFahrenheit());
    assertEquals(Fraction.parse("202.8"), BoilingPoint.at(Altitude.feet(5_000)).inFahrenheit());
  }

  @Property
  void neverRisesWithAltitude(@ForAll @IntRange(min = -1_000, max = 29_000) int feet) {
    double here = BoilingPoint.celsius(Altitude.feet(feet));
    assertTrue(BoilingPoint.celsius(Altitude.feet(feet + 1)) < here);
    assertTrue(BoilingPoint.celsius(Altitude.feet(feet + 1)) > here - 0.002);
  }

  private static double celsius(Map<String, String> row) {
    return BoilingPoint.celsius(Altitude.feet(Integer.parseInt(row.get("altitude_ft"))));
  }

  private static double fahrenheit(Map<String, String> row) {
    return celsius(row) * 1.8 + 32;
  }
}
