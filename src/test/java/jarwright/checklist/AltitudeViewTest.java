package jarwright.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.PlannedBatch;
import jarwright.process.AltitudeBand;
import jarwright.quantity.Altitude;
import jarwright.quantity.Units;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class AltitudeViewTest {
  @Test
  void aBandIsWordedInBothUnits() {
    assertEquals(words("1,001 to 3,000 ft", "305 to 914 m"), band(1_001, 3_000));
    assertEquals(words("0 to 1,000 ft", "0 to 304 m"), band(0, 1_000));
    assertEquals(words("above 6,000 ft", "above 1,828 m"), band(6_001, 0));
  }

  /** Bands are whole feet, a kitchen is rounded up to the next one: 1 ft is 0.3048 m exactly. */
  @Test
  void everyWholeMetreInTheWordsIsInTheBandAndItsNeighboursAreNot() {
    AltitudeBand band = new AltitudeBand(1_001, OptionalInt.of(3_000));
    for (int metre = 305; metre <= 914; metre++) {
      assertTrue(band.holds(Altitude.metres(metre).feetRoundedUp()));
    }
    assertFalse(band.holds(Altitude.metres(304).feetRoundedUp()));
    assertFalse(band.holds(Altitude.metres(915).feetRoundedUp()));
  }

  private static Map<String, String> words(String main, String also) {
    return Map.of("main", main, "also", also);
  }

  private static Object band(int from, int to) {
    AltitudeBand band = new AltitudeBand(from, to == 0 ? OptionalInt.empty() : OptionalInt.of(to));
    return new AltitudeView(band, Altitude.feet(from), PlannedBatch.WORDS, Units.BOTH)
        .view()
        .get("band");
  }
}
