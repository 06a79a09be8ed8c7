package jarwright.lot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LotCodeTest {
  private static final LotCode LOT = new LotCode(LocalDate.of(2026, 8, 24), 'A');

  @Test
  void namesDayLetterAndCheckCharacter() {
    assertEquals("260824A-T", LOT.toString());
    assertEquals("260824A-T/03", LOT.jar(3).toString());
    assertEquals("260824A-T/09", LOT.jar(9).toString());
    assertEquals("260824A-T/10", LOT.jar(10).toString());
    assertEquals("260824A-T/114", LOT.jar(114).toString());
  }

  @Test
  void aDayHasBatchesAToZ() {
    Set<String> names = new HashSet<>();
    Optional<LotCode> lot = Optional.of(LOT);
    while (lot.isPresent()) {
      names.add(lot.get().toString());
      lot = lot.get().next();
    }
    assertEquals(26, names.size());
    assertEquals(Optional.empty(), new LotCode(LOT.packed(), 'Z').next());
    assertEquals(Optional.of(new LotCode(LOT.packed(), 'B')), LOT.next());
  }

  /** So that a table of a cannery's lots stays quick. */
  @Test
  void noTwoLotsOfAYearShareAHash() {
    Set<Integer> hashes = new HashSet<>();
    for (int day = 1; day <= 365; day++) {
      for (char letter = 'A'; letter <= 'Z'; letter++) {
        hashes.add(new LotCode(LocalDate.ofYearDay(2026, day), letter).hashCode());
      }
    }
    assertEquals(365 * 26, hashes.size());
  }

  @ParameterizedTest
  @ValueSource(chars = {'@', '[', 'a', '1', 'Ä'})
  void otherLettersAreRefused(char letter) {
    var refused =
        assertThrows(IllegalArgumentException.class, () -> new LotCode(LOT.packed(), letter));
    assertEquals("a day has batches A to Z, not " + letter, refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1999-12-31", "2100-01-01"})
  void otherCenturiesAreRefused(LocalDate day) {
    var refused = assertThrows(IllegalArgumentException.class, () -> new LotCode(day, 'A'));
    assertEquals("a lot is packed in the years 2000 to 2099, not " + day, refused.getMessage());
  }

  @Test
  void theFirstAndLastDayOfTheCenturyHaveLots() {
    LotCode first = new LotCode(LocalDate.of(2000, 1, 1), 'A');
    LotCode last = new LotCode(LocalDate.of(2099, 12, 31), 'Z');
    assertEquals(first, LotCode.parse(first.toString()));
    assertEquals(last, LotCode.parse(last.toString()));
  }

  @ParameterizedTest(name = "\"{0}\"")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          260824A-S | "260824A-S" is mistyped: its check character does not fit
          260842A-X | "260842A-X" is mistyped: its check character does not fit
          ''        | "" is mistyped: a lot looks like YYMMDD, a letter, -, a check character
          260824A   | "260824A" is mistyped: a lot looks like YYMMDD, a letter, -, a check character
          260824AT  | "260824AT" is mistyped: a lot looks like YYMMDD, a letter, -, a check character
          26O824A-T | "26O824A-T" is mistyped: a lot looks like YYMMDD, a letter, -, a check character
          260824A-T/03 | "260824A-T/03" is mistyped: a lot looks like YYMMDD, a letter, -, a check character
          ٢٦٠٨٢٤A-T | "٢٦٠٨٢٤A-T" is mistyped: a lot looks like YYMMDD, a letter, -, a check character
          """)
  void refusesMistypedLots(String text, String message) {
    assertEquals(message, assertThrows(MistypedCode.class, () -> LotCode.parse(text)).getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"260230A", "261301A", "260001A", "260100A", "250229A"})
  void refusesDaysThatTheCalendarDoesNotHave(String name) {
    String text = name + "-" + CheckCharacter.of(name);
    assertEquals(
        "\"" + text + "\" is mistyped: it begins with no date",
        assertThrows(MistypedCode.class, () -> LotCode.parse(text)).getMessage());
  }

  @ParameterizedTest(name = "\"{0}\"")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          260824A-T      | "260824A-T" is mistyped: a jar is its lot, /, and two or more digits
          260824A-T/3    | "260824A-T/3" is mistyped: a jar is its lot, /, and two or more digits
          260824A-T/1234567 | "260824A-T/1234567" is mistyped: a jar is its lot, /, and two or more digits
          260824A-T/00   | "260824A-T/00" is mistyped: jars count from 01
          260824A-S/03   | "260824A-S" is mistyped: its check character does not fit
          """)
  void refusesMistypedJars(String text, String message) {
    assertEquals(message, assertThrows(MistypedCode.class, () -> JarId.parse(text)).getMessage());
  }

  @Test
  void jarsAreNumberedFromOne() {
    assertEquals(1, LOT.jar(1).number());
    assertEquals(
        "jars are numbered from 1, not 0",
        assertThrows(IllegalArgumentException.class, () -> LOT.jar(0)).getMessage());
  }

  @Test
  void whatIsShownOfATypedCodeIsOneShortLine() {
    String typed = "a\nb" + "🍅".repeat(40);
    String message = assertThrows(MistypedCode.class, () -> LotCode.parse(typed)).getMessage();
    assertEquals(
        "\"a b"
            + "🍅".repeat(27)
            + "…\" is mistyped: a lot looks like YYMMDD, a letter, -, a check character",
        message);
    String thirty = "🍅".repeat(30);
    assertEquals(
        "\"" + thirty + "\" is mistyped: a lot looks like YYMMDD, a letter, -, a check character",
        assertThrows(MistypedCode.class, () -> LotCode.parse(thirty)).getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "th-TH-u-ca-buddhist-nu-thai"})
  void codesAreAlikeWhereTheMachineSpeaksAnotherLanguage(String language) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      LotCode lot = new LotCode(LocalDate.of(2026, 8, 24), 'I');
      assertEquals("260824I-D", lot.toString());
      assertEquals(lot, LotCode.parse("260824i-d"));
      assertEquals("260824I-D/03", lot.jar(3).toString());
      assertEquals("2027-08-24", UseBy.after(lot.packed(), 12).toString());
    } finally {
      Locale.setDefault(before);
    }
  }
}
