package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every sentence of the preparation steps can be printed for every household. */
class StepTextsTest {
  private static final Map<String, String> NAMES =
      Map.of("liquid", "syrup", "gel", "220 °F", "wait", "3 h");
  private static final Pattern BRACES = Pattern.compile("\\{[^}]*}");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "steps-2", "steps-3", "steps-4", "steps-5", "steps-6", "steps-7",
        "steps-2_es", "steps-3_es", "steps-4_es", "steps-5_es", "steps-6_es", "steps-7_es"
      })
  void everySentenceIsReadAndPrintedInAllUnits(String file) throws IOException {
    List<String> sentences = sentences(file);
    assertTrue(sentences.size() > 200, file);
    for (String sentence : sentences) {
      MeasuredText text = MeasuredText.parse(sentence);
      assertEquals(sentence, text.toString());
      assertTrue(NAMES.keySet().containsAll(text.names()), sentence);
      for (Units units : Units.values()) {
        String printed = text.text(Style.english(units), NAMES);
        assertFalse(printed.contains("{") || printed.contains("}"), printed);
      }
    }
  }

  /** A quantity that a translation changes would change the food. */
  @ParameterizedTest
  @ValueSource(strings = {"steps-2", "steps-3", "steps-4", "steps-5", "steps-6", "steps-7"})
  void theSpanishStepsHaveTheSameQuantities(String file) throws IOException {
    List<String> english = sentences(file);
    List<String> spanish = sentences(file + "_es");
    assertEquals(english.size(), spanish.size());
    for (int i = 0; i < english.size(); i++) {
      assertEquals(quantities(english.get(i)), quantities(spanish.get(i)), spanish.get(i));
    }
  }

  private static List<String> quantities(String sentence) {
    return BRACES.matcher(sentence).results().map(r -> r.group()).sorted().toList();
  }

  /** Texts and cautions in file order, the empty ones left out. */
  private static List<String> sentences(String file) throws IOException {
    List<String> sentences = new ArrayList<>();
    try (InputStream in =
        StepTextsTest.class.getResourceAsStream("/jarwright/process/" + file + ".csv")) {
      assertNotNull(in, file);
      String table = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      CSVFormat form = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      for (CSVRecord row : CSVParser.parse(table, form)) {
        sentences.add(row.get("text"));
        sentences.add(row.get("caution"));
      }
    }
    return sentences;
  }
}
