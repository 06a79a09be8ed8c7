package jarwright.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProblemTest {
  private static final List<String> JARS = List.of("half-pint", "pint", "quart");

  @Test
  void showsPlaceFaultRemedyAndTheLineWithACaret() {
    Place place = new Place("plan.yaml", 3, 8, "  jar: quarts");
    assertEquals(
        """
        plan.yaml:3:8: "quarts" is not known. did you mean quart?
            jar: quarts
                 ^\
        """,
        new Problem(place, "\"quarts\" is not known", "did you mean quart?").text());
  }

  @Test
  void showsAsMuchOfThePlaceAsIsKnown() {
    assertEquals("plan.yaml: it is empty.", text(Place.wholeFile("plan.yaml"), ""));
    assertEquals("plan.csv:7: it is empty.", text(new Place("plan.csv", 7, 0, "a;b"), ""));
    assertEquals("p:7:2: it is empty. Fill it.", text(new Place("p", 7, 2, ""), "Fill it"));
  }

  @Test
  void aTabMovesTheCaretByOneColumn() {
    assertEquals("p:1:3: it is empty.\n   xy\n    ^", text(new Place("p", 1, 3, "\txy"), ""));
  }

  @Test
  void aLineTooLongForAScreenIsNotShown() {
    String line = "x".repeat(120);
    assertTrue(text(new Place("p", 1, 5, line), "").contains(line));
    assertEquals("p:1:5: it is empty.", text(new Place("p", 1, 5, line + "x"), ""));
  }

  @Test
  void aSentenceIsClosedOnce() {
    assertEquals("p: why? yes! no.", new Problem(Place.wholeFile("p"), "why?", "yes! no").text());
    assertEquals("p: stop. go.", new Problem(Place.wholeFile("p"), "stop.", "go.").text());
    assertEquals("p: stop! go?", new Problem(Place.wholeFile("p"), "stop!", "go?").text());
  }

  @Test
  void allProblemsAreToldAtOnce() {
    Problems problems = new Problems();
    assertTrue(problems.isEmpty());
    Place place = Place.wholeFile("plan.yaml");
    problems.add(place, "no altitude", "write altitude: 420 m");
    problems.addAll(List.of(new Problem(place, "no jar", "")));
    assertEquals(2, problems.list().size());
    Refused refused = assertThrows(Refused.class, problems::refuse);
    assertEquals(problems.list(), refused.problems());
    assertEquals(
        "plan.yaml: no altitude. write altitude: 420 m.\nplan.yaml: no jar.", refused.getMessage());
    assertEquals("p: no.", new Refused(Place.wholeFile("p"), "no", "").getMessage());
  }

  @Test
  void nothingIsRefusedWhereNothingIsWrong() throws Refused {
    new Problems().refuse();
    assertEquals(List.of(), new Problems().list());
  }

  @ParameterizedTest(name = "\"{0}\" means {1}")
  @CsvSource({
    "quarts, quart",
    "QUART, quart",
    "qart, quart",
    "' pnt ', pint",
    "half pint, half-pint",
    "halfpint, half-pint",
    "quar, quart",
    "quart-and-a-bit, quart"
  })
  void theNearestKnownWordIsFound(String typed, String meant) {
    assertEquals(Optional.of(meant), Nearest.to(typed, JARS));
    assertEquals(
        "did you mean " + meant + "? (known: half-pint, pint, quart)", Nearest.remedy(typed, JARS));
  }

  @ParameterizedTest
  @CsvSource({"gallon", "''", "'   '", "x", "qua", "0123456789"})
  void aWordFarFromAllIsAnsweredWithAll(String typed) {
    assertEquals(Optional.empty(), Nearest.to(typed, JARS));
    assertEquals("known: half-pint, pint, quart", Nearest.remedy(typed, JARS));
  }

  @Test
  void ofTwoEquallyNearTheFirstInOrderIsTaken() {
    assertEquals(Optional.of("bat"), Nearest.to("at", List.of("cat", "bat")));
    assertEquals(Optional.empty(), Nearest.to("word", List.of()));
  }

  @Test
  void aPageOfTextIsNoWord() {
    assertEquals(Optional.empty(), Nearest.to("quart" + "t".repeat(76), List.of("quart")));
    assertEquals(Optional.of("quart"), Nearest.to("quart" + "t".repeat(75), List.of("quart")));
  }

  @Property
  void anyTextHasARemedy(@ForAll String typed) {
    assertTrue(
        Nearest.remedy(typed, JARS).endsWith("known: half-pint, pint, quart")
            || Nearest.remedy(typed, JARS).endsWith("(known: half-pint, pint, quart)"));
  }

  private static String text(Place place, String remedy) {
    return new Problem(place, "it is empty", remedy).text();
  }
}
