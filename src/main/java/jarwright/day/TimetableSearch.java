package jarwright.day;

import jarwright.day.Timetable.Moments;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds a good timetable for a day of any size, and the best one for a small day. Always the same
 * for the same work: its effort is counted in steps, not in time.
 */
final class TimetableSearch {
  /** Loads up to which the best timetable is found and proven. */
  static final int EXACT_UP_TO = 4;

  private static final long NODES = 100_000;

  /** Loads up to which that is tried, within fewer choices. */
  private static final int TRIED_UP_TO = 7;

  private static final long FEW_NODES = 1_000;

  /** Work in trying other orders: tries times loads. */
  private static final int EFFORT = 1_500;

  private final DayWork work;

  private TimetableSearch(DayWork work) {
    this.work = work;
  }

  /**
   * A timetable and what is known of it.
   *
   * @param bound no timetable is done sooner
   * @param proven whether nothing is done sooner, waits less, or turns less from batch to batch
   */
  record Found(Timetable timetable, int bound, boolean proven) {}

  static Found search(DayWork work) {
    return new TimetableSearch(work).search();
  }

  private Found search() {
    Turnarounds turnarounds = Turnarounds.of(work);
    Clashes clashes = new Clashes(work, turnarounds);
    int bound = clashes.bound(clashes.requirements(), 3 * work.loads().size() + 1);
    Timetable quick = quick(bound);
    boolean perfect =
        quick.finish() == bound && quick.waiting() == 0 && quick.changes() == leastChanges();
    if (perfect || work.loads().size() > TRIED_UP_TO) {
      return new Found(late(quick), bound, perfect);
    }
    long nodes = work.loads().size() > EXACT_UP_TO ? FEW_NODES : NODES;
    ExactTimetable exact = new ExactTimetable(work, turnarounds);
    ExactTimetable.Progress soonest = exact.soonest(quick, nodes);
    if (!soonest.isProven()) {
      return new Found(late(soonest.best()), bound, false);
    }
    ExactTimetable.Progress calmest = exact.leastWaiting(soonest.best(), nodes);
    ExactTimetable.Progress best =
        calmest.isProven() ? exact.fewestTurns(calmest.best(), nodes) : calmest;
    return new Found(late(best.best()), soonest.best().finish(), best.isProven());
  }

  /** Orders by several rules of thumb, then better ones next to the best of them. */
  private Timetable quick(int bound) {
    Timetable best = QuickTimetable.batchAfterBatch(work);
    List<Integer> bestOrder = order(Comparator.comparingInt((Integer i) -> 0));
    for (List<Integer> order : orders()) {
      Optional<Timetable> table = QuickTimetable.inOrder(work, order);
      if (table.isPresent() && Timetable.BETTER.compare(table.get(), best) < 0) {
        best = table.get();
        bestOrder = order;
      }
    }
    int tries = EFFORT / work.loads().size();
    boolean better = true;
    while (better && tries > 0 && best.finish() > bound) {
      better = false;
      for (int i = 0; i + 1 < bestOrder.size() && tries > 0; i++) {
        for (int j = i + 1; j < bestOrder.size() && tries > 0; j++) {
          if (!keepsBatches(bestOrder, j, i)) {
            continue;
          }
          List<Integer> order = moved(bestOrder, j, i);
          tries--;
          Optional<Timetable> table = QuickTimetable.inOrder(work, order);
          if (table.isPresent() && Timetable.BETTER.compare(table.get(), best) < 0) {
            best = table.get();
            bestOrder = order;
            better = true;
          }
        }
      }
    }
    return best;
  }

  private int leastChanges() {
    return (int) work.loads().stream().map(LoadWork::batch).distinct().count() - 1;
  }

  private static List<Integer> moved(List<Integer> order, int from, int to) {
    List<Integer> moved = new ArrayList<>(order);
    moved.add(to, moved.remove(from));
    return moved;
  }

  /** Whether a load can be moved ahead of others without passing one of its own batch. */
  private boolean keepsBatches(List<Integer> order, int from, int to) {
    int batch = load(order.get(from)).batch();
    for (int k = from - 1; k >= to; k--) {
      if (load(order.get(k)).batch() == batch) {
        return false;
      }
    }
    return true;
  }

  private LoadWork load(int number) {
    return work.loads().get(number);
  }

  /** By turns; longest in the canner first; soonest ready first. */
  private List<List<Integer>> orders() {
    return List.of(
        order(Comparator.comparingInt(this::turn)),
        order(Comparator.comparingInt((Integer i) -> -batchTime(i))),
        order(
            Comparator.comparingInt(this::turn)
                .thenComparingInt((Integer i) -> -load(i).inCanner())),
        order(Comparator.comparingInt((Integer i) -> batchReady(i))));
  }

  private List<Integer> order(Comparator<Integer> by) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < work.loads().size(); i++) {
      order.add(i);
    }
    order.sort(by.thenComparing(i -> i));
    return order;
  }

  /** Number of the load in its batch. */
  private int turn(int number) {
    int turn = 0;
    for (int i = 0; i < number; i++) {
      turn += load(i).batch() == load(number).batch() ? 1 : 0;
    }
    return turn;
  }

  private int batchTime(int number) {
    return work.loads().stream()
        .filter(l -> l.batch() == load(number).batch())
        .mapToInt(LoadWork::inCanner)
        .sum();
  }

  private int batchReady(int number) {
    return work.loads().stream()
        .filter(l -> l.batch() == load(number).batch())
        .mapToInt(LoadWork::earliestLoad)
        .min()
        .orElseThrow();
  }

  /** The same with every load prepared as late as it can be, so that cut food does not stand. */
  private Timetable late(Timetable table) {
    Occupancy occupancy = new Occupancy(work);
    List<List<Use>> uses = new ArrayList<>();
    for (int i = 0; i < work.loads().size(); i++) {
      uses.add(Use.of(i, work.loads()));
      Moments at = table.moments().get(i);
      for (Use use : uses.get(i)) {
        Moments from = table.moments().get(use.load());
        if (use.isFixed()) {
          occupancy.take(use, from.of(use.moment()));
        } else {
          occupancy.takePots(
              from.of(use.moment()) + use.offset(),
              at.of(use.until().moment()) + use.until().offset(),
              use.amount());
        }
      }
    }
    List<Moments> moments = new ArrayList<>(table.moments());
    for (int i = moments.size() - 1; i >= 0; i--) {
      Moments at = moments.get(i);
      List<Use> preparing =
          uses.get(i).stream().filter(u -> u.moment() == Use.Moment.PREPARE).toList();
      preparing.forEach(u -> occupancy.giveBack(u, at.prepare()));
      int latest = at.fill() - load(i).toFill();
      if (i + 1 < moments.size() && load(i + 1).batch() == load(i).batch()) {
        latest = Math.min(latest, moments.get(i + 1).prepare());
      }
      int prepare = latest(occupancy, preparing, latest);
      preparing.forEach(u -> occupancy.take(u, prepare));
      moments.set(i, new Moments(prepare, at.fill(), at.load()));
    }
    return new Timetable(work, moments);
  }

  private static int latest(Occupancy occupancy, List<Use> uses, int from) {
    int start = from;
    int free = occupancy.earlier(uses, start);
    while (free < start) {
      start = free;
      free = occupancy.earlier(uses, start);
    }
    return start;
  }
}
