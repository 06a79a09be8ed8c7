package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.page.Wording;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The print-outs say the same in every language. */
class LanguagesTest {
  private static final String FIRST = WordBundle.LANGUAGES.get(0);
  private static final Pattern BRACES = Pattern.compile("\\{[^}]*}");

  /** Only a language that is not the amounts' own words their units. */
  private static final String UNIT = "unit.";

  private static final List<String> PARTS =
      List.of("common", "checklist", "label", "shelf", "day", "record", "web", "process");

  private static Map<String, String> texts(String part, String language) {
    String file = "/jarwright/words/" + part + "_" + language + ".properties";
    Properties read = new Properties();
    try (InputStreamReader in =
        new InputStreamReader(
            LanguagesTest.class.getResourceAsStream(file), StandardCharsets.UTF_8)) {
      read.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, String> texts = new TreeMap<>();
    read.forEach((key, text) -> texts.put((String) key, (String) text));
    texts.keySet().removeIf(key -> key.startsWith(UNIT));
    return texts;
  }

  /** Every find, as often as it stands there; languages may order them differently. */
  private static List<String> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(MatchResult::group).sorted().toList();
  }

  private static Stream<String> others() {
    return WordBundle.LANGUAGES.stream().skip(1);
  }

  @ParameterizedTest
  @FieldSource("PARTS")
  void everyLanguageHasTheSameKeysValuesAndAmounts(String part) {
    Map<String, String> first = texts(part, FIRST);
    assertFalse(first.isEmpty());
    others()
        .forEach(
            language -> {
              Map<String, String> other = texts(part, language);
              assertEquals(first.keySet(), other.keySet(), language);
              first.forEach(
                  (key, text) -> {
                    assertEquals(
                        found(BRACES, text), found(BRACES, other.get(key)), language + " " + key);
                    assertEquals(
                        text.isBlank(), other.get(key).isBlank(), language + " " + key + " empty");
                  });
            });
  }

  @Test
  void figuresInTheWordsAreTheSame() {
    // 2 psi, 5 %, page and guide numbers: a slip of the translator's here would be a wrong figure
    Pattern digits = Pattern.compile("\\d+(?:[-.,/]\\d+)*");
    others()
        .forEach(
            language -> {
              for (String part : PARTS) {
                Map<String, String> other = texts(part, language);
                texts(part, FIRST)
                    .forEach(
                        (key, text) ->
                            assertEquals(
                                found(digits, text),
                                found(digits, other.get(key)),
                                language + " " + key));
              }
            });
  }

  @Test
  void theMonthsAreDifferentWordsAndADateNamesOne() {
    for (String language : WordBundle.LANGUAGES) {
      Wording words = WordBundle.load(language);
      for (String name : List.of("month.", "month.short.")) {
        Set<String> months = new TreeSet<>();
        for (int month = 1; month <= 12; month++) {
          months.add(words.text(name + month));
        }
        assertEquals(12, months.size(), language + " " + name);
      }
      assertEquals("2026-08-04", words.date("iso", LocalDate.of(2026, 8, 4)), language);
    }
    assertEquals(
        "4 de agosto de 2026", WordBundle.load("es").date("long", LocalDate.of(2026, 8, 4)));
  }

  @Test
  void everyCharacterIsInTheTypeface() {
    Typeface typeface = new Typeface();
    for (String language : WordBundle.LANGUAGES) {
      Set<String> missing =
          PARTS.stream()
              .flatMap(part -> texts(part, language).values().stream())
              .flatMapToInt(String::codePoints)
              .filter(c -> !typeface.regular().has(c) || !typeface.bold().has(c))
              .mapToObj(Character::toString)
              .collect(Collectors.toCollection(TreeSet::new));
      assertTrue(missing.isEmpty(), language + " " + missing);
    }
  }
}
