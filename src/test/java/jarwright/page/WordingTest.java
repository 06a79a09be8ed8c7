package jarwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WordingTest {

  private static Wording words(String... pairs) {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("number.decimal", ",");
    texts.put("number.thousands", ".");
    texts.put("month.8", "agosto");
    texts.put("month.short.8", "ago");
    for (int i = 0; i < pairs.length; i += 2) {
      texts.put(pairs[i], pairs[i + 1]);
    }
    return Wording.of(Locale.forLanguageTag("es"), texts);
  }

  @Test
  void placeholdersAreFilledAndNumbersFollowTheLanguage() {
    Wording words = words("boil", "Boil {minutes} min at {feet} ft, {acid} tsp");
    assertEquals(
        "Boil 25 min at 1.000 ft, 0,50 tsp",
        words.text("boil", Map.of("minutes", 25, "feet", 1000L, "acid", new BigDecimal("0.50"))));
  }

  @Test
  void aMissingKeyIsToldWithTheLanguage() {
    assertFails("no text \"boil\" in language es", () -> words().text("boil"));
  }

  @Test
  void aMissingValueIsTold() {
    Wording words = words("boil", "Boil {minutes} min");
    assertFails("text \"boil\" wants a value for {minutes}", () -> words.text("boil"));
  }

  @Test
  void aValueWithoutPlaceholderIsTold() {
    Wording words = words("boil", "Boil");
    assertFails(
        "text \"boil\" has no placeholder {minutes}",
        () -> words.text("boil", Map.of("minutes", 25)));
  }

  @Test
  void aValueIsNotTakenForAPattern() {
    assertEquals("Plums $1 {x}", words("name", "{n}").text("name", Map.of("n", "Plums $1 {x}")));
  }

  @Test
  void oneThingHasItsOwnForm() {
    Wording words = words("jars.one", "one jar", "jars.other", "{n} jars");
    assertEquals("one jar", words.count("jars", 1));
    assertEquals("0 jars", words.count("jars", 0));
    assertEquals("1.200 jars", words.count("jars", 1200));
  }

  @Test
  void datesFollowTheWordsStyle() {
    LocalDate date = LocalDate.of(2026, 8, 4);
    assertEquals("2026-08-04", words("date.iso", "{year}-{mm}-{dd}").date("iso", date));
    assertEquals(
        "4 de agosto de 2026", words("date.long", "{day} de {month} de {year}").date("long", date));
    assertEquals("ago 2026", words("date.month", "{mon} {year}").date("month", date));
    assertFails("no text \"date.long\" in language es", () -> words().date("long", date));
  }

  @Test
  void thousandsAreSetApartInThrees() {
    assertEquals("999", words().number(999));
    assertEquals("1.000", words().number(1000));
    assertEquals("-1.234.567", words().number(-1234567));
    assertEquals("1.234,5", words().number(new BigDecimal("1234.5")));
  }

  private static void assertFails(String message, Runnable run) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, run::run).getMessage());
  }
}
