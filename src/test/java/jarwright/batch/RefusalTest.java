package jarwright.batch;

import static jarwright.batch.Plans.BIG_POT;
import static jarwright.batch.Plans.DIAL_POT;
import static jarwright.batch.Plans.WEIGHT_POT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.plan.Canner;
import jarwright.process.Method;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The words in which a plan is refused, each under the key that it is told at. */
class RefusalTest {
  private static final String ASK =
      "else freeze or refrigerate, and ask your local extension service";

  @Test
  void lowAcidFoodInBoilingWater() {
    assertRefused(
        "product: beans-snap-italian; pack: raw; jar: quart; method: boiling-water",
        "method: beans-snap-italian has no tested boiling-water process: a low-acid food in boiling"
            + " water can grow botulism toxin. tested here: dial-gauge raw-or-hot: pint, quart;"
            + " weighted-gauge raw-or-hot: pint, quart; "
            + ASK);
  }

  @Test
  void aMethodWithoutATableWhereAnotherHasOne() {
    assertRefused(
        "product: sauerkraut; pack: hot; jar: pint; method: dial-gauge",
        "method: sauerkraut has no tested dial-gauge process. tested here: boiling-water hot: pint,"
            + " quart; boiling-water raw: pint, quart; "
            + ASK);
  }

  @Test
  void aPackWithoutATable() {
    assertRefused(
        "product: applesauce; pack: raw; jar: quart; method: boiling-water",
        "pack: applesauce has no tested boiling-water process for raw pack. tested here:"
            + " boiling-water hot: pint, quart; dial-gauge hot: pint, quart; weighted-gauge hot:"
            + " pint, quart; "
            + ASK);
  }

  /** A smaller jar is refused too, where no rule lets it take another size's time. */
  @Test
  void aSmallerJarWithoutATable() {
    String told =
        Plans.of("product: figs; pack: hot; jar: 12-ounce; acid: citric acid", BIG_POT)
            .refusals()
            .get(0);
    assertTrue(
        told.contains(
            "in 12-ounce jars, hot pack: the guide prints no time for this size, and gives it no"
                + " other size's. use half-pint or pint jars; tested here: "),
        told);
  }

  @Test
  void aJarWithoutATable() {
    assertRefused(
        "product: sauerkraut; pack: hot; jar: half-gallon; method: boiling-water",
        "jar: sauerkraut has no tested boiling-water process in half-gallon jars, hot pack: a"
            + " larger jar heats through more slowly than those tested, and no time can be"
            + " stretched to it. use quart jars; tested here: boiling-water hot: pint, quart;"
            + " boiling-water raw: pint, quart; "
            + ASK);
  }

  /**
   * AIB 539 (2015) Guide 6, Pickles with reduced salt content: the salt of sauerkraut and of
   * fermented and brined pickles is vital to their safety; fresh-pack pickles may be made without.
   */
  @ParameterizedTest
  @CsvSource({
    "sauerkraut, quart, false",
    "dill-pickles-fermented, quart, false",
    "sweet-gherkin-pickles, pint, false",
    "14-day-sweet-pickles, pint, false",
    "quick-fresh-pack-dill-pickles, quart, true",
    "reduced-sodium-sliced-dill-pickles, pint, true",
    "pickled-beets, pint, true",
    "chile-salsa, pint, true",
    "beans-snap-italian, pint, true"
  })
  void onlyABrineNeedsItsSalt(String product, String jar, boolean without) {
    String pack = product.equals("sauerkraut") || product.startsWith("beans") ? "; pack: hot" : "";
    String plan = "product: " + product + "; jar: " + jar + pack;
    List<String> refused = Plans.of(plan + "; salt: no", BIG_POT, DIAL_POT).refusals();
    String told = String.join("\n", refused);
    assertEquals(without, !told.contains("is not safe without its salt"), told);
    assertEquals(without, refused.isEmpty(), told);
    assertEquals(without, !told.startsWith("salt: " + product), told);
    assertEquals(without, !told.contains("AIB 539 Guide 6"), told);
    for (String with : List.of("", "; salt: yes")) {
      assertEquals(List.of(), Plans.of(plan + with, BIG_POT, DIAL_POT).refusals(), with);
    }
  }

