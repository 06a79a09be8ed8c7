package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.process.Book;
import jarwright.process.Buying;
import jarwright.process.Formula;
import jarwright.process.FormulaLine;
import jarwright.process.Pack;
import jarwright.process.Product;
import jarwright.process.Purchase;
import jarwright.process.Supply;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How things are bought: every ingredient and every product has its line, with its source. */
class BuyingTablesTest {
  private static Buying buying;

  @BeforeAll
  static void read() throws Exception {
    buying = BuyingTables.read();
  }

  @Test
  void everyIngredientOfEveryFormulaIsBoughtSomehow() {
    int lines = 0;
    for (Product product : Book.get().products()) {
      for (Formula formula : Book.get().formulas(product.id())) {
        for (FormulaLine line : formula.lines()) {
          Purchase purchase = buying.of(line);
          boolean made =
              line.ingredient().contains("water")
                  || line.ingredient().contains("(measured)")
                  || line.ingredient().equals("soft jelly")
                  || line.ingredient().equals("bean cooking liquid")
                  || line.isInstead();
          assertTrue(made || !purchase.isNothing(), line + "");
          lines++;
        }
      }
    }
    assertEquals(830, lines);
  }

  /** What has no formula has its produce, in shares of the printed weight that make one whole. */
  @Test
  void everyProductHasItsProduce() {
    for (Product product : Book.get().products()) {
      for (Pack pack : List.of(Pack.RAW, Pack.HOT)) {
        List<Supply> supplies = buying.supplies(product, pack);
        Fraction share =
            supplies.stream()
                .filter(s -> s.per() == Supply.Per.SHARE)
                .map(Supply::part)
                .reduce(Fraction.ZERO, Fraction::plus);
        boolean fills = supplies.stream().anyMatch(s -> s.per() == Supply.Per.JARS);
        boolean byQuart = product.id().equals("apple-juice");
        boolean formula = !Book.get().formulas(product.id()).isEmpty();
        boolean weighed = product.produce().isPrinted();
        assertTrue(share.signum() == 0 || share.equals(Fraction.ONE), product.id());
        assertTrue(share.signum() == 0 || weighed, product.id());
        assertTrue(formula || share.signum() > 0 || fills || byQuart, product.id());
      }
    }
  }

  /** AIB 539 (2015) p. 3-5 prints it once; the tables of products and of supplies both hold it. */
  @Test
  void theJuiceThatCoversTakesWhatAQuartOfJuiceTakes() {
    Mass pressed =
        buying.supplies(Book.product("tomatoes-whole-in-juice"), Pack.RAW).stream()
            .filter(s -> s.per() == Supply.Per.COVER)
            .findFirst()
            .flatMap(Supply::mass)
            .orElseThrow();
    assertEquals(
        Book.product("tomato-juice").produce().perQuart(), Optional.of(pressed.inPounds()));
  }

  /**
   * Weights of a cup from the USDA National Nutrient Database, release 28, held against what AIB
   * 539 (2015) itself prints beside a measure in its formulas. Food cut by hand differs by a third.
   * (The peppers are "about 4 large" there; a large one has 186 g without its refuse of 18 %.)
   */
  @ParameterizedTest(name = "{1} {2} of {0}: about {3}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          yellow onion, fine             | 2-1/2 | cup | 3/4 lb
          onions, thinly sliced          | 8     | cup | 3 lb
          cranberries, fresh whole       | 12    | cup | 2-3/4 lb
          unripe mango, chopped          | 11    | cup | 4 lb
          jicama, diced                  | 9     | cup | 4 lb
          yellow bell peppers, chopped   | 5     | cup | 2 lb
          carrots, peeled                | 2-3/4 | lb  | 3-1/2 lb
          horseradish, freshly grated    | 2     | cup | 3/4 lb
          """)
  void weightsAgreeWithTheGuidesOwn(String ingredient, String amount, String unit, String pounds) {
    Fraction measure = Fraction.parse(amount);
    Purchase purchase = buying.of(new FormulaLine(ingredient, measure, measure, unit, ""));
    Fraction bought = purchase.weighing().orElseThrow().of(measure, unit).orElseThrow().inPounds();
    Fraction printed = Mass.parse(pounds).inPounds();
    assertTrue(bought.times(3).compareTo(printed.times(2)) >= 0, bought.toString());
    assertTrue(bought.times(2).compareTo(printed.times(3)) <= 0, bought.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = "es")
  void everyThingToBuyHasItsNameInEveryLanguage(String language) throws Exception {
    Map<String, String> names = NameTables.ingredients(language);
    for (Product product : Book.get().products()) {
      for (Pack pack : List.of(Pack.RAW, Pack.HOT)) {
        buying
            .supplies(product, pack)
            .forEach(s -> assertTrue(names.containsKey(s.what()), s + ""));
      }
      for (Formula formula : Book.get().formulas(product.id())) {
        for (FormulaLine line : formula.lines()) {
          Purchase purchase = buying.of(line);
          assertTrue(purchase.isNothing() || names.containsKey(purchase.what()), purchase.what());
        }
      }
    }
    assertTrue(names.containsKey("citric acid") && names.containsKey("apple or white grape juice"));
  }
}
