package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a terminal without a character gets in its place. */
class SpelledStreamTest {
  private static String written(String text, Charset charset) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (SpelledStream out = new SpelledStream(bytes, charset)) {
      out.println(text);
    }
    return bytes.toString(charset).strip();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "08:30\u201308:38~08:30-08:38",
        "1\u00BD tsp~1 1/2 tsp",
        "\u00BC to \u00BE tsp~1/4 to 3/4 tsp",
        "1\u20441\u2044~1/1/",
        "212 \u00B0F~212 degF",
        "2 \u00D7 7 jars \u00B7 raw~2 x 7 jars - raw",
        "pl\u00E1tano, ni\u00F1o~platano, nino",
        "Ærø, Müßig~Aero, Mussig",
        "a line\u2026~a line...",
        "\u2300 41 mm~dia. 41 mm",
        "\u2265 11 psi~>= 11 psi",
        "shelf \uD83C\uDF53~shelf [U+1F353]",
        "\u0627\u0644\u0631\u0641~[U+0627][U+0644][U+0631][U+0641]",
        "10\u00B2 cm\u00B3~10^2 cm^3"
      })
  void aTerminalOfPlainLettersGetsThem(String text, String spelled) {
    assertEquals(spelled, written(text, StandardCharsets.US_ASCII));
  }

  @ParameterizedTest
  @CsvSource({"1\u00BD tsp \u00B7 ni\u00F1o", "plums"})
  void whatTheTerminalHasStays(String text) {
    assertEquals(text, written(text, StandardCharsets.ISO_8859_1));
  }
}
