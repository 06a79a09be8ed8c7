package jarwright.day;

import java.util.Arrays;
import java.util.List;

/** How many hands, pots and canners are taken, minute by minute. */
final class Occupancy {
  private final int[][] taken;
  private final int[] capacity;

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

  /** The moment itself where all uses are free then, else a later one before which none is. */
  int later(List<Use> uses, int moment) {
    for (Use use : uses) {
      int[] row = taken[use.resource()];
      int from = moment + use.offset();
      for (int t = Math.min(row.length, from + use.minutes()) - 1; t >= from; t--) {
        if (row[t] + use.amount() > capacity[use.resource()]) {
          return t + 1 - use.offset();
        }
      }
    }
    return moment;
  }

  /** The moment itself where all uses are free then, else an earlier one after which none is. */
  int earlier(List<Use> uses, int moment) {
    for (Use use : uses) {
      int[] row = taken[use.resource()];
      int from = moment + use.offset();
      int to = Math.min(row.length, from + use.minutes());
      for (int t = from; t < to; t++) {
        if (row[t] + use.amount() > capacity[use.resource()]) {
          return t - use.minutes() - use.offset();
        }
      }
    }
    return moment;
  }

  void take(Use use, int moment) {
    change(use, moment, use.amount());
  }

  void giveBack(Use use, int moment) {
    change(use, moment, -use.amount());
  }

  private void change(Use use, int moment, int amount) {
    int from = moment + use.offset();
    int to = from + use.minutes();
    int[] row = taken[use.resource()];
    if (to > row.length) {
      row = Arrays.copyOf(row, Math.max(to, 2 * row.length));
      taken[use.resource()] = row;
    }
    for (int t = from; t < to; t++) {
      row[t] += amount;
    }
  }
}
