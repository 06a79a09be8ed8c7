package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands exactly on a border belongs where it is said to. */
class BordersTest {
  private static final Style METRIC = Style.english(Units.METRIC);
  private static final Style US = Style.english(Units.US);

  /** Common practice, no source: 1 L rather than 1,000 mL, 1 kg rather than 1,000 g. */
  @ParameterizedTest
  @CsvSource({"1000 mL, 1 L", "999 mL, '1,000 mL'", "1 cup, 235 mL"})
  void litresBeginAtOne(String volume, String printed) {
    assertEquals(printed, Volume.parse(volume).text(METRIC, Rounding.NEAREST));
  }

  @ParameterizedTest
  @CsvSource({"1000 g, 1 kg", "998 g, '1,000 g'"})
  void kilogramsBeginAtOne(String mass, String printed) {
    assertEquals(printed, Mass.parse(mass).text(METRIC, Rounding.NEAREST));
  }

  @Test
  void centimetresBeginAtTen() {
    Length tenCentimetres = new Length(Fraction.of(500, 127), Length.Unit.IN);
    Length less = new Length(Fraction.of(499, 127), Length.Unit.IN);
    assertEquals("10 cm", tenCentimetres.text(METRIC, Rounding.NEAREST));
    assertEquals("100 mm", less.text(METRIC, Rounding.NEAREST));
  }

  @Test
  void oneIsNotPlural() {
    assertEquals("1 cup", Volume.parse("1 cup").text(US, Rounding.NEAREST));
    assertEquals("1-1/4 cups", Volume.parse("1-1/4 cup").text(US, Rounding.NEAREST));
    assertEquals("3/4 cup", Volume.parse("3/4 cup").text(US, Rounding.NEAREST));
  }

  @Test
  void powersAreOrdered() {
    assertTrue(Power.parse("2.4 kW").compareTo(Power.parse("2399 W")) > 0);
    assertTrue(Power.parse("2399 W").compareTo(Power.parse("2.4 kW")) < 0);
  }

  /** A degree Celsius is 9/5 of a degree Fahrenheit: NIST Special Publication 811 (2008), B.8. */
  @Test
  void degreesHaveTheirSizes() {
    assertEquals(Fraction.ONE, Temperature.Scale.F.inBase());
    assertEquals(Fraction.of(9, 5), Temperature.Scale.C.inBase());
  }

  @Test
  void whatIsShownIsCutAboveFortyLetters() {
    String forty = "x".repeat(40);
    assertEquals(forty, Shown.of(forty));
    assertEquals(forty + "…", Shown.of(forty + "x"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"{", "}", "{5 min", "} Boil", "Boil {5 min}}"})
  void aBraceNeedsItsPartnerWhereverItStands(String text) {
    assertThrows(IllegalArgumentException.class, () -> MeasuredText.parse(text));
  }

  @Test
  void amountsAreToldFromWordsAndNothingIsEmpty() {
    assertEquals(
        List.of(
            new MeasuredText.Run("Boil ", false),
            new MeasuredText.Run("5 min", true),
            new MeasuredText.Run("1/2 in", true)),
        MeasuredText.parse("Boil {5 min}{1/2 in}").runs(US, Map.of()));
    assertEquals(
        List.of(new MeasuredText.Run("plums", true)),
        MeasuredText.parse("{food}").runs(US, Map.of("food", "plums")));
  }

  @Test
  void textsThatDifferHashApart() {
    MeasuredText boil = MeasuredText.parse("Boil {5 min}");
    assertEquals(boil.hashCode(), MeasuredText.parse("Boil {5 min}").hashCode());
    assertNotEquals(boil.hashCode(), MeasuredText.parse("Boil {6 min}").hashCode());
  }
}
