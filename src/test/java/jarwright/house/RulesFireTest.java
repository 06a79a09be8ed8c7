package jarwright.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each rule of the house tells of the classes that were written against it, and of no others. */
class RulesFireTest {

  private static final House HOUSE = new House("jarwright.house.fixture");

  private static final Map<String, ArchRule> RULES = ArchitectureTest.rules(HOUSE);

  private static final JavaClasses FIXTURES =
      new ClassFileImporter()
          .importPath(SourceTree.root().resolve("target/test-classes/jarwright/house/fixture"));

  /** What each rule must find; a rule that is not here must find nothing. */
  private static Map<String, List<String>> expected() {
    Map<String, List<String>> found = new TreeMap<>();
    found.put(
        "1 every class is in a package of the table", List.of("cupboard.Stray", "utils.Drawer"));
    found.put("1 what quantity may use", List.of("quantity.KnowsProcess.most()"));
    found.put("1 what plan may use", List.of("plan.RoundTrip.there()"));
    found.put("1 what checklist may use", List.of("checklist.KnowsShelf.name()"));
    found.put("1 what label may use", List.of("label.KnowsShelf.name()"));
    found.put("1 what record may use", List.of("record.KnowsShelf.name()"));
    found.put("1 what shelf may use", List.of("shelf.KnowsLabel.name()"));
    found.put("1 what web may use", List.of("web.ReachesPast"));
    found.put("1 what day may use", List.of("day.KnowsServer"));
    found.put("2 no package cycles", List.of("plan.RoundTrip.there()", "label.KnowsShelf.name()"));
    found.put("3 checklist ignores the others", List.of("checklist.KnowsShelf.name()"));
    found.put("3 label ignores the others", List.of("label.KnowsShelf.name()"));
    found.put("3 record ignores the others", List.of("record.KnowsShelf.name()"));
    found.put("3 shelf ignores the others", List.of("shelf.KnowsLabel.name()"));
    found.put("4 the core does no I/O", List.of("lot.ReadsFile.text("));
    found.put("4 the core draws no random numbers", List.of("lot.ThrowsDice.code()"));
    found.put(
        "5 only cli reads the clock",
        List.of(
            "pantry.ReadsClock.today()",
            "pantry.ReadsClock.ticker()",
            "pantry.ReadsClock.millis()"));
    found.put(
        "6 no default locale",
        List.of(
            "render.DefaultLocale.formats(",
            "render.DefaultLocale.formatted(",
            "render.DefaultLocale.upper()",
            "render.DefaultLocale.message(",
            "render.DefaultLocale.number(",
            "render.DefaultLocale.pattern()",
            "render.DefaultLocale.fallsBack()"));
    House.BEHIND.forEach(
        (name, prefixes) ->
            prefixes.forEach(
                prefix ->
                    found.put(
                        "7 " + prefix + " stays behind " + name,
                        List.of(name.equals("web") ? "day.KnowsServer" : "web.ReachesPast"))));
    found.put(
        "8 only cli.Main touches the process",
        List.of("files.Prints.shout()", "files.Prints.leave()"));
    found.put("9 core fields are final", List.of("day.Changes.jars"));
    found.put("10 no junk-drawer class names", List.of("cli.JarHelper"));
    found.put("10 no junk-drawer package names", List.of("utils.Drawer"));
    found.put(
        "11 no float or double in a signature",
        List.of("batch.HalfDose.signature()", "batch.HalfDose.parameter(", "batch.HalfDose.FIELD"));
    found.put(
        "11 no Float or Double as a type", List.of("batch.HalfDose.type(", "batch.HalfDose.FIELD"));
    found.put(
        "11 no float or double in a call",
        List.of("batch.HalfDose.call(", "batch.HalfDose.conversion(", "batch.HalfDose.FIELD"));
    found.put("12 no setters in the core", List.of("day.Changes.setJars("));
    found.put("13 no generic exceptions thrown", List.of("render.ThrowsAnything.thrown()"));
    found.put("13 no generic exceptions declared", List.of("render.ThrowsAnything.declared()"));
    return found;
  }

  @TestFactory
  Stream<DynamicTest> eachRuleFindsWhatWasWrittenAgainstIt() {
    Map<String, List<String>> expected = expected();
    return RULES.keySet().stream()
        .map(
            rule ->
                DynamicTest.dynamicTest(
                    rule, () -> assertFinds(rule, expected.getOrDefault(rule, List.of()))));
  }

  private static void assertFinds(String rule, List<String> expected) {
    List<String> told = RULES.get(rule).evaluate(FIXTURES).getFailureReport().getDetails();
    for (String offender : expected) {
      assertTrue(
          told.stream().anyMatch(line -> line.contains("fixture." + offender)),
          () -> offender + " is not among " + told);
    }
    List<String> others =
        told.stream()
            .filter(line -> expected.stream().noneMatch(it -> line.contains("fixture." + it)))
            .collect(Collectors.toList());
    assertTrue(others.isEmpty(), () -> "told without cause: " + others);
  }

  @Test
  void everyExpectationBelongsToARule() {
    Set<String> unknown = new TreeSet<>(expected().keySet());
    unknown.removeAll(RULES.keySet());
    assertEquals(Set.of(), unknown);
  }

  @Test
  void allThirteenRulesAreThereWithTheirReasons() {
    Set<Integer> numbers =
        RULES.keySet().stream()
            .map(name -> Integer.valueOf(name.substring(0, name.indexOf(' '))))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals("[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13]", numbers.toString());
    RULES.forEach((name, rule) -> assertTrue(rule.getDescription().contains("because"), name));
  }

  @Test
  void noRuleFailsForWantOfClasses() {
    JavaClasses none = new ClassFileImporter().importClasses(List.of());
    RULES.forEach((name, rule) -> assertFalse(rule.evaluate(none).hasViolation(), name));
  }
}
