package jarwright.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.quantity.Altitude;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class AtmosphereTest {
  private static final double KPA_PER_PSI = 6.894757293168;
  private static final double KPA_PER_INHG = 3.386389;

  static List<Map<String, String>> rows() {
    return Table.rows("standard-atmosphere.csv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheStandardComputedElsewhere(Map<String, String> row) {
    assertEquals(Table.number(row, "computed_1976_pressure_kPa"), kilopascals(row), 0.001);
  }

  /**
   * Engineers' tables of the same standard; the second differs in the last digit here and there.
   */
  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithPrintedTables(Map<String, String> row) {
    for (String column : List.of("published_psia_A", "published_psia_B")) {
      if (Table.has(row, column)) {
        assertEquals(Table.number(row, column), kilopascals(row) / KPA_PER_PSI, 0.012);
      }
    }
    if (Table.has(row, "published_inHg_B")) {
      assertEquals(Table.number(row, "published_inHg_B"), kilopascals(row) / KPA_PER_INHG, 0.015);
    }
  }

  /** U.S. Standard Atmosphere, 1976, table 1 by geometric altitude; from memory. */
  @ParameterizedTest
  @CsvSource({"5000, 54.048", "8000, 35.651", "9000, 30.800"})
  void agreesWithTheStandardsOwnTable(int metres, double kilopascals) {
    assertEquals(kilopascals, Atmosphere.kilopascals(Altitude.metres(metres)), 0.01);
  }

  @Test
  void isOneAtmosphereAtTheSeaAndMoreBelowIt() {
    assertEquals(101.325, Atmosphere.kilopascals(Altitude.metres(0)), 1e-9);
    assertEquals(106.57, Atmosphere.kilopascals(Altitude.metres(-430)), 0.1);
  }

  private static double kilopascals(Map<String, String> row) {
    return Atmosphere.kilopascals(Altitude.feet(Integer.parseInt(row.get("altitude_ft"))));
  }
}
