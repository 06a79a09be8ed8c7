package jarwright.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words and their stems; common usage, no source. */
class SpellingTest {
  @ParameterizedTest
  @CsvSource({
    "Grandma's PICKLES, grandma pickles",
    "1½-pint jars, 1 1/2 pint jars",
    "500ml, 500 ml",
    "1.500 m, 1.500 m",
    "5 % vinegar, 5% vinegar",
    "bread & butter, bread and butter",
    "¿Piña?, pina",
    "'5,400 ft', '5,400 ft'",
    "'', ''",
  })
  void textsAreCutIntoWords(String text, String words) {
    assertEquals(words, String.join(" ", Spelling.words(text)));
  }

  @ParameterizedTest
  @CsvSource({
    "en, peaches, peach, true",
    "en, cherries, cherry, true",
    "en, potatoes, potato, true",
    "en, grapes, grape, true",
    "en, turkeys, turkey, true",
    "en, peas, pea, true",
    "en, molasses, molasse, true",
    "en, pear, pearl, false",
    "en, corn, corned, false",
    "en, lime, lima, false",
    "en, bass, bas, false",
    "es, frijoles, frijol, true",
    "es, encurtidas, encurtido, true",
    "es, limones, limon, true",
    "es, lima, limon, false",
    "es, nueces, nuez, true",
    "es, uvas, uva, true",
    "es, papas, papaya, false",
  })
  void formsOfAWordAreAlike(String language, String one, String other, boolean alike) {
    assertEquals(alike, Spelling.stem(language, one).equals(Spelling.stem(language, other)));
  }

  @Property(tries = 300)
  void anyTextIsCutAndItsWordsStandAsTheyAre(@ForAll @StringLength(max = 60) String text) {
    List<String> words = Spelling.words(text);
    assertEquals(words, Spelling.words(String.join(" ", words)));
  }
}
