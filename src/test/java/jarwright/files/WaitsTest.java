package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.process.PreparationStep;
import jarwright.process.PreparationStep.Kind;
import jarwright.process.Product;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Time that passes without hands has its length in the step tables. */
class WaitsTest {
  /** What is done by waiting. */
  private static final Pattern HANDS_FREE =
      Pattern.compile(
          "\\b(soak|stand|chill|refrigerate|marinate|ferment|steep|drip|thaw|overnight|settle"
              + "|let (it|them|the)\\b.*\\b(cool|drain|rest)|cool (a few|just|slightly)"
              + "|cool the (meat|broth|brine|peppers|beets)|cool meat|drain through"
              + "|strain .*(bag|cheesecloth)|repeat these daily steps|keep them at about)\\b",
          Pattern.CASE_INSENSITIVE);

  /** Where such a word names something else than waiting. */
  private static final List<String> NOT_MEANT =
      List.of(
          "Boil beans not soaked overnight",
          "to stand upright in the jar",
          "Stand the beans upright",
          "while they ferment",
          "for a lime soak",
          "Refrigerate the jars");

  private static List<PreparationStep> steps;

  @BeforeAll
  static void read() throws Exception {
    steps = new ArrayList<>();
    for (Product product : ProcessTables.ofProgram().book().products()) {
      steps.addAll(StepTables.read(product, "en"));
    }
  }

  @Test
  void everyStepThatIsDoneByWaitingHasItsLength() {
    List<String> without =
        steps.stream()
            .filter(s -> s.waiting().isEmpty())
            .filter(s -> HANDS_FREE.matcher(s.text().toString()).find())
            .filter(s -> NOT_MEANT.stream().noneMatch(s.text().toString()::contains))
            .map(s -> s.productId() + ": " + s.text())
            .toList();
    assertEquals(List.of(), without);
  }

  /** A length of half an hour or more is a wait, or food on the fire. */
  @Test
  void everyLongTimeInATextIsAWaitOrOnTheFire() {
    List<String> without =
        steps.stream()
            .filter(s -> s.waiting().isEmpty() && s.kind() != Kind.COOK)
            .filter(s -> s.text().toString().matches(".*\\{[0-9./ -]+ (h|days|weeks)}.*"))
            .map(s -> s.productId() + ": " + s.text())
            .toList();
    // How often to look, deadlines, other ways to cook, and when to begin after the harvest.
    assertEquals(
        List.of(
            "beans-baked: Add water as needed, about every {1 h} of the baking",
            "soups-with-seafood: Bleed and gut fish within {2 h} of the catch",
            "fish-in-pint-jars: Bleed and gut the fish within {2 h} of the catch",
            "fish-in-quart-jars: Bleed and gut the fish within {2 h} of the catch",
            "tuna: Bake it instead {1 h} at {350 F}, if you prefer",
            "tuna: Steam it instead {2..4 h}, if you prefer",
            "sauerkraut: Choose firm heads of cabbage; start {24..48 h} after harvest"),
        without.stream().sorted(WaitsTest::byGuide).toList());
  }

  private static int byGuide(String a, String b) {
    return Integer.compare(place(a), place(b));
  }

  private static int place(String told) {
    String id = told.substring(0, told.indexOf(':'));
    return steps.stream().map(PreparationStep::productId).toList().indexOf(id);
  }

  /** The waits that the guide prints: AIB 539 (2015), Guides 2 to 7, at each product. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "apple-juice|24..48 h",
        "cantaloupe-pickles|5 min, 18 h",
        "grape-juice|24..48 h",
        "plums-halved-or-whole|20..30 min",
        "peach-apple-salsa|10 min",
        "tomato-ketchup|20 min",
        "country-western-ketchup|20 min",
        "beans-or-peas-dried-shelled|12..18 h, 1 h",
        "beans-baked|1 h",
        "beans-dry-tomato-or-molasses-sauce|1 h",
        "mushrooms|10 min",
        "chicken-or-rabbit-boneless|6..12 h, 1 h",
        "chicken-or-rabbit-bone-in|6..12 h, 1 h",
        "meat-strips-cubes-chunks|1 h",
        "chile-con-carne|12..18 h",
        "crab-king-dungeness|2 min",
        "dill-pickles-fermented|3..4 weeks",
        "sauerkraut|3..4 weeks",
        "bread-and-butter-pickles|12..24 h, 1 h, 1 h, 1 h, 3..4 h",
        "bread-and-butter-squash-pickles|3..4 h",
        "quick-fresh-pack-dill-pickles|12 h",
        "sweet-gherkin-pickles|6..8 h, 16..18 h, 1 days, 6..8 h, 16..18 h, 6..8 h",
        "14-day-sweet-pickles|2 days, 2 days, 2 days, 1 days, 6 days",
        "quick-sweet-pickles|12..24 h, 1 h, 1 h, 1 h, 3..4 h",
        "pickled-three-bean-salad|12..14 h",
        "pickled-jalapeno-pepper-rings|18 h, 1 h, 1 h, 1 h",
        "pickled-sweet-green-tomatoes|4..6 h",
        "pickled-mixed-vegetables|3..4 h",
        "pickled-bread-and-butter-zucchini|2 h",
        "piccalilli|12 h",
        "pickle-relish|4 h, 1 h, 24 h",
        "tangy-tomatillo-relish|15..20 min",
        "no-sugar-added-sweet-pickle-cucumber-slices|5..10 min",
        "peach-pineapple-spread|15 min",
      })
  void theGuidesOwnWaitsStandInItsOrder(String product, String waits) {
    String published =
        steps.stream()
            .filter(s -> s.productId().equals(product))
            .flatMap(s -> s.waiting().stream())
            .filter(w -> w.source().place().matches("AIB 539 \\(2015\\) Guide [2-7]"))
            .map(w -> w.span().toString())
            .collect(Collectors.joining(", "));
    assertEquals(waits, published);
  }

  /** What the guide prints no figure for says so, and is never passed off as the guide's. */
  @Test
  void everyWaitSaysWhereItIsFrom() {
    for (PreparationStep step : steps) {
      step.waiting()
          .ifPresent(
              w ->
                  assertTrue(
                      w.source()
                          .place()
                          .matches(
                              "AIB 539 \\(2015\\) Guide [2-7](: (overnight; its hours are|several"
                                  + " minutes; how many is) common practice)?"
                                  + "|common practice, no source"),
                      step.productId() + ": " + w.source()));
    }
  }

  @Test
  void theSpanishStepsWaitAsLong() throws Exception {
    for (Product product : ProcessTables.ofProgram().book().products()) {
      List<PreparationStep> english = StepTables.read(product, "en");
      List<PreparationStep> spanish = StepTables.read(product, "es");
      assertEquals(
          english.stream().map(PreparationStep::waiting).toList(),
          spanish.stream().map(PreparationStep::waiting).toList(),
          product.id());
      assertEquals(
          english.stream().map(s -> s.text().times()).toList(),
          spanish.stream().map(s -> s.text().times()).toList(),
          product.id());
    }
  }
}
