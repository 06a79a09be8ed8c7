package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.Days.Wish;
import jarwright.plan.Kitchen;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What holds for every day that can be planned. */
class DayPlanProperties {
  @Provide
  Arbitrary<Wish> wishes() {
    Arbitrary<Wish> kind =
        Combinators.combine(Arbitraries.of(0, 1, 2), Arbitraries.integers().between(1, 40))
            .as((k, n) -> k == 0 ? Wish.plums(n) : k == 1 ? Wish.tomatoes(n) : Wish.beans(n));
    return Combinators.combine(
            kind,
            Arbitraries.of("pot", "second pot"),
            Arbitraries.of("", "07:15", "21:50"),
            Arbitraries.of("", "16:30"),
            Arbitraries.integers().between(1, 4))
        .as(
            (wish, pot, start, finish, hands) ->
                (wish.canner().equals("pot") ? wish.in(pot) : wish)
                    .from(start)
                    .by(start.equals("21:50") ? "" : finish)
                    .with(hands));
  }

  private static Kitchen kitchen(int burners) {
    return Days.kitchen(burners, Days.ZONE, Days.POT, Days.SECOND_POT, Days.DIAL);
  }

  @Property(tries = 60)
  void everyDayKeepsToTheKitchen(
      @ForAll @Size(min = 1, max = 3) List<@From("wishes") Wish> wishes,
      @ForAll @IntRange(min = 4, max = 6) int burners) {
    DayPlan day = Days.day(kitchen(burners), wishes.toArray(new Wish[0]));
    assertNothingIsUsedTwice(day);
    for (int load = 0; load < day.loads().size(); load++) {
      int number = load;
      assertChain(day, day.tasks().stream().filter(t -> t.load() == number).toList());
    }
    assertTrue(day.soonest() <= day.finish());
    assertTrue(day.finishRange().min() <= day.finish());
    assertTrue(day.finishRange().max() >= day.finish());
    assertEquals(day.finish(), day.tasks().stream().mapToInt(Task::end).max().orElseThrow());
    assertEquals(day, Days.day(kitchen(burners), wishes.toArray(new Wish[0])));
  }

  /** The one thing that no plan may touch. */
  @Property(tries = 60)
  void processMinutesAreExactlyTheTestedOnes(
      @ForAll @Size(min = 1, max = 3) List<@From("wishes") Wish> wishes) {
    DayPlan day = Days.day(kitchen(6), wishes.toArray(new Wish[0]));
    int processes = 0;
    for (Task task : day.tasks()) {
      if (task.kind() == TaskKind.PROCESS) {
        int tested = day.loads().get(task.load()).load().batch().process().minutes();
        assertEquals(new Minutes.Fixed(tested), task.minutes());
        assertEquals(tested, task.end() - task.start());
        processes++;
      } else {
        boolean rule =
            task.kind() == TaskKind.VENT
                || task.kind() == TaskKind.REST
                || task.kind() == TaskKind.LID_WAIT
                || task.kind() == TaskKind.STERILISE_JARS;
        assertEquals(rule, task.isExact(), "" + task);
      }
    }
    assertEquals(day.loads().size(), processes);
  }

  private static void assertNothingIsUsedTwice(DayPlan day) {
    for (Task one : day.tasks()) {
      assertTrue(one.hands().stream().allMatch(h -> h >= 1 && h <= day.hands()));
      assertTrue(one.burners().stream().allMatch(b -> b >= 1 && b <= day.burners()));
      for (Task other : day.tasks()) {
        if (!one.equals(other) && one.start() < other.end() && other.start() < one.end()) {
          List<Integer> both = new ArrayList<>(one.hands());
          both.retainAll(other.hands());
          assertEquals(List.of(), both, one + " and " + other);
        }
        boolean sameFire =
            !Collections.disjoint(one.burners(), other.burners())
                && one.start() < other.burnerUntil()
                && other.start() < one.burnerUntil();
        assertTrue(!sameFire || one.load() == other.load(), one + " and " + other);
      }
    }
  }

  /** Before, hot on time, filled, soon in the canner, then without a pause to the bench. */
  private static void assertChain(DayPlan day, List<Task> tasks) {
    Task fill = task(tasks, TaskKind.FILL);
    Task load = task(tasks, TaskKind.LOAD);
    Task unload = task(tasks, TaskKind.UNLOAD);
    Task prepared = task(tasks, TaskKind.PREPARE);
    int wait = load.start() - fill.end();
    assertTrue(wait >= 0 && wait <= DayPlanner.FILLED_WAIT_LIMIT, "filled jars wait " + wait);
    assertTrue(prepared.end() <= fill.start());
    assertEquals(task(tasks, TaskKind.WASH).end(), prepared.start());
    for (Task task : tasks) {
      switch (task.kind()) {
        case HEAT_JARS, STERILISE_JARS, HEAT_LIQUID, COOK ->
            assertTrue(
                task.end() <= fill.start()
                    && (task.burners().isEmpty() || task.burnerUntil() == fill.end()));
        case PREHEAT, REFILL ->
            assertTrue(task.end() <= load.start() && task.burnerUntil() == load.start());
        default -> {}
      }
      if (task.kind() == TaskKind.COOK) {
        assertTrue(prepared.end() <= task.start(), "cooked before it was prepared");
      }
    }
    int inside =
        tasks.stream()
            .filter(t -> t.start() >= load.end() && t.end() <= unload.start())
            .filter(t -> t.kind().where() == TaskKind.Where.CANNER)
            .mapToInt(t -> t.end() - t.start())
            .sum();
    assertEquals(unload.start() - load.end(), inside, "a pause in the canner");
    PlannedLoad planned = day.loads().get(load.load());
    assertEquals(day.at(unload.end()), planned.out());
  }

  private static Task task(List<Task> tasks, TaskKind kind) {
    return tasks.stream().filter(t -> t.kind() == kind).findFirst().orElseThrow();
  }
}
