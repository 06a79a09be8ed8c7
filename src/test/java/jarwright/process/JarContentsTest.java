package jarwright.process;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.quantity.Fraction;
import jarwright.quantity.Length;
import jarwright.quantity.Volume;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What goes into each jar besides the food, and the room above it. */
class JarContentsTest {
  @ParameterizedTest(name = "{0}, {1}, {2}: {3}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          tomatoes-whole-in-water | quart     | citric acid         | 1/2 tsp | AIB 539 p. 3-5; Michigan State University Extension, record 01600874
          tomatoes-whole-in-water | pint      | citric acid         | 1/4 tsp | AIB 539 p. 3-5; Michigan State University Extension, record 01600874
          tomatoes-whole-in-water | quart     | bottled lemon juice | 2 Tbsp  | AIB 539 p. 3-5; Michigan State University Extension, record 01600874
          tomatoes-whole-in-water | pint      | bottled lemon juice | 1 Tbsp  | AIB 539 p. 3-5; Michigan State University Extension, record 01600874
          tomatoes-whole-in-water | quart     | vinegar 5%          | 4 Tbsp  | AIB 539 p. 3-5; Michigan State University Extension, record 01600874
          tomatoes-whole-in-water | pint      | vinegar 5%          | 2 Tbsp  | half of the quart's, as a state university prints it
          tomatoes-whole-in-water | half-pint | citric acid         | 1/8 tsp | half of the pint's
          tomatoes-whole-in-water | 1-1/2-pint | citric acid        | 3/8 tsp | three quarters of the quart's
          tomatoes-whole-in-water | half-gallon | citric acid       | 1 tsp   | twice the quart's
          figs                    | quart     | citric acid         | 1/2 tsp | AIB 539 Guide 2, figs
          figs                    | quart     | vinegar 5%          | none    | not printed for figs
          pears-asian-halved-or-sliced | pint | bottled lemon juice | 1 Tbsp  | AIB 539 Guide 2, Asian pears
          pears-asian-halved-or-sliced | pint | citric acid         | none    | lemon juice only
          crab-king-dungeness     | pint      | citric acid         | 1 tsp   | AIB 539 Guide 5, crab
          crab-king-dungeness     | half-pint | bottled lemon juice | 2 Tbsp  | AIB 539 Guide 5, crab
          """)
  void acid(String product, String jar, String kind, String dose, String source) {
    AcidRule.PerJar rule = (AcidRule.PerJar) Book.product(product).acid();
    Optional<Volume> amount =
        rule.dose(AcidKind.named(kind).orElseThrow(), JarSize.named(jar).orElseThrow())
            .map(AcidDose::amount);
    assertEquals(
        dose.equals("none") ? Optional.empty() : Optional.of(Volume.parse(dose)), amount, source);
  }

  /** For each acid and each size, listed or not. */
  @Test
  void noDoseIsWeakerThanAnyPrintedProportion() {
    int rules = 0;
    for (Product product : Book.get().products()) {
      if (!(product.acid() instanceof AcidRule.PerJar rule)) {
        continue;
      }
      rules++;
      for (AcidKind kind : rule.choices()) {
        for (JarSize jar : JarSize.values()) {
          Volume dose = rule.dose(kind, jar).orElseThrow().amount();
          for (AcidDose printed : rule.doses()) {
            if (printed.kind() == kind) {
              Fraction share = jar.pints().dividedBy(printed.jar().pints());
              assertTrue(dose.compareTo(printed.amount().times(share)) >= 0, product.id());
            }
          }
        }
      }
    }
    assertEquals(11, rules, "products with acid by the jar");
  }

  @Test
  void anUnlistedSizeTakesTheStrongestOfTheProportions() {
    AcidRule.PerJar rule =
        new AcidRule.PerJar(
            List.of(dose(JarSize.PINT, "1 Tbsp"), dose(JarSize.QUART, "1-1/2 Tbsp")));
    assertEquals("1 Tbsp", amount(rule, JarSize.PINT));
    assertEquals("1-1/2 Tbsp", amount(rule, JarSize.QUART));
    assertEquals("1/2 Tbsp", amount(rule, JarSize.HALF_PINT));
    assertEquals("1-1/2 Tbsp", amount(rule, JarSize.ONE_AND_A_HALF_PINT));
    assertEquals("4 Tbsp", amount(rule, JarSize.HALF_GALLON));
    assertEquals(Optional.empty(), rule.dose(AcidKind.CITRIC_ACID, JarSize.PINT), "another acid");
  }

  @Test
  void onlyAcidByTheJarIsAChoice() {
    assertEquals(
        List.of(AcidKind.BOTTLED_LEMON_JUICE, AcidKind.CITRIC_ACID, AcidKind.VINEGAR),
        Book.product("tomato-juice").acid().choices());
    assertTrue(Book.product("tomato-juice").acid().needsChoice());
    for (AcidRule rule :
        List.of(new AcidRule.None(), new AcidRule.InFormula(), new AcidRule.Fermented())) {
      assertFalse(rule.needsChoice());
      assertEquals(List.of(), rule.choices());
    }
    assertThrows(IllegalArgumentException.class, () -> dose(JarSize.PINT, "0 tsp"));
  }

  @ParameterizedTest(name = "{0}, {1} pack, {2}: {3}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          tomatoes-whole-in-water      | raw | pint       | 1/2 in                                    | AIB 539 p. 3-10
          apple-juice                  | hot | half-gallon | 1/4 in                                   | AIB 539 p. 2-6
          tomato-ketchup               | hot | pint       | 1/8 in                                    | AIB 539 Guide 3, ketchup
          grapes-whole                 | raw | quart      | 1 in                                      | University of Nebraska-Lincoln, Grapes and Grape Juice
          chicken-or-rabbit-boneless   | raw | quart      | 1-1/4 in                                  | Michigan State University Extension, record 01600482
          cantaloupe-pickles           | hot | pint       | solids 1 in, liquid 1/2 in                | AIB 539 Guide 2, cantaloupe pickles
          peach-apple-salsa            | hot | pint       | solids 1-1/4 in, liquid 1/2 in            | AIB 539 Guide 2, peach apple salsa
          beans-lima-fresh             | hot | pint       | 1 in                                      | AIB 539 p. 4-8; University of Minnesota Extension
          beans-lima-fresh             | hot | quart      | 1 in                                      | AIB 539 p. 4-8
          beans-lima-fresh             | raw | pint       | 1 in                                      | AIB 539 p. 4-8; University of Minnesota Extension
          beans-lima-fresh             | raw | half-pint  | 1 in                                      | as the pint that its time is taken from
          beans-lima-fresh             | raw | quart      | small-beans 1-1/2 in, large-beans 1-1/4 in | AIB 539 p. 4-8; University of Minnesota Extension
          beans-lima-fresh             | raw | 1-1/2-pint | small-beans 1-1/2 in, large-beans 1-1/4 in | as the quart that its time is taken from
          """)
  void headspace(String product, String pack, String jar, String room, String source) {
    List<Headspace> found =
        Book.product(product)
            .headspace()
            .of(Pack.named(pack).orElseThrow(), JarSize.named(jar).orElseThrow());
    assertEquals(
        room,
        found.stream().map(h -> (h.of() + " " + h.depth()).strip()).collect(joining(", ")),
        source);
  }

