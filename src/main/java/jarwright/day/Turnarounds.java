package jarwright.day;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The least minutes between the loadings of one canner. Often more than its own time: the same
 * hands unload it, fill the next jars and load it again.
 */
final class Turnarounds {
  /** Pairs of loads are small enough to be solved within this. */
  private static final long NODES = 2_000;

  /** With more kinds of loads only the canner's own time is reckoned with. */
  private static final int MOST_KINDS = 8;

  private final DayWork work;
  private final boolean pairs;
  private final Map<List<List<Object>>, Integer> known = new HashMap<>();

  private Turnarounds(DayWork work, boolean pairs) {
    this.work = work;
    this.pairs = pairs;
  }

  /** For a day of any size. */
  static Turnarounds of(DayWork work) {
    long kinds = work.loads().stream().map(LoadWork::kind).distinct().count();
    return new Turnarounds(work, kinds <= MOST_KINDS);
  }

  /** The canner's own time and nothing else. */
  static Turnarounds own(DayWork work) {
    return new Turnarounds(work, false);
  }

  /** From loading the first to loading the second, whatever else the day holds. */
  int between(int first, int second) {
    LoadWork before = work.loads().get(first);
    LoadWork after = work.loads().get(second);
    int own = before.inCanner() + before.refill();
    return pairs
        ? known.computeIfAbsent(
            List.of(before.kind(), after.kind()), k -> solve(before, after, own))
        : own;
  }

  /** From loading one to loading any other that shares its canner; its own time where none does. */
  int least(int first) {
    LoadWork load = work.loads().get(first);
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < work.loads().size(); i++) {
      if (i != first && work.loads().get(i).canner() == load.canner()) {
        least = Math.min(least, between(first, i));
      }
    }
    return least < Integer.MAX_VALUE ? least : load.inCanner() + load.refill();
  }

  /**
   * The two alone, their canner not free before all else can have been done; then the day's end
   * shows how soon the second can follow the first.
   */
  private int solve(LoadWork before, LoadWork after, int own) {
    int ready = before.earliestFill() + before.fill() + after.earliestFill() + after.fill();
    DayWork pair =
        new DayWork(
            List.of(atRest(before, 0, ready), atRest(after, 1, ready + own)),
            work.hands(),
            work.pots(),
            work.waitLimit());
    Timetable quick = QuickTimetable.batchAfterBatch(pair);
    ExactTimetable.Progress exact = new ExactTimetable(pair, own(pair)).soonest(quick, NODES);
    return exact.isProven() ? exact.best().finish() - after.inCanner() - ready : own;
  }

  private static LoadWork atRest(LoadWork load, int batch, int preheat) {
    return new LoadWork(
        batch,
        0,
        0,
        load.prepare(),
        load.stands(),
        load.heatJars(),
        load.jarPots(),
        load.food(),
        load.foodIsPrepared(),
        0,
        load.fill(),
        load.fillHands(),
        load.load(),
        load.canning(),
        load.unload(),
        load.refill(),
        preheat);
  }
}
