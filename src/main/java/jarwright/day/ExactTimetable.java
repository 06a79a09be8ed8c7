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

  ExactTimetable(DayWork work, Turnarounds turnarounds) {
    this.work = work;
    this.clashes = new Clashes(work, turnarounds);
    this.end = 3 * work.loads().size() + 1;
  }

  /**
   * How far the search has come.
   *
   * @param waitingBelow minutes of waiting that the next better timetable must stay below; none
   *     where only the finish counts
   * @param nodes choices that may still be followed; 0 where the search was cut short, so that
   *     nothing is proven
   */
  record Progress(Timetable best, Optional<Integer> waitingBelow, long nodes) {
    boolean isProven() {
      return nodes > 0;
    }

    private Progress with(Timetable better) {
      return new Progress(better, waitingBelow.map(w -> better.waiting()), nodes);
    }

    /** The latest finish that is of interest. */
    private int latest() {
      return waitingBelow.isPresent() ? best.finish() : best.finish() - 1;
    }
  }

  /**
   * The soonest finish.
   *
   * @param known a timetable that is possible
   * @param nodes choices to follow before giving up
   */
  Progress soonest(Timetable known, long nodes) {
    return follow(clashes.requirements(), new Progress(known, Optional.empty(), nodes));
  }

  /** The least waiting of those that are done no later. */
  Progress leastWaiting(Timetable known, long nodes) {
    return follow(clashes.requirements(), new Progress(known, Optional.of(known.waiting()), nodes));
  }

  /** The fewest turns from batch to batch of those done no later that wait no more. */
  Progress fewestTurns(Timetable known, long nodes) {
    Progress progress = new Progress(known, Optional.of(known.waiting() + 1), nodes);
    int batches = 1 + work.loads().stream().mapToInt(LoadWork::batch).max().orElseThrow();
    for (int changes = batches - 1; changes < known.changes(); changes++) {
      for (List<Integer> order : FillOrders.with(work, changes)) {
        Gaps gaps = clashes.requirements();
        if (fillIn(order, gaps)) {
          progress = follow(gaps, progress);
        }
        if (progress.best().changes() <= changes || !progress.isProven()) {
          return progress;
        }
      }
    }
    return progress;
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

  private Progress follow(Gaps gaps, Progress before) {
    boolean open =
        before.isProven()
            && gaps.require(end, 0, -before.latest())
            && clashes.settle(gaps)
            && clashes.bound(gaps, end) <= before.latest();
    if (!open) {
      return before;
    }
    Progress progress = new Progress(before.best(), before.waitingBelow(), before.nodes() - 1);
    int[] at =
        before.waitingBelow().isPresent() ? LeastWaiting.moments(gaps, work) : earliest(gaps);
    Timetable table = timetable(at);
    if (before.waitingBelow().filter(w -> table.waiting() >= w).isPresent()) {
      return progress;
    }
    Optional<Clashes.Pair> tightest = clashes.tightest(gaps, at);
    if (tightest.isPresent()) {
      return branch(gaps, tightest.get(), progress);
    }
    List<Use> clash = clashes.first(at);
    return clash.isEmpty() ? progress.with(table) : branch(gaps, clash, progress);
  }

  /** Both ways round, the roomier first. */
  private Progress branch(Gaps gaps, Clashes.Pair pair, Progress before) {
    boolean roomy = pair.once().room(gaps) >= pair.turned().room(gaps);
    Progress once = ordered(gaps, roomy ? pair.once() : pair.turned(), before);
    return ordered(gaps, roomy ? pair.turned() : pair.once(), once);
  }

  /** Any one of them before any other. */
  private Progress branch(Gaps gaps, List<Use> clash, Progress before) {
    Progress progress = before;
    for (Use first : clash) {
      for (Use second : clash) {
        if (!first.equals(second)) {
          progress = ordered(gaps, clashes.order(first, second), progress);
        }
      }
    }
    return progress;
  }

  private Progress ordered(Gaps gaps, Clashes.Order order, Progress before) {
    Gaps next = gaps.copy();
    return next.require(order.earlier(), order.later(), order.minutes())
        ? follow(next, before)
        : before;
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
