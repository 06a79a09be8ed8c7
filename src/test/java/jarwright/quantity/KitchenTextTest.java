package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How amounts stand on paper in a kitchen that shows both kinds of units. */
class KitchenTextTest {
  private static final Style BOTH = Style.english(Units.BOTH);

  /** A language that tells its words apart from English ones, and writes thousands its own way. */
  private static final AmountWords SHOUTED =
      new AmountWords() {
        @Override
        public String word(String english) {
          return "<" + english + ">";
        }

        @Override
        public String several(String english) {
          return "<<" + english + ">>";
        }

        @Override
        public String number(BigDecimal exact) {
          return AmountWords.super.number(exact).replace(',', '\'');
        }

        @Override
        public boolean volumesNeedMetric() {
          return true;
        }
      };

  static final String VOLUMES =
      """
      1/8 tsp     | 1/8 tsp (0.75 mL)
      1/4 tsp     | 1/4 tsp (1.25 mL)
      1/2 tsp     | 1/2 tsp (2.5 mL)
      1 tsp       | 1 tsp (5 mL)
      1-1/2 tsp   | 1-1/2 tsp (7.5 mL)
      1/2 Tbsp    | 1/2 Tbsp (7.5 mL)
      1 Tbsp      | 1 Tbsp (15 mL)
      2 Tbsp      | 2 Tbsp (30 mL)
      7 Tbsp      | 7 Tbsp (105 mL)
      8 Tbsp      | 1/2 cup (120 mL)
      7-1/2 tsp   | 7-1/2 tsp (37.5 mL)
      8 tsp       | 2 Tbsp + 2 tsp (40 mL)
      8-1/4 tsp   | 2 Tbsp + 2-1/4 tsp (42.5 mL)
      18 Tbsp     | 1 cup + 2 Tbsp (270 mL)
      36 Tbsp     | 2-1/4 cups (535 mL)
      5 fl-oz     | 5 fl-oz (150 mL)
      1/4 cup     | 1/4 cup (60 mL)
      1/3 cup     | 1/3 cup (80 mL)
      1 cup       | 1 cup (240 mL)
      1-1/2 cups  | 1-1/2 cups (355 mL)
      3-5/16 cups | 3-1/4 cups + 1 Tbsp (785 mL)
      1/16 cup    | 1 Tbsp (15 mL)
      1-1/2 pints | 1-1/2 pints (710 mL)
      1-1/8 quart | 1 quart + 1/2 cup (1.1 L)
      1 pint      | 1 pint (475 mL)
      2 pints     | 2 pints (950 mL)
      1 quart     | 1 quart (950 mL)
      7 quarts    | 7 quarts (6.65 L)
      1 gal       | 1 gal (3.8 L)
      2 gal       | 2 gal (7.6 L)
      768 tsp     | 1 gal (3.8 L)
      1000 tsp    | 1 gal + 1 quart + 3/4 cup + 1 Tbsp + 1 tsp (4.95 L)
      250 mL      | 250 mL
      1500 mL     | 1.5 L
      0.2 L       | 200 mL
      0 tsp       | 0 tsp (0 mL)
      """;

  @ParameterizedTest(name = "{0} is printed {1}")
  @CsvSource(delimiter = '|', textBlock = VOLUMES)
  void volumesRoundedUp(String amount, String printed) {
    assertEquals(printed, Volume.parse(amount).text(BOTH, Rounding.UP));
  }

  static final String MASSES =
      """
      3 lb        | 3 lb (1.4 kg)
      12-1/4 lb   | 12-1/4 lb (5.6 kg)
      1/2 lb      | 8 oz (230 g)
      24 oz       | 24 oz (685 g)
      3/4 oz      | 3/4 oz (22 g)
      18 kg       | 39-3/4 lb (18 kg)
      50 g        | 2 oz (50 g)
      453.59237 g | 1 lb (455 g)
      1250 lb     | 1250 lb (567 kg)
      """;

  @ParameterizedTest(name = "{0} is printed {1}")
  @CsvSource(delimiter = '|', textBlock = MASSES)
  void massesRoundedUp(String amount, String printed) {
    assertEquals(printed, Mass.parse(amount).text(BOTH, Rounding.UP));
  }

  static final String LENGTHS =
      """
      1/8 in   | 1/8 in (4 mm)
      1/4 in   | 1/4 in (7 mm)
      1/2 in   | 1/2 in (13 mm)
      1 in     | 1 in (26 mm)
      1-1/4 in | 1-1/4 in (32 mm)
      4 in     | 4 in (10.5 cm)
      33 cm    | 13 in (33 cm)
      15 mm    | 5/8 in (15 mm)
      -0.5 mm  | 0 in (-0.5 mm)
      """;

  @ParameterizedTest(name = "{0} is printed {1}")
  @CsvSource(delimiter = '|', textBlock = LENGTHS)
  void lengthsRoundedUp(String amount, String printed) {
    assertEquals(printed, Length.parse(amount).text(BOTH, Rounding.UP));
  }

