package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Amounts do not change where the machine speaks another language: Turkish has an i of its own,
 * Arabic and Hindi digits of their own, German a decimal comma.
 */
class DefaultLocaleTest {
  private static final Style BOTH = Style.english(Units.BOTH);
  private Locale before;

  @BeforeEach
  void remember() {
    before = Locale.getDefault();
  }

  @AfterEach
  void restore() {
    Locale.setDefault(before);
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva", "de-DE", "lt-LT"})
  void amountsAreReadAndPrintedAlike(String language) {
    Locale.setDefault(Locale.forLanguageTag(language));
    rows(
        KitchenTextTest.VOLUMES,
        (amount, printed) -> assertEquals(printed, Volume.parse(amount).text(BOTH, Rounding.UP)));
    rows(
        KitchenTextTest.MASSES,
        (amount, printed) -> assertEquals(printed, Mass.parse(amount).text(BOTH, Rounding.UP)));
    rows(
        KitchenTextTest.LENGTHS,
        (amount, printed) -> assertEquals(printed, Length.parse(amount).text(BOTH, Rounding.UP)));
    rows(
        MeasuredTextTest.SENTENCES,
        (text, printed) -> assertEquals(printed, MeasuredText.parse(text).text(BOTH, Map.of())));
    KitchenTextTest.OTHERS
        .lines()
        .map(row -> row.split("\\|"))
        .forEach(
            row ->
                assertEquals(
                    row[2].strip(), KitchenTextTest.other(row[0].strip(), row[1].strip())));
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"})
  void spellingsAndRefusalsAreAlike(String language) {
    Locale.setDefault(Locale.forLanguageTag(language));
    assertEquals("2 pint", Volume.parse("2 PINTS").toString());
    assertEquals("1 in", Length.parse("1 INCH").toString());
    assertEquals("metric", Units.METRIC.word());
    assertEquals(
        "\"٣\" is not a number like 3, 2.5, 1/4 or 1-1/2",
        assertThrows(IllegalArgumentException.class, () -> Fraction.parse("٣")).getMessage());
  }

  private static void rows(String table, BiConsumer<String, String> check) {
    table
        .lines()
        .map(row -> row.split("\\|"))
        .forEach(row -> check.accept(row[0].strip(), row[1].strip()));
  }
}
