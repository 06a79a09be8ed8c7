package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.plan.OwnTime;
import jarwright.problem.Place;
import jarwright.process.Product;
import jarwright.quantity.Fraction;
import jarwright.water.Estimate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TaskTimesTest {
  private static final TaskTimes TIMES = Days.BOOK.times();

  private static Product product(String id) {
    return Days.PROCESSES.product(id).orElseThrow();
  }

  private static TaskTimes.Row row(TaskKind kind, String of, int least, int most) {
    TaskTimes.Span none = new TaskTimes.Span(Fraction.ZERO, Fraction.ZERO);
    TaskTimes.Span fixed = new TaskTimes.Span(Fraction.of(least), Fraction.of(most));
    return new TaskTimes.Row(
        kind,
        of,
        fixed,
        none,
        TaskTimes.Each.LOAD,
        1,
        0,
        TaskTimes.Makes.LOAD,
        Fraction.ONE,
        false);
  }

  private static OwnTime own(String task, String of, int least, int most) {
    OwnTime.Span fixed = new OwnTime.Span(Fraction.of(least), Fraction.of(most));
    Place here = Place.wholeFile("kitchen.yaml");
    return new OwnTime(task, Optional.of(of), fixed, Optional.empty(), here);
  }

  private static Estimate estimate(TaskTimes times, TaskKind kind, String id, int hands) {
    TaskTimes.Amount amount = new TaskTimes.Amount(Fraction.of(21), 7, Fraction.of(7));
    return times.estimate(kind, product(id), amount, hands);
  }

  /** From the table: 2 to 4 minutes and 1.5 to 3 a jar, shared by up to two. */
  @Test
  void timeGrowsWithJarsAndShrinksWithHands() {
    assertEquals(new Estimate(13, 25), estimate(TIMES, TaskKind.FILL, "plums-halved-or-whole", 1));
    assertEquals(new Estimate(7, 13), estimate(TIMES, TaskKind.FILL, "plums-halved-or-whole", 2));
    assertEquals(new Estimate(7, 13), estimate(TIMES, TaskKind.FILL, "plums-halved-or-whole", 4));
  }

  @Test
  void theNearestFigureCounts() {
    assertEquals(1, TIMES.row(TaskKind.PREPARE, product("tomatoes-crushed")).pots());
    assertEquals(0, TIMES.row(TaskKind.PREPARE, product("tomato-juice")).pots());
    assertEquals(0, TIMES.row(TaskKind.PREPARE, product("rhubarb-stewed")).pots());
  }

  @Test
  void theHouseholdsOwnFigureGoesBeforeTheTables() {
    TaskTimes own = TIMES.with(List.of(own("fill", "plums-halved-or-whole", 11, 12)));
    assertEquals(new Estimate(11, 12), estimate(own, TaskKind.FILL, "plums-halved-or-whole", 1));
    assertEquals(
        estimate(TIMES, TaskKind.FILL, "peaches-halved-or-sliced", 1),
        estimate(own, TaskKind.FILL, "peaches-halved-or-sliced", 1));
  }

  /** The household times the work; who can share it and on how many burners stays as it was. */
  @Test
  void anOwnFigureKeepsHandsAndPots() {
    TaskTimes own = TIMES.with(List.of(own("prepare", "tomato", 30, 30)));
    assertEquals(1, own.row(TaskKind.PREPARE, product("tomatoes-crushed")).pots());
    assertEquals(new Estimate(15, 15), estimate(own, TaskKind.PREPARE, "tomatoes-crushed", 2));
  }

  @Test
  void noOwnFigureTouchesAProcessTime() {
    assertThrows(
        IllegalArgumentException.class, () -> TIMES.with(List.of(own("process", "tomato", 1, 1))));
  }

  @Test
  void whatTheTableNamesExists() {
    Set<String> known =
        Days.PROCESSES.products().stream()
            .flatMap(p -> java.util.stream.Stream.of(p.id(), p.category()))
            .collect(Collectors.toSet());
    known.add("*");
    for (TaskTimes.Row row : TIMES.rows()) {
      assertTrue(known.contains(row.of()), row.of());
    }
  }

  @Test
  void aKindWithoutAFigureForAllIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new TaskTimes(List.of(row(TaskKind.COOK, "fruit", 1, 2))));
    assertThrows(
        IllegalArgumentException.class,
        () -> TIMES.row(TaskKind.PROCESS, product("rhubarb-stewed")));
  }
}
