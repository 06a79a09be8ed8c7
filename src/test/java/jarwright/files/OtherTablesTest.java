package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.ask.Untested;
import jarwright.problem.Refused;
import jarwright.process.Pack;
import jarwright.process.PreparationStep;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Steps, names in other languages, and what has no tested process. */
class OtherTablesTest {
  private static ProcessBook book;

  @BeforeAll
  static void read() throws Exception {
    book = ProcessTables.ofProgram().book();
  }

  @Test
  void everyProductHasItsStepsInEveryLanguage() throws Exception {
    for (Product product : book.products()) {
      List<PreparationStep> english = StepTables.read(product, "en");
      List<PreparationStep> spanish = StepTables.read(product, "es");
      assertFalse(english.isEmpty(), product.id());
      assertEquals(forms(english), forms(spanish), product.id());
    }
  }

  private static List<String> forms(List<PreparationStep> steps) {
    return steps.stream()
        .map(s -> s.pack() + " " + s.stage() + " " + s.kind() + " " + s.caution().isPresent())
        .toList();
  }

  @Test
  void noStepsAreForAProductThatIsNotThere() throws Exception {
    for (int guide = 2; guide <= 7; guide++) {
      String file = StepTables.file(guide, "en");
      for (PreparationStep step : StepTables.readAll(file, ProcessTables.resource(file))) {
        assertEquals(guide, book.product(step.productId()).orElseThrow().guide());
      }
    }
  }

  /** A step for one pack only stands where a process for that pack is printed. */
  @Test
  void stepsForAPackAreForAPackThatIsTested() throws Exception {
    for (Product product : book.products()) {
      for (PreparationStep step : StepTables.read(product, "en")) {
        Pack pack = step.pack().orElse(Pack.RAW_OR_HOT);
        assertTrue(
            step.pack().isEmpty()
                || book.rows(product.id()).stream().anyMatch(r -> r.pack().covers(pack)),
            product.id() + " " + pack);
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "apple,cold,cook,action,Boil,,,,~pack \"cold\"",
        "apple,any,boil,action,Boil,,,,~stage \"boil\"",
        "apple,any,cook,bubble,Boil,,,,~kind \"bubble\"",
        "apple,any,cook,action,,,,,~every step has its text",
        "apple,any,fill,bubbles,Blow,,,,~only bubbles have none",
        "apple,any,cook,action,Boil {5},,,,~",
        "apple,any,cook,action,Boil in {brine},,,,~[brine] are not all among",
        "apple,any,cook,action,Boil~5 cells",
        "apple,any,cook,wait,Soak,,,,~a wait has its length",
        "apple,any,cook,action,Soak {wait},,,,~[wait] are not all among",
        "apple,any,cook,wait,Soak {wait},,2 h,,~a wait has its length and its source",
        "apple,any,cook,wait,Soak {wait},,2 cup,guide,~\"2 cup\" is no stretch of time",
        "apple,any,cook,wait,Soak {wait},,4..2 h,guide,~a stretch of time runs",
      })
  void aDamagedStepIsFound(String row, String message) {
    String text = String.join(",", StepTables.COLUMNS) + "\n" + row + "\n";
    String told =
        assertThrows(Refused.class, () -> StepTables.readAll("steps-2.csv", text)).getMessage();
    assertTrue(told.startsWith("steps-2.csv:2: the program's own table is faulty: "), told);
    assertTrue(message == null || told.contains(message), told);
  }

  @Test
  void everyProductAndEveryLineOfAFormulaHasItsSpanishWords() throws Exception {
    Map<String, String> products = NameTables.products("es");
    assertEquals(
        book.products().stream().map(Product::id).collect(Collectors.toSet()), products.keySet());
    Set<String> printed =
        book.products().stream()
            .flatMap(p -> book.formulas(p.id()).stream())
            .flatMap(f -> f.lines().stream())
            .flatMap(l -> Stream.of(l.ingredient(), l.note()))
            .filter(words -> !words.isEmpty())
            .collect(Collectors.toSet());
    Set<String> named = NameTables.ingredients("es").keySet();
    printed.removeAll(named);
    assertEquals(Set.of(), printed);
  }

  @Test
  void englishNeedsNoNames() throws Exception {
    assertEquals(Map.of(), NameTables.products("en"));
    assertEquals(Map.of(), NameTables.ingredients("en"));
  }

  @Test
  void whatIsUntestedIsNoProductAndNamesOnlyProductsThatAre() throws Exception {
    for (Untested untested : UntestedRows.read()) {
      for (String word : untested.told("en").names()) {
        boolean product = book.product(word.replace(' ', '-')).isPresent();
        assertEquals(word.equals("mango sauce"), product, word);
      }
      for (String id : untested.tested()) {
        assertTrue(book.product(id).isPresent(), id);
      }
      for (String remedy : untested.instead().split("; ")) {
        assertFalse(book.product(remedy).isPresent(), remedy);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"Summer Squash", "summer-squash", "sugar  snap", "half-gallon"})
  void whatIsUntestedIsFoundByItsWords(String asked) throws Exception {
    assertEquals(1, UntestedRows.read().stream().filter(u -> u.isCalled(asked)).count());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "pie,food,pie|Pie,pie,why,freeze,,common practice~\"Pie\" is not small words",
        "pie,food,pie|pie,pie,why,freeze,,common practice~\"pie\" twice",
        "pie,food,pie,,why,freeze,,common practice~needs words, name, reason and remedy",
        "pie,food,pie,pie,why,freeze,,~a figure needs its source",
        "pie,dish,pie,pie,why,freeze,,common practice~kind \"dish\" is none of",
      })
  void aDamagedRowIsFound(String row, String message) {
    String text = String.join(",", UntestedRows.COLUMNS) + "\n" + row + "\n";
    String told = assertThrows(Refused.class, () -> UntestedRows.read(text, Map.of())).getMessage();
    assertTrue(told.contains(message), told);
  }
}
