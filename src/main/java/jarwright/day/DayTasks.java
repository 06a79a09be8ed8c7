package jarwright.day;

import jarwright.day.LoadTasks.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Turns the moments of a timetable into tasks with their hands and burners. */
final class DayTasks {
  private final List<LoadTasks> loads;
  private final Timetable table;
  private final boolean jarsOnStove;
  private final List<Draft> drafts = new ArrayList<>();
  private final List<Fire> fires = new ArrayList<>();

  /**
   * Burners that tasks have one after the other, or none.
   *
   * @param number the same for all tasks on them
   * @param pots how many
   * @param until when they are free again
   */
  private record Fire(int number, int pots, int until) {}

  /** A task before hands and burners are given out; a fire without pots is the canner's own. */
  private record Draft(Part part, int load, int start, Fire fire) {
    int end() {
      return start + part.minutes().planned();
    }
  }

  private static final int CANNER = -1;
  private static final Fire NONE = new Fire(-2, 0, 0);

  private DayTasks(List<LoadTasks> loads, Timetable table, boolean jarsOnStove) {
    this.loads = loads;
    this.table = table;
    this.jarsOnStove = jarsOnStove;
  }

  /** All tasks, in the order in which they start. */
  static List<Task> of(List<LoadTasks> loads, Timetable table, boolean jarsOnStove) {
    DayTasks tasks = new DayTasks(loads, table, jarsOnStove);
    Fire kept = NONE;
    for (int i = 0; i < loads.size(); i++) {
      kept = tasks.draft(i, kept);
    }
    return tasks.giveOut();
  }

  /**
   * Drafts the tasks of a load.
   *
   * @param before the burners of the food that the load before leaves
   * @return the burners of the food that this one leaves
   */
  private Fire draft(int number, Fire before) {
    LoadTasks load = loads.get(number);
    Timetable.Moments at = table.moments().get(number);
    LoadWork work = table.work().loads().get(number);
    int filled = at.fill() + work.fill();
    prepare(load, number, at, work);
    Fire jars = fire(jarsOnStove ? 1 : 0, filled);
    chain(load.jars(), number, at.fill() - work.heatJars(), jars);
    Fire food = before;
    if (load.kept() > 0) {
      int since = filled(number - 1);
      if (at.fill() > since) {
        Minutes kept = new Minutes.Waited(at.fill() - since, false);
        add(new Part(TaskKind.KEEP_HOT, kept, 0, 0), number, since, before);
      }
    } else {
      food = heat(load, number, at.fill() - work.foodMinutes());
    }
    add(load.filling(), number, at.fill(), NONE);
    warmCanner(number, at.load(), work);
    Fire canner = new Fire(CANNER, 0, at.load() + work.inCanner());
    int inside = add(load.loading(), number, at.load(), canner);
    int opened = chain(load.canning(), number, inside, canner);
    add(load.unloading(), number, opened, canner);
    return food;
  }

  private int filled(int load) {
    return table.moments().get(load).fill() + table.work().loads().get(load).fill();
  }

  /** A soak goes on until the food is wanted. */
  private void prepare(LoadTasks load, int number, Timetable.Moments at, LoadWork work) {
    int start = at.prepare();
    for (int i = 0; i < load.preparing().size(); i++) {
      Part part = load.preparing().get(i);
      boolean last = i + 1 == load.preparing().size();
      if (last && part.minutes() instanceof Minutes.Waited waited && work.spoilsByStanding()) {
        int wanted = at.fill() - (work.foodIsPrepared() ? work.foodMinutes() : 0);
        Minutes whole = new Minutes.Waited(wanted - start, waited.published());
        part = new Part(part.kind(), whole, part.hands(), part.pots(), part.step());
      }
      start = add(part, number, start, fire(part.pots(), start + part.minutes().planned()));
    }
  }

  /**
   * The food's parts, each on the burners of the one before where that takes as many.
   *
   * @return the last burners, which it stays on until all that is cooked on them is filled
   */
  private Fire heat(LoadTasks load, int number, int from) {
    int last = number;
    while (table.work().isKeptAfter(last)) {
      last++;
    }
    List<Part> parts = load.food();
    Fire fire = NONE;
    int start = from;
    for (int i = 0; i < parts.size(); i++) {
      if (i == 0 || parts.get(i - 1).pots() != parts.get(i).pots()) {
        fire = fire(parts.get(i).pots(), until(parts, i, start, filled(last)));
      }
      start = add(parts.get(i), number, start, fire);
    }
    return fire;
  }

  /** When the burners of a part are free again: with its last part, or when all is filled. */
  private static int until(List<Part> parts, int first, int start, int filled) {
    int end = start;
    for (int i = first; i < parts.size(); i++) {
      if (parts.get(i).pots() != parts.get(first).pots()) {
        return end;
      }
      end += parts.get(i).minutes().planned();
    }
    return filled;
  }

  private Fire fire(int pots, int until) {
    if (pots == 0) {
      return NONE;
    }
    Fire fire = new Fire(fires.size(), pots, until);
    fires.add(fire);
    return fire;
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
    Fire canner = new Fire(CANNER, 0, loading);
    if (before < 0) {
      add(loads.get(number).preheating(), number, loading - work.preheat(), canner);
    } else {
      add(loads.get(number).refilling(), number, before, canner);
    }
  }

  private int chain(List<Part> parts, int load, int from, Fire fire) {
    int start = from;
    for (Part part : parts) {
      start = add(part, load, start, fire);
    }
    return start;
  }

  private int add(Part part, int load, int start, Fire fire) {
    Draft draft = new Draft(part, load, start, fire);
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
    Map<Integer, List<Integer>> burners = new HashMap<>();
    List<Task> tasks = new ArrayList<>();
    for (Draft draft : drafts) {
      TaskKind kind = draft.part().kind();
      Fire fire = draft.fire();
      if (fire.pots() > 0 && !burners.containsKey(fire.number())) {
        burners.put(
            fire.number(),
            pots.take(fire.pots(), draft.start(), fire.until(), kind.where(), draft.load()).stream()
                .map(pot -> table.work().canners() + pot)
                .toList());
      }
      List<Integer> on =
          fire.number() == CANNER
              ? List.of(table.work().loads().get(draft.load()).canner() + 1)
              : burners.getOrDefault(fire.number(), List.of());
      tasks.add(
          new Task(
              kind,
              draft.load(),
              draft.start(),
              draft.end(),
              draft.part().minutes(),
              hands.take(
                  draft.part().hands(), draft.start(), draft.end(), kind.where(), draft.load()),
              on,
              fire.equals(NONE) ? draft.end() : fire.until(),
              draft.part().step()));
    }
    return List.copyOf(tasks);
  }
}
