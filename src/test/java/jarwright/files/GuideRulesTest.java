package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.process.AcidDose;
import jarwright.process.AcidKind;
import jarwright.process.AcidRule;
import jarwright.process.Formula;
import jarwright.process.JarSize;
import jarwright.process.JarYield;
import jarwright.process.Pack;
import jarwright.process.ProcessBook;
import jarwright.process.ProduceNeed;
import jarwright.process.Product;
import jarwright.process.SaltRule;
import jarwright.process.Syrup;
import jarwright.process.SyrupRow;
import jarwright.quantity.Fraction;
import jarwright.quantity.Volume;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the product columns say, against the printed guide: USDA, Complete Guide to Home Canning,
 * AIB 539 (2015). The page stands in each line.
 */
class GuideRulesTest {
  private static ProcessBook book;

  @BeforeAll
  static void read() throws Exception {
    book = ProcessTables.ofProgram().book();
  }

  @ParameterizedTest
  @CsvSource({
    // Guide 3, acidification: 2 Tbsp bottled lemon juice, 1/2 tsp citric acid or 4 Tbsp vinegar to
    // the quart
    "tomatoes-whole-in-water, bottled lemon juice, quart, 2 Tbsp",
    "tomatoes-whole-in-water, citric acid, quart, 1/2 tsp",
    "tomatoes-whole-in-water, vinegar 5%, quart, 4 Tbsp",
    "tomatoes-whole-in-water, bottled lemon juice, pint, 1 Tbsp",
    "tomatoes-whole-in-water, citric acid, pint, 1/4 tsp",
    // half the quart's dose, which a state extension service prints too
    "tomatoes-whole-in-water, vinegar 5%, pint, 2 Tbsp",
    // p. 2-14
    "figs, bottled lemon juice, quart, 2 Tbsp",
    "figs, citric acid, pint, 1/4 tsp",
    // p. 2-20
    "pears-asian-halved-or-sliced, bottled lemon juice, pint, 1 Tbsp",
    // p. 5-10: per half-pint 1/2 tsp citric acid or 2 Tbsp lemon juice, twice that per pint
    "crab-king-dungeness, citric acid, half-pint, 1/2 tsp",
    "crab-king-dungeness, bottled lemon juice, half-pint, 2 Tbsp",
    "crab-king-dungeness, citric acid, pint, 1 tsp",
  })
  void theAcidOfAJar(String product, String kind, String jar, String dose) {
    AcidRule.PerJar rule = (AcidRule.PerJar) product(product).acid();
    Optional<AcidDose> found =
        rule.dose(AcidKind.named(kind).orElseThrow(), JarSize.named(jar).orElseThrow());
    assertEquals(0, found.orElseThrow().amount().compareTo(Volume.parse(dose)));
  }

  @Test
  void lemonJuiceAloneForAsianPears() {
    assertEquals(
        List.of(AcidKind.BOTTLED_LEMON_JUICE),
        product("pears-asian-halved-or-sliced").acid().choices());
  }

  @Test
  void acidsThatNobodyMayChange() {
    assertTrue(product("sauerkraut").acid() instanceof AcidRule.Fermented);
    assertTrue(product("chile-salsa").acid() instanceof AcidRule.InFormula);
    assertTrue(product("beans-snap-italian").acid() instanceof AcidRule.None);
  }

  @ParameterizedTest
  @CsvSource({
    // p. 4-8: 1 in; but raw small limas 1-1/2 in and large ones 1-1/4 in, in quarts
    "beans-lima-fresh, hot, quart, 1 in",
    "beans-lima-fresh, raw, pint, 1 in",
    "beans-lima-fresh, raw, quart, small-beans 1-1/2 in; large-beans 1-1/4 in",
    // p. 2-12
    "cantaloupe-pickles, hot, pint, solids 1 in; liquid 1/2 in",
    "plums-halved-or-whole, raw, quart, 1/2 in",
  })
  void theHeadspace(String product, String pack, String jar, String expected) {
    String found =
        String.join(
            "; ",
            product(product)
                .headspace()
                .of(Pack.named(pack).orElseThrow(), JarSize.named(jar).orElseThrow())
                .stream()
                .map(h -> (h.of() + " " + h.depth()).strip())
                .toList());
    assertEquals(expected, found);
  }

