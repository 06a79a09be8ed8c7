package jarwright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import jarwright.files.GelPointTable;
import jarwright.quantity.Altitude;
import jarwright.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GelPointsTest {
  /** AIB 539 (2015) Guide 7, temperature test for jelly without added pectin. */
  @ParameterizedTest
  @CsvSource({
    "-100 ft, 220",
    "0 ft, 220",
    "500 ft, 220",
    "501 ft, 218",
    "420 m, 218",
    "2000 ft, 216",
    "3499 ft, 214",
    "4000 ft, 212",
    "5000 ft, 211",
    "6000 ft, 209",
    "7000 ft, 207",
    "8000 ft, 205"
  })
  void theNearestPrintedRowHolds(String altitude, long fahrenheit) throws Exception {
    assertEquals(
        Optional.of(Temperature.fahrenheit(fahrenheit)),
        GelPointTable.read().nearest(Altitude.parse(altitude)));
  }

  @Test
  void aboveTheTableNothingIsTold() throws Exception {
    assertEquals(Optional.empty(), GelPointTable.read().nearest(Altitude.feet(8_001)));
  }

  @Test
  void rowsOutOfOrderAreRefused() {
    GelPoints.Row low = row(0, 220);
    GelPoints.Row high = row(1_000, 218);
    assertThrows(IllegalArgumentException.class, () -> new GelPoints(List.of(high, low)));
    assertThrows(IllegalArgumentException.class, () -> new GelPoints(List.of()));
  }

  private static GelPoints.Row row(long feet, long fahrenheit) {
    return new GelPoints.Row(
        Altitude.feet(feet), Temperature.fahrenheit(fahrenheit), new Source("a test"));
  }
}
