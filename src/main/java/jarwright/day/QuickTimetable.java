package jarwright.day;

import jarwright.day.Timetable.Moments;
import jarwright.day.Use.Moment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Builds a timetable load by load in a given order, each as early as the loads before it leave room
 * for: quick, always possible, not always the best.
 */
final class QuickTimetable {
  private final DayWork work;
  private final Occupancy occupancy;
  private final Moments[] moments;
  private final int[] cannerFree;
  private final int[] lastPrepare;
  private final int[] lastFill;

  private QuickTimetable(DayWork work) {
    this.work = work;
    this.occupancy = new Occupancy(work);
    this.moments = new Moments[work.loads().size()];
    this.cannerFree = new int[work.canners()];
    int batches = work.loads().stream().mapToInt(LoadWork::batch).max().orElseThrow() + 1;
    this.lastPrepare = new int[batches];
    this.lastFill = new int[batches];
  }

  /**
   * The timetable that fills the canners in the given order.
   *
   * @param order every load once; loads of one batch in their own order
   */
  static Timetable inOrder(DayWork work, List<Integer> order) {
    QuickTimetable table = new QuickTimetable(work);
    order.forEach(table::place);
    return new Timetable(work, Arrays.asList(table.moments));
  }

  private void place(int number) {
    LoadWork load = work.loads().get(number);
    List<Use> uses = Use.of(number, load);
    int first =
        earliest(at(uses, Moment.PREPARE), Math.max(load.release(), lastPrepare[load.batch()]));
    int fillFrom =
        Math.max(
            Math.max(first + load.toFill(), load.release() + load.heat()), lastFill[load.batch()]);
    int loading =
        Math.max(
            Math.max(load.release() + load.preheat(), cannerFree[load.canner()]),
            fillFrom + load.fill());
    List<Use> canning = at(uses, Moment.LOAD);
    Moments found = null;
    while (found == null) {
      loading = earliest(canning, loading);
      found = loadAt(load, uses, first, fillFrom, loading);
      loading++;
    }
    take(uses, found);
    moments[number] = found;
    cannerFree[load.canner()] = found.load() + load.inCanner() + load.refill();
    lastPrepare[load.batch()] = found.prepare();
    lastFill[load.batch()] = found.fill();
  }

  /** The moments with the given start of loading and the least waiting; null where none fit. */
  private Moments loadAt(LoadWork load, List<Use> uses, int first, int fillFrom, int loading) {
    List<Use> filling = at(uses, Moment.FILL);
    int latest = loading - load.fill();
    for (int fill = latest; fill >= Math.max(fillFrom, latest - work.waitLimit()); fill--) {
      if (occupancy.earlier(filling, fill) == fill) {
        take(filling, fill);
        int prepare = latest(at(uses, Moment.PREPARE), first, fill - load.toFill());
        giveBack(filling, fill);
        if (prepare >= first) {
          return new Moments(prepare, fill, loading);
        }
      }
    }
    return null;
  }

  private int earliest(List<Use> uses, int from) {
    int start = from;
    int free = occupancy.later(uses, start);
    while (free > start) {
      start = free;
      free = occupancy.later(uses, start);
    }
    return start;
  }

  /** The latest moment at which all is free; one before the earliest where there is none. */
  private int latest(List<Use> uses, int earliest, int from) {
    int start = from;
    int free = occupancy.earlier(uses, start);
    while (free < start && free >= earliest) {
      start = free;
      free = occupancy.earlier(uses, start);
    }
    return free == start ? start : earliest - 1;
  }

  private static List<Use> at(List<Use> uses, Moment moment) {
    List<Use> some = new ArrayList<>();
    for (Use use : uses) {
      if (use.moment() == moment) {
        some.add(use);
      }
    }
    return some;
  }

  private void take(List<Use> uses, int moment) {
    uses.forEach(u -> occupancy.take(u, moment));
  }

  private void giveBack(List<Use> uses, int moment) {
    uses.forEach(u -> occupancy.giveBack(u, moment));
  }

  private void take(List<Use> uses, Moments at) {
    uses.forEach(u -> occupancy.take(u, at.of(u.moment())));
  }
}