  @ParameterizedTest
  @CsvSource({
    "tomatoes-whole-in-water, TASTE, quart, 1 tsp", // p. 3-10
    "corn-cream-style, TASTE, pint, 1/2 tsp", // p. 4-11
    "corn-cream-style, TASTE, half-pint, 1/4 tsp",
    "fish-in-quart-jars, TASTE, quart, 1 tsp", // p. 5-12: 1 to 2 tsp, the lower
    "marinated-peppers, IN_FORMULA, half-pint, 1/4 tsp", // Guide 6
    "soups, TASTE, quart, none", // p. 4-19: to taste
    "chile-salsa, IN_FORMULA, pint, none", // p. 3-21: in the formula
    "plums-halved-or-whole, NONE, quart, none",
  })
  void theSaltOfAJar(String product, SaltRule.Kind kind, String jar, String amount) {
    SaltRule rule = product(product).salt();
    assertEquals(kind, rule.kind());
    Optional<Volume> found = rule.perJar(JarSize.named(jar).orElseThrow());
    assertEquals(!amount.equals("none"), found.isPresent());
    found.ifPresent(f -> assertEquals(0, f.compareTo(Volume.parse(amount))));
  }

  @ParameterizedTest
  @CsvSource({
    "tomatoes-whole-in-water, 21, 13, 3, 53, 15, 21", // p. 3-10
    "plums-halved-or-whole, 14, 9, 2, 56, 22, 36", // p. 2-22
    "potatoes-white, 20, 13, 3, 50, , ", // p. 4-17: 2-1/2 to 3 lb for a quart, the larger
    "pears-asian-halved-or-sliced, 19, 13, , , , ", // p. 2-20: 17-19 and 11-13 lb, the larger
    "corn-cream-style, , 20, 4-1/2, 35, 6, 10", // p. 4-11: 12 to 20 pints, 2-1/4 lb for a pint
    "peppers, , 9, 2, 25, 10, 15", // p. 4-16: 20 to 30 pints, 1 lb for a pint
  })
  void theProduceForALoad(
      String id, String quarts, String pints, String each, String box, String few, String many) {
    ProduceNeed need = product(id).produce();
    assertEquals(Optional.ofNullable(quarts).map(Fraction::parse), need.perSevenQuarts());
    assertEquals(Optional.ofNullable(pints).map(Fraction::parse), need.perNinePints());
    assertEquals(Optional.ofNullable(each).map(Fraction::parse), need.perQuart());
    assertEquals(
        Optional.ofNullable(box).map(Fraction::parse),
        need.container().map(ProduceNeed.Container::pounds));
    if (few != null) {
      assertEquals(Fraction.parse(few), need.container().orElseThrow().fewestQuarts());
      assertEquals(Fraction.parse(many), need.container().orElseThrow().mostQuarts());
    }
  }

  @Test
  void aFormulaOfTwoYieldsIsTwoFormulas() {
    List<Formula> filling = book.formulas("blueberry-pie-filling"); // p. 2-27
    assertEquals(
        List.of(
            Optional.of(new JarYield(1, 1, JarSize.QUART)),
            Optional.of(new JarYield(7, 7, JarSize.QUART))),
        filling.stream().map(Formula::jars).toList());
    assertEquals(
        List.of(JarSize.PINT, JarSize.TWELVE_OUNCE),
        book.formulas("pickled-asparagus").stream()
            .map(f -> f.jars().orElseThrow().jar())
            .toList());
  }

  @Test
  void yieldsAsThePrintedTextHasThem() {
    assertEquals(Optional.of(new JarYield(8, 9, JarSize.PINT)), jars("apple-butter")); // p. 2-6
    assertEquals(Optional.of(new JarYield(5, 5, JarSize.PINT)), jars("chayote-and-pear-relish"));
    assertEquals(
        Optional.of(new JarYield(4, 5, JarSize.HALF_PINT)), jars("apple-jelly-no-added-pectin"));
    for (String uncounted :
        List.of("beans-baked", "dill-pickles-fermented", "remade-soft-jelly-powdered-pectin")) {
      assertEquals(Optional.empty(), jars(uncounted), uncounted);
    }
  }

  @Test
  void rangesAndTasteInFormulas() {
    assertEquals(
        List.of("chile peppers 2-1/2 to 3 lb"),
        book.formulas("mexican-tomato-sauce").get(0).lines().stream() // p. 3-16
            .filter(l -> !l.least().equals(l.most()))
            .map(l -> l.ingredient() + " " + l.least() + " to " + l.most() + " " + l.unit())
            .toList());
    assertEquals(
        List.of("food coloring"),
        book.formulas("refrigerated-apple-spread").get(0).lines().stream() // Guide 7
            .filter(l -> l.isToTaste())
            .map(l -> l.ingredient())
            .toList());
  }

  @Test
  void syrupForACannerLoad() { // p. 2-5: light, 7 quarts: 9 cups of water, 2-1/4 of sugar
    SyrupRow light = book.syrup(Syrup.LIGHT, JarSize.QUART);
    assertEquals(
        List.of(7, Volume.parse("9 cup"), Volume.parse("2-1/4 cup")),
        List.of(light.jars(), light.water(), light.sugar()));
  }

  private static Optional<JarYield> jars(String product) {
    return book.formulas(product).get(0).jars();
  }

  private static Product product(String id) {
    return book.product(id).orElseThrow();
  }
}
