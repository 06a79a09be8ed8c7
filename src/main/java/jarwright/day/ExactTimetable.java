package jarwright.day;

import jarwright.day.Timetable.Moments;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the best timetable of a small day and proves it, by branch and bound: where two or more
 * uses want more of a resource than there is, one of them must end before another starts; every
 * such choice is followed until it cannot lead to anything better.
 */
final class ExactTimetable {
  private final DayWork work;
  private final List<Use> uses = new ArrayList<>();
  private final int[] capacity;
  private final int end;
  private long nodes;

  private Timetable best;
  private boolean complete = true;
  private boolean byWaiting;
  private int waitingBelow;

  ExactTimetable(DayWork work, Timetable known, long nodes) {
    this.work = work;
    this.best = known;
    this.nodes = nodes;
    for (int i = 0; i < work.loads().size(); i++) {
      uses.addAll(Use.of(i, work.loads().get(i)));
    }
    Occupancy occupancy = new Occupancy(work);
    this.capacity = new int[Use.FIRST_CANNER + work.canners()];
    for (int r = 0; r < capacity.length; r++) {
      capacity[r] = occupancy.capacity(r);
    }
    this.end = 3 * work.loads().size() + 1;
  }

  Timetable best() {
    return best;
  }

  /** Sooner done; false where the search was cut short, so that nothing is proven. */
  boolean sooner() {
    complete = true;
    byWaiting = false;
    follow(requirements());
    return complete;
  }

  /** Less waiting, not later done than the best known; false where the search was cut short. */
  boolean lessWaiting() {
    complete = true;
    byWaiting = true;
    waitingBelow = best.waiting();
    follow(requirements());
    return complete;
  }

  /**
   * Fewer turns from batch to batch, not later done and no more waiting than the best known; false
   * where the search was cut short.
   */
  boolean fewerChanges() {
    complete = true;
    byWaiting = true;
    int batches = 1 + work.loads().stream().mapToInt(LoadWork::batch).max().orElseThrow();
    for (int changes = batches - 1; changes < best.changes(); changes++) {
      for (List<Integer> order : FillOrders.with(work, changes)) {
        Gaps gaps = requirements();
        boolean possible = true;
        for (int k = 1; possible && k < order.size(); k++) {
          possible =
              gaps.require(
                  variable(order.get(k - 1), Use.Moment.FILL),
                  variable(order.get(k), Use.Moment.FILL),
                  0);
        }
        waitingBelow = best.waiting() + 1;
        if (possible) {
          follow(gaps);
        }
        if (best.changes() <= changes || !complete) {
          return complete;
        }
      }
    }
    return true;
  }

  private int variable(Use use) {
    return variable(use.load(), use.moment());
  }

  private static int variable(int load, Use.Moment moment) {
    return 3 * load + 1 + moment.place();
  }

  private Gaps requirements() {
    Gaps gaps = new Gaps(end + 1);
    List<LoadWork> loads = work.loads();
    for (int i = 0; i < loads.size(); i++) {
      LoadWork load = loads.get(i);
      int prepare = variable(i, Use.Moment.PREPARE);
      int fill = variable(i, Use.Moment.FILL);
      int loading = variable(i, Use.Moment.LOAD);
      gaps.require(0, prepare, load.release());
      gaps.require(0, fill, load.release() + load.heat());
      gaps.require(0, loading, load.release() + load.preheat());
      gaps.require(prepare, fill, load.toFill());
      gaps.require(fill, loading, load.fill());
      gaps.require(loading, fill, -load.fill() - work.waitLimit());
      gaps.require(loading, end, load.inCanner());
      if (i > 0 && loads.get(i - 1).batch() == load.batch()) {
        gaps.require(variable(i - 1, Use.Moment.PREPARE), prepare, 0);
        gaps.require(variable(i - 1, Use.Moment.FILL), fill, 0);
        int turn = loads.get(i - 1).inCanner() + loads.get(i - 1).refill();
        gaps.require(variable(i - 1, Use.Moment.LOAD), loading, turn);
      }
    }
    return gaps;
  }

