package jarwright.day;

import jarwright.day.Timetable.Moments;
import jarwright.day.Use.Moment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Builds a timetable load by load in a given order, each as early as the loads before it leave room
 * for: quick, not always the best. Batch after batch is always possible; another order is not where
 * food that is kept hot takes the pots that a load in between needs.
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
   * The timetable that fills the canners in the given order; empty where that cannot be done.
   *
   * @param order every load once; loads of one batch in their own order
   */
  static Optional<Timetable> inOrder(DayWork work, List<Integer> order) {
    QuickTimetable table = new QuickTimetable(work);
    for (int number : order) {
      if (!table.place(number)) {
        return Optional.empty();
      }
    }
    return Optional.of(new Timetable(work, Arrays.asList(table.moments)));
  }

  /** The same batch after batch, which can always be done. */
  static Timetable batchAfterBatch(DayWork work) {
    return inOrder(work, IntStream.range(0, work.loads().size()).boxed().toList()).orElseThrow();
  }

  private boolean place(int number) {
    LoadWork load = work.loads().get(number);
    List<Use> uses = Use.of(number, work.loads()).stream().filter(Use::isFixed).toList();
    int first =
        earliest(at(uses, Moment.PREPARE), Math.max(load.release(), lastPrepare[load.batch()]));
    int fillFrom =
        Math.max(
            Math.max(first + load.toFill(), load.release() + load.heat()), lastFill[load.batch()]);
    int loading =
        Math.max(
            Math.max(load.release() + load.preheat(), cannerFree[load.canner()]),
            fillFrom + load.fill());
    // By then all that is not held for good is over.
    int latest = Math.max(loading, occupancy.end()) + load.toFill() + load.heat() + load.fill();
    List<Use> canning = at(uses, Moment.LOAD);
    Moments found = null;
    while (found == null && loading <= latest + work.waitLimit()) {
      loading = earliest(canning, loading);
      found = loadAt(number, uses, first, fillFrom, loading);
      loading++;
    }
    if (found == null) {
      return false;
    }
    take(uses, found);
    int filled = found.fill() + load.fill();
    occupancy.release(load.batch(), filled);
    if (work.isKeptAfter(number)) {
      occupancy.hold(load.batch(), filled, work.loads().get(number + 1).kept());
    }
    moments[number] = found;
    cannerFree[load.canner()] = found.load() + load.inCanner() + load.refill();
    lastPrepare[load.batch()] = found.prepare();
    lastFill[load.batch()] = work.isKeptAfter(number) ? filled : found.fill();
    return true;
  }

  /** The moments with the given start of loading and the least waiting; null where none fit. */
  private Moments loadAt(int number, List<Use> uses, int first, int fillFrom, int loading) {
    LoadWork load = work.loads().get(number);
    List<Use> filling = at(uses, Moment.FILL);
    int latest = loading - load.fill();
    for (int fill = latest; fill >= Math.max(fillFrom, latest - work.waitLimit()); fill--) {
      if (occupancy.earlier(filling, fill) == fill && leavesPots(number, fill + load.fill())) {
        take(filling, fill);
        int needed = fill - load.toFill();
        int earliest = load.spoilsByStanding() ? Math.max(first, needed - load.stands()) : first;
        int prepare = latest(at(uses, Moment.PREPARE), earliest, needed);
        giveBack(filling, fill);
        if (prepare >= earliest) {
          return new Moments(prepare, fill, loading);
        }
      }
    }
    return null;
  }

  /** Whether the pots that the batch's later loads live on stay free for them. */
  private boolean leavesPots(int number, int filled) {
    LoadWork load = work.loads().get(number);
    return load.kept() > 0
        || !work.isKeptAfter(number)
        || occupancy.canHold(filled, work.loads().get(number + 1).kept());
  }

  private int earliest(List<Use> uses, int from) {
    int start = from;
    int free = occupancy.later(uses, start);
    while (free > start && free < Occupancy.NEVER) {
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
