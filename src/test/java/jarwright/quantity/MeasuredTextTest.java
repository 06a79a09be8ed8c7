package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuredTextTest {
  static final String SENTENCES =
      """
      Wash the jars                    | Wash the jars
      Cut {1/2 in} cubes               | Cut 1/2 in (13 mm) cubes
      Snap {1..1-1/2 in} pieces        | Snap 1 to 1-1/2 in (25 to 38 mm) pieces
      Dip {30..60 s}                   | Dip 30 to 60 s
      Simmer {5 min}                   | Simmer 5 min
      Soak {12..18 h}                  | Soak 12 to 18 h
      Wait {1 days}                    | Wait 1 day
      Wait {1 day}                     | Wait 1 day
      Ferment {3..4 weeks}             | Ferment 3 to 4 weeks
      Ferment {1/2..1 weeks}           | Ferment 1/2 to 1 week
      Heat to {180 F}                  | Heat to 180 °F (82 °C)
      Hold at {180..185 F}             | Hold at 180 to 185 °F (82 to 85 °C)
      Add {1 cup} water                | Add 1 cup (235 mL) water
      Add {1..2 cup} water             | Add 1 cup to 2 cups (235 to 475 mL) water
      Add {2 Tbsp} salt                | Add 2 Tbsp (30 mL) salt
      Add {17..18 Tbsp} salt           | Add 1 cup + 1 Tbsp to 1 cup + 2 Tbsp (250 to 265 mL) salt
      Dissolve {3000 mg} in {1 gal}    | Dissolve 3,000 mg in 1 gal (3.8 L)
      Take {3 lb} fruit                | Take 3 lb (1.35 kg) fruit
      Take {2..2 lb} fruit             | Take 2 lb (905 g) fruit
      Take {4..6 oz}                   | Take 4 to 6 oz (115 to 170 g)
      """;

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(delimiter = '|', textBlock = SENTENCES)
  void printsItsAmounts(String text, String printed) {
    assertEquals(printed, MeasuredText.parse(text).text(Style.english(Units.BOTH), Map.of()));
  }

  @ParameterizedTest(name = "{0} in {1} units: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Cut {1/4..1/2 in} cubes | US     | Cut 1/4 to 1/2 in cubes
          Cut {1/4..1/2 in} cubes | METRIC | Cut 6 to 13 mm cubes
          Dip {30..60 s}          | METRIC | Dip 30 to 60 s
          """)
  void printsThemInTheHouseholdsUnits(String text, Units units, String printed) {
    assertEquals(printed, MeasuredText.parse(text).text(Style.english(units), Map.of()));
  }

  @Test
  void namesAreFilledIn() {
    MeasuredText text = MeasuredText.parse("Cover with {liquid}; hold {liquid} {5 min}");
    assertEquals(List.of("liquid"), text.names());
    assertEquals(
        "Cover with syrup; hold syrup 5 min",
        text.text(Style.english(Units.US), Map.of("liquid", "syrup")));
    assertEquals(
        "nothing is known for {liquid}",
        assertThrows(
                IllegalArgumentException.class, () -> text.text(Style.english(Units.US), Map.of()))
            .getMessage());
  }

  @Test
  void timesAreTold() {
    MeasuredText text = MeasuredText.parse("Boil {90 s}, then {1..2 h}, then {1 cup} more");
    assertEquals(
        List.of(
            new TimeSpan(Fraction.of(90), Fraction.of(90), TimeSpan.Unit.S),
            new TimeSpan(Fraction.ONE, Fraction.of(2), TimeSpan.Unit.H)),
        text.times());
    assertEquals(List.of(), text.names());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Cut {1/2 in cubes      | a brace has no partner in "Cut {1/2 in cubes"
          Cut 1/2 in} cubes      | a brace has no partner in "Cut 1/2 in} cubes"
          Cut } or {1 in}        | a brace has no partner in "Cut } or {1 in}"
          Cut {{1 in}            | a brace has no partner in "Cut {{1 in}"
          Cut {1 in}}            | a brace has no partner in "Cut {1 in}}"
          Cut {} cubes           | {} is neither an amount nor a name
          Cut {Liquid}           | {Liquid} is neither an amount nor a name
          Cut {1/2}              | {1/2} is neither an amount nor a name
          Cut {some in}          | {some in} is neither an amount nor a name
          Cut {1/2 furlong}      | "furlong" is not a unit of a recipe text
          Cut {1..2..3 in}       | "1..2" is not a number like 3, 2.5, 1/4 or 1-1/2
          Cut {2..1 in}          | a range runs from less to more
          Boil {2..1 min}        | a stretch of time runs from a shorter to a longer time
          Boil {0 min}           | a stretch of time runs from a shorter to a longer time
          Wait {53 weeks}        | no step takes longer than a year
          Add {1/2 mg}           | milligrams are whole, not 1/2
          Add {1..2 mg}          | "mg" is not a unit of a recipe text
          Add {1/0 cup}          | a fraction cannot have 0 below the line
          """)
  void refusesWhatIsNoAmount(String text, String message) {
    var refused = assertThrows(IllegalArgumentException.class, () -> MeasuredText.parse(text));
    assertEquals(message, refused.getMessage());
  }

  @Test
  void isKnownByItsSource() {
    MeasuredText text = MeasuredText.parse("Boil {5 min}");
    assertEquals("Boil {5 min}", text.toString());
    assertEquals(text, MeasuredText.parse("Boil {5 min}"));
    assertEquals(text.hashCode(), MeasuredText.parse("Boil {5 min}").hashCode());
    assertNotEquals(text, MeasuredText.parse("Boil {6 min}"));
    assertNotEquals(text, new Object());
  }

  @Test
  void aYearIsTheLongestStretchOfTime() {
    assertEquals(1, MeasuredText.parse("{366 days}").times().size());
  }
}
