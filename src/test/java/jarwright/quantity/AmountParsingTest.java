package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a household may write for an amount, and the words it is refused with. */
class AmountParsingTest {
  @ParameterizedTest(name = "{0} \"{1}\" is {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          volume      | 1/4 tsp          | 1/4 tsp
          volume      | 1/4 teaspoon     | 1/4 tsp
          volume      | 2 Tbsp           | 2 Tbsp
          volume      | 2 T              | 2 Tbsp
          volume      | 2 t              | 2 tsp
          volume      | 2 TBSP           | 2 Tbsp
          volume      | 1-1/2 cups       | 1-1/2 cup
          volume      | 1 1/2 cups       | 1-1/2 cup
          volume      | 250ml            | 250 mL
          volume      | 2.5 liters       | 2-1/2 L
          volume      | 3 fl oz          | 3 fl-oz
          volume      | 1 Quart          | 1 quart
          mass        | 18 kg            | 18 kg
          mass        | 12-1/4 lb        | 12-1/4 lb
          mass        | 12 pounds        | 12 lb
          mass        | 24 OZ            | 24 oz
          mass        | 1,250 g          | 1250 g
          length      | 33 cm            | 33 cm
          length      | ' 1/2  inch '    | 1/2 in
          length      | -0.5 mm          | -1/2 mm
          temperature | 180 °F           | 180 F
          temperature | 82C              | 82 C
          pressure    | 11 psi           | 11 psi
          pressure    | 11 pounds        | 11 psi
          pressure    | 76 kPa           | 76 kPa
          altitude    | 420 m            | 420 m
          altitude    | 420 metres       | 420 m
          altitude    | 5,400 ft         | 5400 ft
          altitude    | 5400 Feet        | 5400 ft
          altitude    | -1,400 ft        | -1400 ft
          altitude    | 1,000.5 ft       | 1000-1/2 ft
          altitude    | 1,000-1/2 ft     | 1000-1/2 ft
          """)
  void reads(String kind, String text, String amount) {
    assertEquals(amount, read(kind, text));
  }

  @ParameterizedTest(name = "{0} \"{1}\"")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          altitude    | 420         | an altitude needs a number and a unit (m, ft), not "420"
          altitude    | ''          | an altitude needs a number and a unit (m, ft), not ""
          altitude    | 420 km      | "km" is not a unit for an altitude; known: m, ft
          altitude    | 420 M       | "M" is not a unit for an altitude; known: m, ft
          altitude    | m           | "" is not a number like 3, 2.5, 1/4 or 1-1/2
          altitude    | 0,5 m       | "0,5" is not a number like 3, 2.5, 1/4 or 1-1/2
          altitude    | 0,420 m     | "0,420" is not a number like 3, 2.5, 1/4 or 1-1/2
          altitude    | 1234,567 m  | "1234,567" is not a number like 3, 2.5, 1/4 or 1-1/2
          altitude    | 1,00 ft     | "1,00" is not a number like 3, 2.5, 1/4 or 1-1/2
          altitude    | 1,0000 ft   | "1,0000" is not a number like 3, 2.5, 1/4 or 1-1/2
          altitude    | 1.000,5 ft  | "1.000,5" is not a number like 3, 2.5, 1/4 or 1-1/2
          altitude    | 40000 ft    | an altitude is from -500 m to 9000 m, not 40000 ft
          altitude    | -501 m      | an altitude is from -500 m to 9000 m, not -501 m
          altitude    | 9001 m      | an altitude is from -500 m to 9000 m, not 9001 m
          volume      | 2           | a volume needs a number and a unit (tsp, Tbsp, fl-oz, cup, pint, quart, gal, mL, L), not "2"
          volume      | 2 kg        | "kg" is not a unit for a volume; known: tsp, Tbsp, fl-oz, cup, pint, quart, gal, mL, L
          volume      | ½ cup       | "½ cup" is not a unit for a volume; known: tsp, Tbsp, fl-oz, cup, pint, quart, gal, mL, L
          mass        | 18          | a mass needs a number and a unit (g, kg, oz, lb), not "18"
          mass        | 18 stone    | "stone" is not a unit for a mass; known: g, kg, oz, lb
          length      | 33          | a length needs a number and a unit (mm, cm, in), not "33"
          length      | 1 m         | "m" is not a unit for a length; known: mm, cm, in
          temperature | 180         | a temperature needs a number and a unit (F, C), not "180"
          temperature | 180 K       | "K" is not a unit for a temperature; known: F, C
          pressure    | 11          | a pressure needs a number and a unit (psi, kPa), not "11"
          pressure    | 1 bar       | "bar" is not a unit for a pressure; known: psi, kPa
          """)
  void refuses(String kind, String text, String message) {
    var refused = assertThrows(IllegalArgumentException.class, () -> read(kind, text));
    assertEquals(message, refused.getMessage());
  }

  @Test
  void aMessageShowsOneShortLineOfWhatCameIn() {
    String message =
        assertThrows(
                IllegalArgumentException.class, () -> Mass.parse("3 a\u0000b\r\n" + "c".repeat(99)))
            .getMessage();
    assertEquals(
        "\"a b " + "c".repeat(36) + "…\" is not a unit for a mass; known: g, kg, oz, lb", message);
  }

  @Test
  void aMessageNeverCutsACharacterInHalf() {
    String message =
        assertThrows(IllegalArgumentException.class, () -> Mass.parse("3 " + "🍅".repeat(60)))
            .getMessage();
    assertEquals(-1, message.indexOf('?'));
    assertEquals("🍅".repeat(20), message.substring(1, message.indexOf('…')));
  }

  @Test
  void theEdgesOfTheLandAreAltitudes() {
    assertEquals(-1_640, Altitude.parse("-500 m").feetRoundedUp());
    assertEquals(29_528, Altitude.parse("9000 m").feetRoundedUp());
  }

  private static String read(String kind, String text) {
    return switch (kind) {
      case "volume" -> Volume.parse(text).toString();
      case "mass" -> Mass.parse(text).toString();
      case "length" -> Length.parse(text).toString();
      case "temperature" -> Temperature.parse(text).toString();
      case "pressure" -> GaugePressure.parse(text).toString();
      default -> Altitude.parse(text).toString();
    };
  }
}