  static final String OTHERS =
      """
      temperature | 180 F      | 180 °F (83 °C)
      temperature | 82 °C      | 180 °F (82 °C)
      temperature | -40 C      | -40 °F (-40 °C)
      pressure    | 5 psi      | 5 psi (35 kPa)
      pressure    | 6 psi      | 6 psi (42 kPa)
      pressure    | 10 psi     | 10 psi (69 kPa)
      pressure    | 11 psi     | 11 psi (76 kPa)
      pressure    | 15 psi     | 15 psi (104 kPa)
      pressure    | 76 kPa     | 12 psi (76 kPa)
      altitude    | 420 m      | 1,378 ft (420 m)
      altitude    | 5,400 ft   | 5,400 ft (1,646 m)
      altitude    | 1000.5 ft  | 1,001 ft (305 m)
      altitude    | -100 ft    | -100 ft (-30 m)
      """;

  @ParameterizedTest(name = "{0} {1} is printed {2}")
  @CsvSource(delimiter = '|', textBlock = OTHERS)
  void theOthersRoundedUp(String kind, String amount, String printed) {
    assertEquals(printed, other(kind, amount));
  }

  static String other(String kind, String amount) {
    return switch (kind) {
      case "temperature" -> Temperature.parse(amount).text(BOTH, Rounding.UP);
      case "pressure" -> GaugePressure.parse(amount).text(BOTH);
      default -> Altitude.parse(amount).text(BOTH);
    };
  }

  @ParameterizedTest(name = "{0} for {1} units: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2 Tbsp | US     | 2 Tbsp
          2 Tbsp | METRIC | 30 mL
          2 Tbsp | BOTH   | 2 Tbsp (30 mL)
          30 mL  | US     | 30 mL
          """)
  void theHouseholdChoosesItsUnits(String amount, Units units, String printed) {
    assertEquals(printed, Volume.parse(amount).text(Style.english(units), Rounding.UP));
  }

  /** The tables print psi, and so do dials and weights: nobody may have to convert a pressure. */
  @ParameterizedTest(name = "{0} for {1} units: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          11 psi | US     | 11 psi
          11 psi | METRIC | 11 psi (76 kPa)
          11 psi | BOTH   | 11 psi (76 kPa)
          76 kPa | US     | 12 psi
          76 kPa | METRIC | 12 psi (76 kPa)
          """)
  void aPressureIsSaidAsTheGaugeShowsIt(String amount, Units units, String printed) {
    assertEquals(printed, GaugePressure.parse(amount).text(Style.english(units)));
  }

  @ParameterizedTest(name = "{0} rounded {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1/2 in | UP      | 13 mm
          1/2 in | NEAREST | 13 mm
          1/2 in | DOWN    | 12 mm
          1/4 in | NEAREST | 6 mm
          12 in  | NEAREST | 30.5 cm
          """)
  void theDirectionIsChosenAtEachUse(String amount, Rounding rounding, String printed) {
    assertEquals(printed, Length.parse(amount).text(Style.english(Units.METRIC), rounding));
  }

  @Test
  void unitWordsComeFromThePrintOutsLanguage() {
    assertEquals(
        "1 <cup> + 2 <<Tbsp>> (270 <mL>)",
        Volume.parse("18 Tbsp").text(new Style(Units.BOTH, SHOUTED), Rounding.UP));
    assertEquals("1'378 <ft>", Altitude.feet(1_378).text(new Style(Units.US, SHOUTED)));
    MeasuredText range = MeasuredText.parse("{4..5 Tbsp} in {8..10 quart}");
    assertEquals(
        "4 <to> 5 <<Tbsp>> in 8 <to> 10 <<quarts>>",
        range.text(new Style(Units.BOTH, SHOUTED).only(Units.US), Map.of()));
  }

  @Test
  void whereALanguageWantsItNoVolumeStandsWithoutItsMetricOne() {
    Style us = new Style(Units.US, SHOUTED);
    assertEquals("3 <<quarts>> (2.85 <L>)", Volume.parse("3 quarts").text(us, Rounding.NEAREST));
    assertEquals(
        "8 <to> 10 <<quarts>> (7.55 <to> 9.45 <L>), 2 <in>",
        MeasuredText.parse("{8..10 quart}, {2 in}").text(us, Map.of()));
    assertEquals("3 <<quarts>>", Volume.parse("3 quarts").text(us.only(Units.US), Rounding.UP));
    assertEquals("250 <mL>", Volume.parse("250 mL").text(us, Rounding.UP));
  }

  @Test
  void unitsAreNamedAsPlansWriteThem() {
    assertEquals("us", Units.US.word());
    assertEquals("metric", Units.METRIC.word());
    assertEquals("both", Units.BOTH.word());
  }

  @Test
  void amountsTheProgramMakesItselfCarryTheirUnit() {
    assertEquals("1/2 in", Length.inches(Fraction.of(1, 2)).toString());
    assertEquals("20 mm", Length.millimetres(20).toString());
    assertEquals("3 lb", Mass.pounds(Fraction.of(3)).toString());
    assertEquals("11 psi", GaugePressure.psi(11).toString());
    assertEquals("180 F", Temperature.fahrenheit(180).toString());
    assertEquals("1000 ft", Altitude.feet(1_000).toString());
    assertEquals("420 m", Altitude.metres(420).toString());
    assertEquals("2 Tbsp", Volume.of(Fraction.of(2), Volume.Unit.TBSP).toString());
  }
}
