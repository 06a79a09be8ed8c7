package jarwright.day;

import jarwright.day.Timetable.Moments;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the best timetable of a small day and proves it, by branch and bound: where uses together
 * want more of a resource than there is, one of them must end before another starts; every such
 * choice is followed until it cannot lead to anything better.
 */
final class ExactTimetable {
  private final DayWork work;
  private final Clashes clashes;
  private final int end;
  private long nodes;

  private Timetable best;
  private boolean complete = true;
  private boolean byWaiting;
  private int waitingBelow;

  /**
   * Starts from a timetable that is known to be possible.
   *
   * @param nodes choices to follow before giving up
   */
  ExactTimetable(DayWork work, Turnarounds turnarounds, Timetable known, long nodes) {
    this.work = work;
    this.clashes = new Clashes(work, turnarounds);
    this.best = known;
    this.nodes = nodes;
    this.end = 3 * work.loads().size() + 1;
  }

  Timetable best() {
    return best;
  }

  /** Sooner done; false where the search was cut short, so that nothing is proven. */
  boolean sooner() {
    complete = true;
    byWaiting = false;
    follow(clashes.requirements());
    return complete;
  }

  /** Less waiting, not later done than the best known; false where the search was cut short. */
  boolean lessWaiting() {
    complete = true;
    byWaiting = true;
    waitingBelow = best.waiting();
    follow(clashes.requirements());
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
        Gaps gaps = clashes.requirements();
        waitingBelow = best.waiting() + 1;
        if (fillIn(order, gaps)) {
          follow(gaps);
        }
        if (best.changes() <= changes || !complete) {
          return complete;
        }
      }
    }
    return true;
  }

  private static boolean fillIn(List<Integer> order, Gaps gaps) {
    boolean possible = true;
    for (int k = 1; possible && k < order.size(); k++) {
      int before = Clashes.moment(order.get(k - 1), Use.Moment.FILL);
      int after = Clashes.moment(order.get(k), Use.Moment.FILL);
      possible = gaps.require(before, after, 0);
    }
    return possible;
  }

  private void follow(Gaps gaps) {
    int latest = byWaiting ? best.finish() : best.finish() - 1;
    boolean open = gaps.require(end, 0, -latest) && clashes.settle(gaps);
    if (!complete || !open || clashes.bound(gaps, end) > latest) {
      return;
    }
    if (nodes-- <= 0) {
      complete = false;
      return;
    }
    int[] at = byWaiting ? LeastWaiting.moments(gaps, work) : earliest(gaps);
    Timetable table = timetable(at);
    if (byWaiting && table.waiting() >= waitingBelow) {
      return;
    }
    Optional<Clashes.Pair> tightest = clashes.tightest(gaps, at);
    if (tightest.isPresent()) {
      branch(gaps, tightest.get());
      return;
    }
    List<Use> clash = clashes.first(at);
    if (clash.isEmpty()) {
      best = table;
      waitingBelow = table.waiting();
      return;
    }
    for (Use first : clash) {
      for (Use second : clash) {
        if (Clashes.moment(first) != Clashes.moment(second)) {
          Gaps next = gaps.copy();
          if (next.require(
              Clashes.moment(first), Clashes.moment(second), clashes.apart(first, second))) {
            follow(next);
          }
        }
      }
    }
  }

  /** Both ways round, the roomier first. */
  private void branch(Gaps gaps, Clashes.Pair pair) {
    int first = pair.first();
    int second = pair.second();
    boolean afterFirst =
        gaps.room(first, second, pair.after()) >= gaps.room(second, first, pair.before());
    for (boolean after : new boolean[] {afterFirst, !afterFirst}) {
      Gaps next = gaps.copy();
      if (after
          ? next.require(first, second, pair.after())
          : next.require(second, first, pair.before())) {
        follow(next);
      }
    }
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
      moments.add(
          new Moments(
              at[Clashes.moment(i, Use.Moment.PREPARE)],
              at[Clashes.moment(i, Use.Moment.FILL)],
              at[Clashes.moment(i, Use.Moment.LOAD)]));
    }
    return new Timetable(work, moments);
  }
}
