package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellTest {
  /** The dangerous beginnings that OWASP lists under "CSV Injection". */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      value = {
        "=1+2 ~ '=1+2",
        "+49 ~ '+49",
        "-3 ~ '-3",
        "@SUM(A1) ~ '@SUM(A1)",
        "\uFF1D1 ~ '\uFF1D1",
        "'quoted' ~ ''quoted'",
        "260824E-5 ~ '260824E-5",
        "plums, halved ~ plums, halved",
        "a-b ~ a-b"
      })
  void whatASpreadsheetWouldComputeIsShownAsText(String text, String cell) {
    assertEquals(cell, Cell.out(text));
  }

  @Test
  void linesTabsAndSemicolonsAreSpelledOut() {
    assertEquals("two\\nlines\\r\\tand\\s a \\\\ slash", Cell.out("two\nlines\r\tand; a \\ slash"));
    assertEquals("\\tcmd", Cell.out("\tcmd"));
    assertEquals("\\u0007\\u2028", Cell.out("\u0007\u2028"));
  }

  @Test
  void anEscapeOfNoMeaningIsNotGuessedAt() {
    assertThrows(IllegalArgumentException.class, () -> Cell.in("a\\x"));
    assertThrows(IllegalArgumentException.class, () -> Cell.in("end\\"));
    assertThrows(IllegalArgumentException.class, () -> Cell.in("\\u12"));
  }
}
