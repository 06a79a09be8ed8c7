package jarwright.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.PlannedBatch;
import jarwright.page.PaperSize;
import jarwright.page.Wording;
import jarwright.render.WordBundle;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A laminated sheet has two sides. Which checklists of all products, methods and packs need more is
 * told here, so that a change which adds one is noticed, and one which takes one away too.
 */
class SideCountTest {
  /**
   * Every so many are printed, and all of those named here; the profile {@code sweep} takes all.
   */
  private static final int STEP = Integer.getInteger("sweep.sheets", 8);

  /** In both languages on both papers. */
  private static final String LONG_WORK =
      """
      14-day-sweet-pickles boiling-water raw: four stretches of work over fourteen days
      sweet-gherkin-pickles boiling-water raw: four days of salt water and syrup
      quick-sweet-pickles boiling-water raw: with lime or without, and a long formula
      quick-sweet-pickles boiling-water hot: with lime or without, and a long formula
      soups-with-seafood dial-gauge hot: each kind of seafood is made ready in its own way
      soups-with-seafood weighted-gauge hot: each kind of seafood is made ready in its own way
      beans-dry-tomato-or-molasses-sauce dial-gauge hot: three sauces to choose from
      beans-dry-tomato-or-molasses-sauce weighted-gauge hot: three sauces to choose from
      """;

  /** Too much by a few lines on the shorter paper, and on both where the words are longer. */
  private static final String NOT_ENGLISH_A4 =
      """
      bread-and-butter-pickles boiling-water hot: with lime or without, and a long formula
      peach-apple-salsa boiling-water hot: three fruits, each made ready in its own way
      """;

  /** The same work takes more words. */
  private static final String SPANISH =
      """
      chile-con-carne dial-gauge hot: soaks overnight, and a formula
      chile-con-carne weighted-gauge hot: soaks overnight, and a formula
      """;

  private static final String SPANISH_LETTER =
      """
      crab-king-dungeness dial-gauge hot: a boil and a bath, each with its acid and salt
      crab-king-dungeness dial-gauge raw: a boil and a bath, each with its acid and salt
      pickled-jalapeno-pepper-rings boiling-water hot: a night in lime, and a formula
      soups dial-gauge hot: vegetables, beans and meat, each made ready in its own way
      quick-fresh-pack-dill-pickles boiling-water raw: a night in brine, and a formula
      tomato-salsa-paste-tomatoes boiling-water hot: eleven ingredients
      """;

  private static Set<String> names(String... lists) {
    return Stream.of(lists)
        .flatMap(String::lines)
        .map(line -> line.substring(0, line.indexOf(':')))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> longOnes(String language, PaperSize paper) {
    boolean letter = paper.equals(PaperSize.LETTER);
    if (language.equals("en")) {
      return letter ? names(LONG_WORK, NOT_ENGLISH_A4) : names(LONG_WORK);
    }
    return letter
        ? names(LONG_WORK, NOT_ENGLISH_A4, SPANISH, SPANISH_LETTER)
        : names(LONG_WORK, NOT_ENGLISH_A4, SPANISH);
  }

  @ParameterizedTest
  @CsvSource({"en, letter", "en, a4", "es, letter", "es, a4"})
  void noOtherChecklistTakesMoreThanTwoSides(String language, String name) throws IOException {
    PaperSize paper = PaperSize.parse(name);
    Wording words = WordBundle.load(language);
    Set<String> expected = longOnes(language, paper);
    Set<String> found = new TreeSet<>();
    Map<String, PlannedBatch> all = AllBatches.named();
    assertTrue(all.keySet().containsAll(expected), "a name that no batch has");
    int at = 0;
    for (Map.Entry<String, PlannedBatch> one : all.entrySet()) {
      if (at++ % STEP == 0 || expected.contains(one.getKey())) {
        int sides = sides(one.getValue(), paper, words);
        assertTrue(sides >= 2 && sides <= 3, () -> one.getKey() + " takes " + sides);
        if (sides > 2) {
          found.add(one.getKey());
        }
      }
    }
    assertEquals(expected, found);
  }

  private static int sides(PlannedBatch batch, PaperSize paper, Wording words) throws IOException {
    byte[] pdf = Printed.pdf(paper, false, List.of(Printed.view(batch, words)), words);
    try (PDDocument document = Printed.read(pdf)) {
      return document.getNumberOfPages();
    }
  }
}
