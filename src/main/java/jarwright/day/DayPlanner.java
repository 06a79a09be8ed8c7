package jarwright.day;

import jarwright.batch.Batch;
import jarwright.plan.Kitchen;
import jarwright.problem.Problems;
import jarwright.process.PreparationStep;
import jarwright.process.Product;
import jarwright.quantity.Volume;
import jarwright.water.Estimate;
import jarwright.water.HeatUp;
import jarwright.water.Rack;
import jarwright.water.WaterLevel;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/** Plans the days of batches: loads, water, and every task at its time. */
public final class DayPlanner {
  /** Common practice: a stove has four places. */
  private static final int USUAL_BURNERS = 4;

  /** Common practice, no source: filled jars cool while they wait, and go into hot water. */
  static final int FILLED_WAIT_LIMIT = 10;

  /** Common practice, no source: the pots of a kitchen that names none. */
  private static final List<Volume> USUAL_POTS =
      List.of(Volume.parse("12 quart"), Volume.parse("8 quart"));

  private final LoadPlanner loads;
  private final LoadReckoner reckoner;
  private final TaskTimes times;
  private final Function<Product, List<PreparationStep>> steps;

  /**
   * @param steps of each product that is planned, for all its packs; in any language
   */
  public DayPlanner(DayBook book, Function<Product, List<PreparationStep>> steps) {
    this.times = book.times();
    this.steps = steps;
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
    List<Volume> pots = kitchen.pots().isEmpty() ? USUAL_POTS : kitchen.pots();
    return Optional.of(new Day(batches, divided, clock, stove, pots).plan());
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

    int foodPots() {
      return hasJarPot() ? pots() - 1 : pots();
    }
  }

  /** One day being planned. */
  private final class Day {
    private final List<Batch> batches;
    private final DayClock clock;
    private final Stove stove;
    private final List<Making> makings = new ArrayList<>();
    private final List<Cookings> cookings = new ArrayList<>();
    private final List<LoadTasks> tasks = new ArrayList<>();
    private final List<Integer> batchOf = new ArrayList<>();

    Day(
        List<Batch> batches,
        List<List<CannerLoad>> divided,
        DayClock clock,
        Stove stove,
        List<Volume> owned) {
      this.batches = batches;
      this.clock = clock;
      this.stove = stove;
      Pots pots = Pots.on(stove.foodPots(), owned);
      for (int b = 0; b < batches.size(); b++) {
        Batch batch = batches.get(b);
        List<CannerLoad> of = divided.get(b);
        makings.add(Making.of(steps.apply(batch.product()), batch.pack()));
        cookings.add(reckoner.cookings(batch, of.size(), pots));
        tasks.addAll(reckoner.reckon(of, makings.get(b), cookings.get(b), hands(batch)));
        batchOf.addAll(Collections.nCopies(of.size(), b));
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
      List<Task> times = DayTasks.of(tasks, table, stove.hasJarPot());
      ZonedDateTime start = clock.start(ends, at -> isByDay(ahead(at, times)));
      List<Ahead> ahead = ahead(start, times);
      List<Notice> notices = new ArrayList<>(clock.notices(start, ends));
      notices.addAll(DayNotices.ofAhead(ahead));
      notices.addAll(DayNotices.of(tasks, stove.hasJarPot(), table.finish()));
      notices.addAll(DayNotices.ofCooking(batches, cookings, tasks));
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
          ahead,
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

    /** The work of days before, if the day starts then; earliest first. */
    private List<Ahead> ahead(ZonedDateTime start, List<Task> times) {
      List<Ahead> all = new ArrayList<>();
      for (int b = 0; b < batches.size(); b++) {
        Making making = makings.get(b);
        Batch batch = batches.get(b);
        if (!making.ahead().isEmpty()) {
          FoodReckoner food = new FoodReckoner(DayPlanner.this.times, batch, making, hands(batch));
          all.addAll(
              new AheadPlanner(batch, making.ahead(), food.ahead())
                  .before(start.plusMinutes(takenUp(b, times))));
        }
      }
      all.sort(Comparator.comparing(Ahead::start));
      return all;
    }

    private static boolean isByDay(List<Ahead> ahead) {
      return ahead.stream().noneMatch(Ahead::isAtNight);
    }

    /** The minute in which a batch's food is first worked on. */
    private int takenUp(int batch, List<Task> times) {
      return times.stream()
          .filter(t -> batchOf.get(t.load()) == batch && t.kind().isWithFood())
          .mapToInt(Task::start)
          .min()
          .orElseThrow();
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
      int soon = finish(work(Estimate::min), order);
      int late = finish(work(Estimate::max), order);
      return new Estimate(Math.min(soon, table.finish()), Math.max(late, table.finish()));
    }

    private int finish(DayWork work, List<Integer> order) {
      return QuickTimetable.inOrder(work, order)
          .orElseGet(() -> QuickTimetable.batchAfterBatch(work))
          .finish();
    }
  }
}