  @Test
  void anAltitudeAboveTheTable() {
    assertRefused(
        "product: soups; pack: hot; jar: pint; method: dial-gauge; altitude: 2,600 m",
        "altitude: soups has no tested dial-gauge process at 8,531 ft (2,600 m). tested here:"
            + " weighted-gauge hot: pint, quart; "
            + ASK);
  }

  @Test
  void aSettingThatTheGuideCloses() {
    assertRefused(
        "product: pickled-horseradish-sauce; pack: raw; jar: half-pint; method: boiling-water",
        "method: pickled-horseradish-sauce: the guide does not recommend boiling-water, raw pack,"
            + " half-pint at this altitude (AIB 539 (2015) Guide 6). nothing is tested for it here;"
            + " "
            + ASK);
  }

  @Test
  void theMethodAtHandThatTheProductHasATableForIsTheOneExplained() {
    assertRefused(
        List.of(BIG_POT, DIAL_POT),
        "product: soups; jar: quart; altitude: 9,000 ft",
        "altitude: soups has no tested dial-gauge process at 9,000 ft (2,744 m). tested here:"
            + " weighted-gauge hot: pint, quart; "
            + ASK);
  }

  @Test
  void acidMissing() {
    assertRefused(
        "product: tomatoes-whole-in-water; pack: raw; jar: pint; method: boiling-water",
        "batch: tomatoes-whole-in-water needs acid in every jar, and the plan gives none. add acid:"
            + " bottled lemon juice or citric acid or vinegar 5%");
  }

  @Test
  void acidMissingUnderPressureToo() {
    assertRefused(
        "product: tomatoes-crushed; pack: hot; jar: quart; method: dial-gauge",
        "batch: tomatoes-crushed needs acid in every jar, and the plan gives none. add acid:"
            + " bottled lemon juice or citric acid or vinegar 5%");
  }

  @Test
  void anAcidThatIsNotTested() {
    assertRefused(
        "product: figs; pack: hot; jar: pint; method: boiling-water; acid: vinegar 5%",
        "acid: figs has no tested dose of vinegar 5% by the jar. tested: bottled lemon juice or"
            + " citric acid");
  }

  @Test
  void acidWhereNoneBelongs() {
    assertRefused(
        "product: sauerkraut; pack: hot; jar: pint; method: boiling-water; acid: citric acid",
        "acid: sauerkraut has no tested dose of citric acid by the jar. leave acid: out; what the"
            + " guide's formula has is printed on the checklist");
  }

  @Test
  void syrupWhereNoneBelongs() {
    assertRefused(
        "product: asparagus; pack: raw; jar: pint; method: dial-gauge; syrup: light",
        "syrup: asparagus is not packed in syrup. leave syrup: out; it is for plain fruit");
  }

  @Test
  void noPackNamedWhereBothAreTested() {
    assertRefused(
        "product: plums-halved-or-whole; jar: pint; method: boiling-water",
        "batch: the plan names no pack, and both are tested. add pack: raw or pack: hot");
  }

  @Test
  void moreThanOneCannerFits() {
    assertRefused(
        List.of(BIG_POT, DIAL_POT),
        "product: applesauce; jar: pint",
        "batch: more than one canner fits: big pot (boiling-water), dial pot (dial-gauge). name one"
            + " with canner:");
  }

  @Test
  void aCannerThatTheKitchenDoesNotHave() {
    assertRefused(
        "product: applesauce; jar: pint; canner: bigpot",
        "canner: the kitchen has no canner \"bigpot\". did you mean big pot? (known: big pot, dial"
            + " pot, weight pot)");
  }

  @Test
  void aCannerOfAnotherMethod() {
    assertRefused(
        "product: applesauce; jar: pint; canner: big pot; method: dial-gauge",
        "canner: \"big pot\" is a boiling-water canner, but the method is dial-gauge. name a"
            + " dial-gauge canner, or leave the method out");
  }

