package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import java.util.function.Function;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A point before three digits parts thousands in half of the world: the decimal sign is a point or
 * a comma, and groups of three may be parted (ISO 80000-1:2022, 7.3; BIPM, SI Brochure, 9th
 * edition, 5.4.4, which therefore allows neither sign between groups).
 */
class UnclearAmountTest {
  private static final Map<String, Function<String, ?>> PARSERS =
      Map.of(
          "tsp", Volume::parse,
          "kg", Mass::parse,
          "cm", Length::parse,
          "F", Temperature::parse,
          "psi", GaugePressure::parse,
          "kW", Power::parse,
          "m", Altitude::parse,
          "ft", Altitude::parse);

  private static UnclearAmount refusal(String text) {
    String unit = text.replaceAll(".*[\\d ]", "");
    return assertThrows(UnclearAmount.class, () -> PARSERS.get(unit).apply(text), text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1.500 kg   | can mean 1.5 kg or 1500 kg     | write 1.5 kg or 1500 kg, whichever is right
          2.400kW    | can mean 2.4 kW or 2400 kW     | write 2.4 kW or 2400 kW, whichever is right
          33.125 cm  | can mean 33.125 cm or 33125 cm | write 33.1250 cm or 33125 cm, whichever is right
          -1.250 cm  | can mean -1.25 cm or -1250 cm  | write -1.25 cm or -1250 cm, whichever is right
          11.000 psi | can mean 11 psi or 11000 psi   | write 11 psi or 11000 psi, whichever is right
          1.500 m    | can mean 1.5 m or 1500 m       | write 2 m or 1500 m, whichever is right
          2.400 m    | can mean 2.4 m or 2400 m       | write 3 m or 2400 m, whichever is right
          1.000 ft   | can mean 1 ft or 1000 ft       | write 1 ft or 1000 ft, whichever is right
          120.500 m  | may have its point in the wrong place | check the altitude, and write it in whole m, as 121 m
          """)
  void aPointBeforeThreeDigitsIsRefusedWithBothReadings(String text, String fault, String remedy) {
    UnclearAmount refused = refusal(text);
    assertEquals(fault, refused.fault());
    assertEquals(remedy, refused.remedy());
    assertEquals("\"" + text + "\" " + fault, refused.getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2.4 m   | can mean 2.4 m or 2400 m              | write 3 m or 2400 m, whichever is right
          1.50 m  | can mean 1.5 m or 1500 m              | write 2 m or 1500 m, whichever is right
          0.500 m | can mean 0.5 m or 500 m               | write 1 m or 500 m, whichever is right
          5.4 ft  | can mean 5.4 ft or 5400 ft            | write 6 ft or 5400 ft, whichever is right
          49.9 m  | may have its point in the wrong place | check the altitude, and write it in whole m, as 50 m
          -3.5 m  | may have its point in the wrong place | check the altitude, and write it in whole m, as -3 m
          """)
  void aLowAltitudeIsWrittenWithoutAPoint(String text, String fault, String remedy) {
    UnclearAmount refused = refusal(text);
    assertEquals(fault, refused.fault());
    assertEquals(remedy, refused.remedy());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2 m         | 2 m
          0 ft        | 0 ft
          1-1/2 m     | 1-1/2 m
          50.5 m      | 50-1/2 m
          1500.0 m    | 1500 m
          1,500 m     | 1500 m
          1,500.5 m   | 1500-1/2 m
          0.750 kg    | 3/4 kg
          1.5 kg      | 1-1/2 kg
          1.2345 kg   | 1-469/2000 kg
          """)
  void whatCanBeReadInOneWayIsRead(String text, String amount) {
    assertEquals(amount, PARSERS.get(text.replaceAll(".* ", "")).apply(text).toString());
  }

  @Property
  void noUnitTakesAPointBeforeThreeDigits(
      @ForAll @IntRange(min = 1, max = 8_999) int before, @ForAll @IntRange(max = 999) int after) {
    PARSERS.keySet().stream()
        .filter(unit -> before < 900 || !unit.equals("tsp"))
        .forEach(
            unit ->
                refusal(before + "." + String.valueOf(1_000 + after).substring(1) + " " + unit));
  }
}
