package jarwright.day;

import jarwright.day.LoadTasks.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Turns the moments of a timetable into tasks with their hands and burners. */
final class DayTasks {
  private final List<LoadTasks> loads;
  private final Timetable table;
  private final boolean jarsOnStove;
  private final List<Draft> drafts = new ArrayList<>();

  /** What a task stands on. */
  private enum Fire {
    NONE,
    POT,
    CANNER
  }

  /** A task before hands and burners are given out. */
  private record Draft(Part part, int load, int start, Fire fire, int fireUntil) {
    int end() {
      return start + part.minutes().planned();
    }
  }

  private DayTasks(List<LoadTasks> loads, Timetable table, boolean jarsOnStove) {
    this.loads = loads;
    this.table = table;
    this.jarsOnStove = jarsOnStove;
  }

  /** All tasks, in the order in which they start. */
  static List<Task> of(List<LoadTasks> loads, Timetable table, boolean jarsOnStove) {
    DayTasks tasks = new DayTasks(loads, table, jarsOnStove);
    for (int i = 0; i < loads.size(); i++) {
      tasks.draft(i);
    }
    return tasks.giveOut();
  }

  private void draft(int number) {
    LoadTasks load = loads.get(number);
    Timetable.Moments at = table.moments().get(number);
    LoadWork work = table.work().loads().get(number);
    int filled = at.fill() + work.fill();
    int prepared = at.prepare() + work.prepare();
    int start = at.prepare();
    for (Part part : load.preparing()) {
      start = add(part, number, start, part.pots() > 0 ? Fire.POT : Fire.NONE, prepared);
    }
    Fire jarFire = jarsOnStove ? Fire.POT : Fire.NONE;
    chain(load.jars(), number, at.fill() - work.heatJars(), jarFire, filled);
    chain(load.food(), number, at.fill() - work.heatFood(), Fire.POT, filled);
    add(load.filling(), number, at.fill(), Fire.NONE, filled);
    warmCanner(number, at.load(), work);
    int out = at.load() + work.inCanner();
    int inside = add(load.loading(), number, at.load(), Fire.CANNER, out);
    int opened = chain(load.canning(), number, inside, Fire.CANNER, out);
    add(load.unloading(), number, opened, Fire.CANNER, out);
  }

  /** The first load of a canner is preheated for; a later one finds the canner topped up. */
  private void warmCanner(int number, int loading, LoadWork work) {
    int before = -1;
    for (int i = 0; i < loads.size(); i++) {
      LoadWork other = table.work().loads().get(i);
      int otherLoading = table.moments().get(i).load();
      if (other.canner() == work.canner() && otherLoading < loading) {
        before = Math.max(before, otherLoading + other.inCanner());
      }
    }
    if (before < 0) {
      Part preheat = loads.get(number).preheating();
      add(preheat, number, loading - work.preheat(), Fire.CANNER, loading);
    } else {
      add(loads.get(number).refilling(), number, before, Fire.CANNER, loading);
    }
  }

  private int chain(List<Part> parts, int load, int from, Fire fire, int fireUntil) {
    int start = from;
    for (Part part : parts) {
      start = add(part, load, start, fire, fireUntil);
    }
    return start;
  }

  private int add(Part part, int load, int start, Fire fire, int fireUntil) {
    Draft draft = new Draft(part, load, start, fire, fireUntil);
    if (draft.end() > start) {
      drafts.add(draft);
    }
    return draft.end();
  }

  private List<Task> giveOut() {
    drafts.sort(
        Comparator.comparingInt(Draft::start)
            .thenComparingInt(Draft::load)
            .thenComparing(d -> d.part().kind()));
    HandTable hands = new HandTable(table.work().hands());
    HandTable pots = new HandTable(table.work().pots());
    List<Task> tasks = new ArrayList<>();
    for (Draft draft : drafts) {
      TaskKind kind = draft.part().kind();
      tasks.add(
          new Task(
              kind,
              draft.load(),
              draft.start(),
              draft.end(),
              draft.part().minutes(),
              hands.take(
                  draft.part().hands(), draft.start(), draft.end(), kind.where(), draft.load()),
              burner(draft, pots, tasks),
              draft.fire() == Fire.NONE ? draft.end() : draft.fireUntil()));
    }
    return List.copyOf(tasks);
  }

  private OptionalInt burner(Draft draft, HandTable pots, List<Task> before) {
    return switch (draft.fire()) {
      case NONE -> OptionalInt.empty();
      case CANNER -> OptionalInt.of(table.work().loads().get(draft.load()).canner() + 1);
      case POT -> samePot(draft, before).orElseGet(() -> newPot(draft, pots));
    };
  }

  /** Jars are sterilised on the burner on which they were heated. */
  private static Optional<OptionalInt> samePot(Draft draft, List<Task> before) {
    if (draft.part().kind() != TaskKind.STERILISE_JARS) {
      return Optional.empty();
    }
    return before.stream()
        .filter(t -> t.load() == draft.load() && t.kind() == TaskKind.HEAT_JARS)
        .map(Task::burner)
        .findFirst();
  }

  private OptionalInt newPot(Draft draft, HandTable pots) {
    TaskKind.Where where = draft.part().kind().where();
    int pot = pots.take(1, draft.start(), draft.fireUntil(), where, draft.load()).get(0);
    return OptionalInt.of(table.work().canners() + pot);
  }
}