  @Test
  void noCannerForTheMethodAndNoneAtAll() {
    assertRefused(
        List.of(BIG_POT),
        "product: asparagus; pack: raw; jar: pint; method: dial-gauge",
        "method: the kitchen has no dial-gauge canner. describe one under kitchen, canners");
    assertRefused(
        List.of(),
        "product: asparagus; pack: raw; jar: pint",
        "batch: the kitchen has no canner. describe one under kitchen, canners");
  }

  @Test
  void aPressureThatIsNotTested() {
    assertRefused(
        "product: asparagus; pack: raw; jar: pint; method: dial-gauge; pressure: 10 psi",
        "pressure: 10 psi is not a tested pressure here. tested: 11 psi for 30 min");
    assertRefused(
        "product: tomato-juice; pack: hot; jar: pint; method: dial-gauge; pressure: 76 kPa;"
            + " acid: citric acid",
        "pressure: 76 kPa is not a tested pressure here. tested: 6 psi for 20 min, 11 psi for 15"
            + " min");
  }

  @Test
  void aPressureInBoilingWater() {
    assertRefused(
        "product: applesauce; jar: pint; method: boiling-water; pressure: 6 psi",
        "pressure: a boiling-water canner holds no pressure. leave pressure: out");
  }

  @Test
  void weightsThatHoldNoneOfTheTestedPressures() {
    Canner five = Plans.canner("small weight", Method.WEIGHTED_GAUGE, "5 psi");
    assertRefused(
        List.of(five),
        "product: asparagus; pack: raw; jar: pint",
        "batch: \"small weight\" holds none of the tested pressures. tested: 10 psi for 30 min");
  }

  @Test
  void produceThatTheGuidePrintsNoWeightFor() {
    assertRefused(
        "product: chile-salsa-ii; jar: pint; method: boiling-water; produce: 5 kg",
        "produce: the guide prints no weight of produce for chile-salsa-ii. give the number of jars"
            + " instead");
  }

  @Test
  void produceForLessThanAJarAndForThousands() {
    assertRefused(
        "product: plums-halved-or-whole; pack: raw; jar: quart; method: boiling-water; produce: 1"
            + " lb",
        "produce: 1 lb does not fill one quart jar. take more, or a smaller jar");
    assertRefused(
        "product: plums-halved-or-whole; pack: raw; jar: quart; method: boiling-water; produce:"
            + " 18000 kg",
        "produce: 18000 kg makes more than 2000 jars. check the unit, or divide it into batches");
  }

  @Test
  void produceForLessThanTheLeastOfAFormula() {
    assertRefused(
        "product: apple-butter; jar: pint; method: boiling-water; produce: 3 lb",
        "produce: 3 lb does not fill one pint jar: half the formula takes 4 lb of apples. take"
            + " more, or a smaller jar");
    assertRefused(
        "product: grape-plum-jelly; jar: half-pint; method: boiling-water; produce: 3 lb",
        "produce: 3 lb does not fill one half-pint jar: one formula takes 3-1/2 lb of ripe plums."
            + " take more, or a smaller jar");
    assertRefused(
        "product: dill-pickles-fermented; jar: pint; method: boiling-water; produce: 1 lb",
        "produce: 1 lb does not fill one pint jar: half the formula takes 2 lb of pickling"
            + " cucumbers, 4-inch. take more, or a smaller jar");
  }

  @Test
  void everyProblemOfAPlanIsTold() {
    assertRefused(
        "product: figs; pack: raw; jar: pint; method: boiling-water; produce: 1 oz; syrup: light",
        "pack: figs has no tested boiling-water process for raw pack. tested here: boiling-water"
            + " hot: pint, quart; "
            + ASK,
        "produce: 1 oz does not fill one pint jar. take more, or a smaller jar",
        "batch: figs needs acid in every jar, and the plan gives none. add acid: bottled lemon"
            + " juice or citric acid");
  }

  private static void assertRefused(String plan, String... problems) {
    assertRefused(List.of(BIG_POT, DIAL_POT, WEIGHT_POT), plan, problems);
  }

  private static void assertRefused(List<Canner> canners, String plan, String... problems) {
    assertEquals(
        List.of(problems), Plans.of(plan, canners.toArray(Canner[]::new)).refusals(), plan);
  }
}
