package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.page.Wording;
import jarwright.process.JarSize;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
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

  /** How a language writes numbers; it may have no sign for thousands. */
  private static final String NUMBER = "number.";

  /** A US jar's name says nothing in another language, which adds how much it holds. */
  private static final List<String> JARS = List.of("jar.", "label.jar.");

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
                        text.isBlank() && !key.startsWith(NUMBER),
                        other.get(key).isBlank() && !key.startsWith(NUMBER),
                        language + " " + key + " empty");
                  });
            });
  }

  @Test
  void figuresInTheWordsAreTheSame() {
    // 2 psi, 5 %, page and guide numbers: a slip of the translator's here would be a wrong figure
    Pattern digits = Pattern.compile("\\d+(?:[-.,/]\\d+)*");
    // A US gallon is 3.785 L (NIST Handbook 44, Appendix C): where few know it, litres stand
    // beside.
    Pattern litres = Pattern.compile("(cuartos? de galón) \\(0\\.95 L\\)|(galón) \\(3\\.8 L\\)");
    others()
        .forEach(
            language -> {
              for (String part : PARTS) {
                Map<String, String> other = texts(part, language);
                Map<String, String> first = texts(part, FIRST);
                first.keySet().removeIf(key -> JARS.stream().anyMatch(key::startsWith));
                first.forEach(
                    (key, text) ->
                        assertEquals(
                            found(digits, text),
                            found(digits, litres.matcher(other.get(key)).replaceAll("")),
                            language + " " + key));
              }
            });
  }

  @Test
  void aSpanishJarSaysHowMuchItHolds() {
    // NIST Handbook 44, Appendix C: a US gallon is 231 cubic inches, eight pints.
    Wording words = WordBundle.load("es");
    for (JarSize size : JarSize.values()) {
      BigDecimal litres =
          new BigDecimal(size.pints().numerator())
              .multiply(new BigDecimal("0.473176473"))
              .divide(new BigDecimal(size.pints().denominator()), 6, RoundingMode.HALF_UP);
      boolean small = litres.compareTo(BigDecimal.ONE) < 0;
      String holds =
          small
              ? litres.movePointRight(3).setScale(0, RoundingMode.HALF_UP) + " mL ("
              : litres.setScale(2, RoundingMode.HALF_UP) + " L (";
      for (String name :
          List.of(
              words.count("jar." + size, 1),
              words.count("jar." + size, 2),
              words.text("label.jar." + size))) {
        assertTrue(name.contains(holds), () -> name + " for " + holds);
      }
    }
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