  /**
   * AIB 539 (2015) Guide 1, Controlling headspace: a quarter inch for jams and jellies, one to one
   * and a quarter for low-acid foods in a pressure canner. The rule is from memory, its page (1-13)
   * from the guide's contents. Raw lima beans alone get more.
   */
  @Test
  void jamsAndLowAcidFoodsHaveTheHeadspaceOfTheirKind() {
    Length inch = Length.parse("1 in");
    Length more = Length.parse("1-1/4 in");
    for (Product product : Book.get().products()) {
      List<TableRow> rows = Book.get().rows(product.id());
      boolean lowAcid = rows.stream().allMatch(r -> r.method().isPressure());
      for (HeadspaceRule.Case one : product.headspace().cases()) {
        Length depth = one.headspace().depth();
        if (product.guide() == 7) {
          assertEquals(Length.parse("1/4 in"), depth, product.id());
        } else if (lowAcid && !product.id().equals("beans-lima-fresh")) {
          assertTrue(depth.equals(inch) || depth.equals(more), product.id());
        }
      }
    }
  }

  /** None is missing, none stands twice, none is outside what the guide prints anywhere. */
  @Test
  void everyTestedSettingHasItsHeadspace() {
    for (Product product : Book.get().products()) {
      for (TableRow row : Book.get().rows(product.id())) {
        for (Pack pack : List.of(Pack.RAW, Pack.HOT)) {
          if (row.pack().covers(pack)) {
            List<Headspace> found = product.headspace().of(pack, row.jar());
            List<String> measured = new ArrayList<>(found.stream().map(Headspace::of).toList());
            assertFalse(found.isEmpty(), product.id());
            assertEquals(measured.size(), new HashSet<>(measured).size(), product.id());
            assertTrue(measured.size() == 1 || !measured.contains(""), product.id());
            assertTrue(
                found.stream()
                    .map(Headspace::depth)
                    .allMatch(
                        d ->
                            d.compareTo(Length.parse("1/8 in")) >= 0
                                && d.compareTo(Length.parse("1-1/2 in")) <= 0),
                product.id());
          }
        }
      }
    }
    assertThrows(IllegalArgumentException.class, () -> new HeadspaceRule(List.of()));
  }

  @ParameterizedTest(name = "{0}, {1}: {2}, {3}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          tomatoes-whole-in-water | quart     | TASTE      | 1 tsp   | AIB 539 p. 3-10
          tomatoes-whole-in-water | pint      | TASTE      | 1/2 tsp | half of the quart's
          corn-cream-style        | pint      | TASTE      | 1/2 tsp | AIB 539 Guide 4, corn, cream style
          corn-cream-style        | half-pint | TASTE      | 1/4 tsp | half of the pint's
          peaches-halved-or-sliced | quart    | NONE       |         | no salt in fruit
          soups                   | quart     | TASTE      |         | to taste
          sauerkraut              | quart     | BRINE      |         | AIB 539 Guide 6: vital to safety
          pickled-bell-peppers    | pint      | IN_FORMULA | 1/2 tsp | AIB 539 Guide 6, pickled bell peppers
          """)
  void salt(String product, String jar, SaltRule.Kind kind, String amount, String source) {
    SaltRule rule = Book.product(product).salt();
    assertEquals(kind, rule.kind());
    assertEquals(
        Optional.ofNullable(amount).map(Volume::parse),
        rule.perJar(JarSize.named(jar).orElseThrow()),
        source);
  }

  private static AcidDose dose(JarSize jar, String amount) {
    return new AcidDose(AcidKind.BOTTLED_LEMON_JUICE, jar, Volume.parse(amount));
  }

  private static String amount(AcidRule.PerJar rule, JarSize jar) {
    AcidDose dose = rule.dose(AcidKind.BOTTLED_LEMON_JUICE, jar).orElseThrow();
    assertEquals(jar, dose.jar());
    assertEquals(AcidKind.BOTTLED_LEMON_JUICE, dose.kind());
    return dose.amount().toString();
  }
}
