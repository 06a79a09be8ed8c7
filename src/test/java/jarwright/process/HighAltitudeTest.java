package jarwright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.quantity.Altitude;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** AIB 539 (2015): its dial tables end at 8,000 ft, its weighted-gauge bands have no upper end. */
class HighAltitudeTest {
  @ParameterizedTest
  @CsvSource({
    "boiling-water, 8000 ft, ",
    "boiling-water, 8001 ft, longer-elsewhere",
    "weighted-gauge, 8000 ft, ",
    "weighted-gauge, 2439 m, no-upper-end",
    "weighted-gauge, 2438 m, ",
    "dial-gauge, 8001 ft, "
  })
  void isToldAboveTheFootOnly(String method, String altitude, String doubt) {
    assertEquals(
        Optional.ofNullable(doubt),
        HighAltitude.of(Method.named(method).orElseThrow(), Altitude.parse(altitude))
            .map(HighAltitude::id));
  }
}
