package jarwright.day;

import jarwright.batch.Batch;
import jarwright.plan.Kitchen;
import jarwright.problem.Problems;
import jarwright.water.Estimate;
import jarwright.water.HeatUp;
import jarwright.water.Rack;
import jarwright.water.WaterLevel;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToIntFunction;

/** Plans the days of batches: loads, water, and every task at its time. */
public final class DayPlanner {
  /** Common practice: a stove has four places. */
  private static final int USUAL_BURNERS = 4;

  /** Common practice, no source: filled jars cool while they wait, and go into hot water. */
  static final int FILLED_WAIT_LIMIT = 10;

  private final LoadPlanner loads;
  private final LoadReckoner reckoner;

  public DayPlanner(DayBook book) {
    Rack rack = new Rack(book.jars(), book.packing(), book.loads());
    this.loads = new LoadPlanner(rack, new WaterLevel(book.jars()));
    this.reckoner = new LoadReckoner(book.times(), new HeatUp(book.jars()));
  }

  /** The loads of one batch; none where a problem was told. */
  public List<CannerLoad> loads(Batch batch, Problems problems) {
    return loads.loads(batch, problems);
  }

  /**
   * One plan for each date, earliest first; none where a problem was told.
   *
   * @param batches of one kitchen
   * @param elsewise the clock's zone where the kitchen names none
   */
  public List<DayPlan> plan(List<Batch> batches, ZoneId elsewise, Problems problems) {
    Map<LocalDate, List<Batch>> byDate = new TreeMap<>();
    for (Batch batch : batches) {
      byDate.computeIfAbsent(batch.plan().date(), d -> new ArrayList<>()).add(batch);
    }
    List<DayPlan> days = new ArrayList<>();
    byDate.values().forEach(of -> day(of, elsewise, problems).ifPresent(days::add));
    return List.copyOf(days);
  }

  private Optional<DayPlan> day(List<Batch> batches, ZoneId elsewise, Problems problems) {
    Problems here = new Problems();
    DayClock clock = new DayClock(batches, elsewise);
    clock.check(here);
    List<String> canners = batches.stream().map(b -> b.canner().name()).distinct().toList();
    Kitchen kitchen = batches.get(0).kitchen();
    int burners = kitchen.burners().orElse(USUAL_BURNERS);
    checkHands(batches, here);
    checkBurners(batches, canners, burners, here);
    List<List<CannerLoad>> divided = batches.stream().map(b -> loads.loads(b, here)).toList();
    problems.addAll(here.list());
    if (!here.isEmpty()) {
      return Optional.empty();
    }
    int hands = batches.stream().mapToInt(DayPlanner::hands).max().orElseThrow();
    Stove stove = new Stove(canners, burners, hands);
    return Optional.of(new Day(batches, divided, clock, stove).plan());
  }

  private static int hands(Batch batch) {
    return batch.plan().hands().orElse(1);
  }

  private static void checkHands(List<Batch> batches, Problems problems) {
    for (Batch batch : batches) {
      if (hands(batch) < 1) {
        problems.add(
            batch.plan().placeOf("hands"),
            "with " + hands(batch) + " hands nobody does the work",
            "give the number of people working, 1 or more");
      }
    }
  }

  private static void checkBurners(
      List<Batch> batches, List<String> canners, int burners, Problems problems) {
    if (burners <= canners.size()) {
      problems.add(
          batches.get(0).plan().placeOf(""),
          "the day's canners and a pot need "
              + (canners.size() + 1)
              + " burners, and the kitchen has "
              + burners,
          "use fewer canners on this day, or give the batches different dates");
    }
  }

  /**
   * What the work of a day is done with.
   *
   * @param canners by their names, in the order of the batches
   */
  private record Stove(List<String> canners, int burners, int hands) {
    int pots() {
      return burners - canners.size();
    }

    /** Whether a pot of jars finds room beside a pot of food. */
    boolean hasJarPot() {
      return pots() > 1;
    }
  }

  /** One day being planned. */
  private final class Day {
    private final List<Batch> batches;
    private final DayClock clock;
    private final Stove stove;
    private final List<LoadTasks> tasks = new ArrayList<>();
    private final List<Integer> batchOf = new ArrayList<>();

    Day(List<Batch> batches, List<List<CannerLoad>> divided, DayClock clock, Stove stove) {
      this.batches = batches;
      this.clock = clock;
      this.stove = stove;
      for (int b = 0; b < batches.size(); b++) {
        for (CannerLoad load : divided.get(b)) {
          tasks.add(reckoner.reckon(load, hands(batches.get(b))));
          batchOf.add(b);
        }
      }
    }

    DayPlan plan() {
      DayWork work = work(Estimate::planned);
      TimetableSearch.Found found = TimetableSearch.search(work);
      Timetable table = found.timetable();
      List<Integer> ends = new ArrayList<>();
      for (int b = 0; b < batches.size(); b++) {
        ends.add(end(b, table));
      }
      ZonedDateTime start = clock.start(ends);
      List<Notice> notices = new ArrayList<>(clock.notices(start, ends));
      notices.addAll(DayNotices.of(tasks, stove.hasJarPot(), table.finish()));
      List<Task> times = DayTasks.of(tasks, table, stove.hasJarPot());
      List<PlannedLoad> planned = new ArrayList<>();
      for (int i = 0; i < tasks.size(); i++) {
        int out = table.moments().get(i).load() + work.loads().get(i).inCanner();
        int canner = work.loads().get(i).canner() + 1;
        planned.add(
            PlannedLoad.of(
                tasks.get(i).load(),
                canner,
                start.plusMinutes(processed(i, times)),
                start.plusMinutes(out)));
      }
      return new DayPlan(
          batches.get(0).plan().date(),
          start,
          planned,
          times,
          stove.hands(),
          stove.burners(),
          stove.canners(),
          table.finish(),
          finishRange(table),
          found.bound(),
          found.proven(),
          table.waiting(),
          Rush.of(times),
          notices);
    }

    /** The minute in which a load's process ends. */
    private static int processed(int load, List<Task> times) {
      return times.stream()
          .filter(t -> t.load() == load && t.kind() == TaskKind.PROCESS)
          .mapToInt(Task::end)
          .findFirst()
          .orElseThrow();
    }

    private int end(int batch, Timetable table) {
      int end = 0;
      for (int i = 0; i < tasks.size(); i++) {
        if (batchOf.get(i) == batch) {
          int out = table.moments().get(i).load() + table.work().loads().get(i).inCanner();
          end = Math.max(end, out);
        }
      }
      return end;
    }

    private DayWork work(ToIntFunction<Estimate> way) {
      List<LoadWork> works = new ArrayList<>();
      for (int i = 0; i < tasks.size(); i++) {
        Batch batch = batches.get(batchOf.get(i));
        works.add(
            tasks
                .get(i)
                .work(
                    batchOf.get(i),
                    stove.canners().indexOf(batch.canner().name()),
                    clock.release(batch),
                    stove.hasJarPot(),
                    way));
      }
      return new DayWork(works, stove.hands(), stove.pots(), FILLED_WAIT_LIMIT);
    }

    /** The same order of the work with all estimates at their short and at their long ends. */
    private Estimate finishRange(Timetable table) {
      List<Integer> order = table.order();
      int soon = QuickTimetable.inOrder(work(Estimate::min), order).finish();
      int late = QuickTimetable.inOrder(work(Estimate::max), order).finish();
      return new Estimate(Math.min(soon, table.finish()), Math.max(late, table.finish()));
    }
  }
}
