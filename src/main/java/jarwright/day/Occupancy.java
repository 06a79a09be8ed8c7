package jarwright.day;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How many hands, pots and canners are taken, minute by minute. */
final class Occupancy {
  /** No moment: what stands in the way stands there for good. */
  static final int NEVER = Integer.MAX_VALUE / 2;

  private final int[][] taken;
  private final int[] capacity;

  /** Pots that are held from a minute on, until it is known how long, by batch. */
  private final Map<Integer, Held> held = new TreeMap<>();

  private record Held(int since, int pots) {}

  Occupancy(DayWork work) {
    int resources = Use.FIRST_CANNER + work.canners();
    taken = new int[resources][0];
    capacity = new int[resources];
    Arrays.fill(capacity, 1);
    capacity[Use.HANDS] = work.hands();
    capacity[Use.POTS] = work.pots();
  }

  int resources() {
    return capacity.length;
  }

  int capacity(int resource) {
    return capacity[resource];
  }

  /** The minute after which nothing is taken that is not held for good. */
  int end() {
    return Arrays.stream(taken).mapToInt(row -> row.length).max().orElse(0);
  }

  /** The moment itself where all uses are free then, else a later one before which none is. */
  int later(List<Use> uses, int moment) {
    for (Use use : uses) {
      int from = moment + use.offset();
      for (int t = last(use, from); t >= from; t--) {
        if (isFull(use, t)) {
          return t >= end() ? NEVER : t + 1 - use.offset();
        }
      }
    }
    return moment;
  }

  /** The moment itself where all uses are free then, else an earlier one after which none is. */
  int earlier(List<Use> uses, int moment) {
    for (Use use : uses) {
      int from = moment + use.offset();
      int to = last(use, from);
      for (int t = from; t <= to; t++) {
        if (isFull(use, t)) {
          return t - use.minutes() - use.offset();
        }
      }
    }
    return moment;
  }

  /** The last minute that has to be looked at: further on nothing is taken but what is held. */
  private int last(Use use, int from) {
    boolean holds = use.resource() == Use.POTS && !held.isEmpty();
    int rows = holds ? Integer.MAX_VALUE : taken[use.resource()].length;
    return Math.min(rows, from + use.minutes()) - 1;
  }

  private boolean isFull(Use use, int minute) {
    int[] row = taken[use.resource()];
    int sum = use.amount() + (minute < row.length ? row[minute] : 0);
    if (use.resource() == Use.POTS) {
      for (Held one : held.values()) {
        sum += one.since() <= minute ? one.pots() : 0;
      }
    }
    return sum > capacity[use.resource()];
  }

  void take(Use use, int moment) {
    int from = moment + use.offset();
    change(use.resource(), from, from + use.minutes(), use.amount());
  }

  void giveBack(Use use, int moment) {
    int from = moment + use.offset();
    change(use.resource(), from, from + use.minutes(), -use.amount());
  }

  /** Takes pots for a stretch whose ends depend on two moments. */
  void takePots(int from, int until, int pots) {
    change(Use.POTS, from, until, pots);
  }

  /** Holds pots for a batch from a minute on, until that is changed. */
  void hold(int batch, int since, int pots) {
    held.put(batch, new Held(since, pots));
  }

  /** Whether so many pots can be held from a minute on for as long as it takes. */
  boolean canHold(int since, int pots) {
    int[] row = taken[Use.POTS];
    int others = held.values().stream().mapToInt(Held::pots).sum();
    for (int t = since; t < row.length; t++) {
      if (row[t] + others + pots > capacity[Use.POTS]) {
        return false;
      }
    }
    return others + pots <= capacity[Use.POTS];
  }

  /** Ends a hold, if there is one: its pots were taken up to the minute, and are free from then. */
  void release(int batch, int until) {
    Held one = held.remove(batch);
    if (one != null) {
      takePots(one.since(), until, one.pots());
    }
  }

  private void change(int resource, int from, int to, int amount) {
    int[] row = taken[resource];
    if (to > row.length) {
      row = Arrays.copyOf(row, Math.max(to, 2 * row.length));
      taken[resource] = row;
    }
    for (int t = from; t < to; t++) {
      row[t] += amount;
    }
  }
}
