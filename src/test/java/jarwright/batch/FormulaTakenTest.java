package jarwright.batch;

import static jarwright.batch.Plans.BIG_POT;
import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.process.Book;
import jarwright.process.Formula;
import jarwright.process.FormulaLine;
import jarwright.process.JarSize;
import jarwright.process.JarYield;
import jarwright.process.Product;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How often a formula is made for the jars that a plan asks for, or from the produce it gives. */
class FormulaTakenTest {
  private static final Product RELISH = Book.product("piccalilli");

  /** Yields as AIB 539 (2015) Guides 2, 3, 6 and 7 print them; the sums are done by hand. */
  @ParameterizedTest(name = "{0}: {1} {2} jars take it {3} times and fill {4}")
  @CsvSource({
    "chile-salsa-ii, 9, pint, 1, 7 to 9",
    "chile-salsa-ii, 8, pint, 1, 7 to 9",
    "chile-salsa-ii, 3, pint, 1/2, 3 to 4",
    "chile-salsa-ii, 10, pint, 1-1/2, 10 to 13",
    "bread-and-butter-pickles, 8, pint, 1, 8 to 8",
    "bread-and-butter-pickles, 9, pint, 1-1/2, 12 to 12",
    "bread-and-butter-pickles, 7, quart, 2, 8 to 8",
    "berry-jam-no-added-pectin, 20, half-pint, 5, 15 to 20",
    "berry-jam-no-added-pectin, 2, half-pint, 1, 3 to 4",
    "blueberry-spice-jam, 6, half-pint, 2, 10 to 10",
    "tomato-ketchup, 3, pint, 1/2, 3 to 3",
    "apple-pie-filling, 9, quart, 9, 9 to 9",
    "dill-pickles-fermented, 7, quart, 3-1/2, 7 to 7",
    "dill-pickles-fermented, 9, pint, 2-1/2, 9 to 9"
  })
  void aFormulaIsTakenInHalvesAndJellyInWholes(
      String product, int jars, String jar, String times, String fills) {
    Batch batch =
        Plans.of("product: " + product + "; jars: " + jars + "; jar: " + jar, BIG_POT).batch();
    JarRange range = batch.expected();
    assertEquals(times, batch.formula().orElseThrow().times().orElseThrow().toString());
    assertEquals(fills, range.fewest() + " to " + range.most());
    assertEquals(range.most(), batch.jars(), "jars for what it may fill at most");
    assertEquals(jars, batch.asked().orElseThrow());
  }

  @ParameterizedTest(name = "{1} for {0}: {2} times, {3}")
  @CsvSource({
    "tomato-ketchup, 35 lb, 1, 24 lb, 6 to 7",
    "tomato-ketchup, 36 lb, 1-1/2, 36 lb, 9 to 10",
    "apple-butter, 12-1/2 lb, 1-1/2, 12 lb, 12 to 13",
    "dill-pickles-fermented, 10 lb, 2-1/2, 10 lb, 6 to 10",
  })
  void produceMakesNoMoreOfAFormulaThanThereIs(
      String product, String produce, String times, String taken, String fills) {
    Batch batch =
        Plans.of("product: " + product + "; jar: pint; produce: " + produce, BIG_POT).batch();
    assertEquals(times, batch.formula().orElseThrow().times().orElseThrow().toString());
    assertEquals(Mass.parse(taken), batch.produce().orElseThrow().most());
    assertEquals(fills, batch.expected().fewest() + " to " + batch.expected().most());
  }

  @Test
  void theNextSmallerBatchIsOfferedWhereItFillsAJar() {
    FormulaMultiple once =
        Plans.of("product: chile-salsa-ii; jar: pint; jars: 9", BIG_POT)
            .batch()
            .formula()
            .orElseThrow();
    FormulaMultiple half = once.less(JarSize.PINT).orElseThrow();
    assertEquals(Optional.of(Fraction.of(1, 2)), half.times());
    assertEquals(Optional.empty(), half.less(JarSize.PINT));
    assertEquals(
        Optional.empty(),
        Plans.of("product: berry-jam-no-added-pectin; jar: half-pint; jars: 4", BIG_POT)
            .batch()
            .formula()
            .orElseThrow()
            .less(JarSize.HALF_PINT),
        "jam is never halved");
  }

  @Test
  void theFormulaThatLeavesTheLeastOverIsTakenInTheHalvesThatTheJarsCallFor() {
    assertEquals("a x1", filling(5, JarSize.PINT, formula("a", 4, 5, JarSize.PINT)));
    assertEquals("a x1-1/2", filling(6, JarSize.PINT, formula("a", 4, 5, JarSize.PINT)));
    assertEquals("a x1/2", filling(1, JarSize.PINT, formula("a", 4, 5, JarSize.PINT)));
    assertEquals("a x1", filling(8, JarSize.HALF_PINT, formula("a", 4, 5, JarSize.PINT)));
    assertEquals("a x1-1/2", filling(3, JarSize.QUART, formula("a", 4, 5, JarSize.PINT)));
    assertEquals(
        "b x1", filling(1, JarSize.QUART, formula("b", 3, 4, JarSize.PINT)), "surely one jar");
    Formula four = formula("four", 4, 4, JarSize.PINT);
    Formula five = formula("five", 5, 5, JarSize.PINT);
    assertEquals("five x1", filling(5, JarSize.PINT, four, five));
    assertEquals("four x1", filling(4, JarSize.PINT, four, five));
    assertEquals("five x4", filling(20, JarSize.PINT, four, five), "the fewest pots");
    Formula quarts = formula("quarts", 2, 2, JarSize.QUART);
    assertEquals("four x1-1/2", filling(5, JarSize.PINT, quarts, four), "printed for the size");
    assertEquals("quarts x1", filling(2, JarSize.QUART, four, quarts));
    assertEquals("four x1", filling(8, JarSize.HALF_PINT, four, five), "none for the size");
  }

  @Test
  void aFormulaWithoutACountOfJarsIsShownAsPrinted() {
    Formula uncounted = new Formula("jelly", "per quart of soft jelly", Optional.empty(), lines());
    FormulaMultiple multiple =
        FormulaMultiple.filling(List.of(uncounted), 7, JarSize.PINT, RELISH).orElseThrow();
    assertEquals(Optional.empty(), multiple.times());
    assertEquals(Optional.empty(), multiple.fills(JarSize.PINT));
    assertEquals(lines(), multiple.lines());
    assertEquals(Optional.empty(), FormulaMultiple.filling(List.of(), 7, JarSize.PINT, RELISH));
  }

  private static String filling(int jars, JarSize jar, Formula... printed) {
    FormulaMultiple multiple =
        FormulaMultiple.filling(List.of(printed), jars, jar, RELISH).orElseThrow();
    return multiple.formula().productId() + " x" + multiple.times().orElseThrow();
  }

  private static Formula formula(String name, int fewest, int most, JarSize jar) {
    return new Formula(name, "", Optional.of(new JarYield(fewest, most, jar)), lines());
  }

  private static List<FormulaLine> lines() {
    return List.of(new FormulaLine("sugar", Fraction.ONE, Fraction.ONE, "cup", ""));
  }
}