  private void follow(Gaps gaps) {
    if (!complete) {
      return;
    }
    if (nodes-- <= 0) {
      complete = false;
      return;
    }
    int latest = byWaiting ? best.finish() : best.finish() - 1;
    if (!gaps.require(end, 0, -latest) || !orderForced(gaps) || bound(gaps) > latest) {
      return;
    }
    int[] at = byWaiting ? LeastWaiting.moments(gaps, work) : earliest(gaps);
    Timetable table = timetable(at);
    if (byWaiting && table.waiting() >= waitingBelow) {
      return;
    }
    List<Use> clash = clash(at);
    if (clash.isEmpty()) {
      best = table;
      waitingBelow = table.waiting();
      return;
    }
    for (Use first : clash) {
      for (Use second : clash) {
        if (first.load() != second.load() || first.moment() != second.moment()) {
          Gaps next = gaps.copy();
          if (next.require(variable(first), variable(second), apart(first, second))) {
            follow(next);
          }
        }
      }
    }
  }

  /** Minutes that the second moment must follow the first, for the uses not to overlap. */
  private static int apart(Use first, Use second) {
    return first.offset() + first.minutes() - second.offset();
  }

  /** Settles every pair that can only go one way round; false where one can go neither way. */
  private boolean orderForced(Gaps gaps) {
    boolean again = true;
    while (again) {
      again = false;
      for (int i = 0; i < uses.size(); i++) {
        for (int j = i + 1; j < uses.size(); j++) {
          Use a = uses.get(i);
          Use b = uses.get(j);
          if (a.resource() != b.resource()
              || a.amount() + b.amount() <= capacity[a.resource()]
              || variable(a) == variable(b)) {
            continue;
          }
          int va = variable(a);
          int vb = variable(b);
          if (gaps.between(va, vb) >= apart(a, b) || gaps.between(vb, va) >= apart(b, a)) {
            continue;
          }
          boolean ab = gaps.allows(va, vb, apart(a, b));
          boolean ba = gaps.allows(vb, va, apart(b, a));
          if (!ab && !ba) {
            return false;
          }
          if (!ab) {
            again |= gaps.require(vb, va, apart(b, a));
          } else if (!ba) {
            again |= gaps.require(va, vb, apart(a, b));
          }
        }
      }
    }
    return true;
  }

  private int bound(Gaps gaps) {
    int bound = gaps.between(0, end);
    for (int resource = 0; resource < capacity.length; resource++) {
      List<LowerBound.Part> parts = new ArrayList<>();
      for (Use use : uses) {
        if (use.resource() == resource) {
          int head = gaps.between(0, variable(use)) + use.offset();
          int tail = gaps.between(variable(use), end) - use.offset() - use.minutes();
          parts.add(new LowerBound.Part(head, use.minutes(), use.amount(), tail));
        }
      }
      bound = Math.max(bound, LowerBound.of(parts, capacity[resource]));
    }
    return bound;
  }

  /** The least finish that the requirements alone and each resource alone allow. */
  static int bound(DayWork work) {
    ExactTimetable search = new ExactTimetable(work, null, 0);
    return search.bound(search.requirements());
  }

  private static int[] earliest(Gaps gaps) {
    int[] at = new int[gaps.size()];
    for (int v = 0; v < at.length; v++) {
      at[v] = gaps.between(0, v);
    }
    return at;
  }

  private Timetable timetable(int[] at) {
    List<Moments> moments = new ArrayList<>();
    for (int i = 0; i < work.loads().size(); i++) {
      moments.add(new Moments(at[3 * i + 1], at[3 * i + 2], at[3 * i + 3]));
    }
    return new Timetable(work, moments);
  }

  /** The earliest uses that together want more than there is; empty where none do. */
  private List<Use> clash(int[] at) {
    List<Use> found = List.of();
    int when = Integer.MAX_VALUE;
    for (Use late : uses) {
      int start = at[variable(late)] + late.offset();
      if (start >= when) {
        continue;
      }
      int sum = 0;
      List<Use> together = new ArrayList<>();
      for (Use use : uses) {
        int from = at[variable(use)] + use.offset();
        if (use.resource() == late.resource() && from <= start && start < from + use.minutes()) {
          sum += use.amount();
          together.add(use);
        }
      }
      if (sum > capacity[late.resource()]) {
        found = together;
        when = start;
      }
    }
    return found;
  }
}
