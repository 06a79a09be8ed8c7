package jarwright.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The best timetable by trying every minute for every moment: slow, and written from the rules of a
 * kitchen alone, so as to share nothing with the search that it checks.
 */
final class BruteForce {
  private final DayWork work;
  private final int horizon;
  private final int[] hands;
  private final int[] pots;
  private final int[][] canners;
  private final int[][] at;
  private int[] best;

  /**
   * Looks for anything up to a finish.
   *
   * @param finish minutes; what is done later is not looked at
   */
  BruteForce(DayWork work, int finish) {
    this.work = work;
    this.horizon = finish;
    // The refill after a canner's last load may run past the finish.
    int rows = finish + 1_000;
    this.hands = new int[rows];
    this.pots = new int[rows];
    this.canners = new int[work.canners()][rows];
    this.at = new int[work.loads().size()][];
  }

  /** Finish, waiting and changes of the best timetable; null where none is done in time. */
  int[] best() {
    place(0, 0, 0);
    return best;
  }

  private void place(int load, int finish, int waiting) {
    if (best != null && (finish > best[0] || (finish == best[0] && waiting > best[1]))) {
      return;
    }
    if (load == at.length) {
      int[] found = {finish, waiting, changes()};
      if (best == null || Arrays.compare(found, best) < 0) {
        best = found;
      }
      return;
    }
    LoadWork w = work.loads().get(load);
    int[] before =
        load > 0 && work.loads().get(load - 1).batch() == w.batch() ? at[load - 1] : null;
    int latest = (best == null ? horizon : best[0]) - w.load() - w.canning() - w.unload();
    int first = w.release() + w.preheat();
    for (int l = before == null ? first : Math.max(first, before[2]); l <= latest; l++) {
      for (int f = l - w.fill(); f >= Math.max(0, l - w.fill() - work.waitLimit()); f--) {
        boolean hot = f >= w.release() + Math.max(w.heatJars(), minutes(w.food()));
        if (!hot || (before != null && f < before[1])) {
          continue;
        }
        int kept = f;
        if (w.kept() > 0) {
          kept = before[1] + work.loads().get(load - 1).fill();
          if (f < kept) {
            continue;
          }
        }
        int needed = w.foodIsPrepared() ? f - minutes(w.food()) : f;
        int ready = needed - minutes(w.prepare());
        int soonest =
            w.spoilsByStanding() ? Math.max(w.release(), ready - w.stands()) : w.release();
        for (int p = ready; p >= soonest; p--) {
          if ((before == null || p >= before[0]) && take(w, kept, p, f, l)) {
            at[load] = new int[] {p, f, l};
            int out = l + w.load() + w.canning() + w.unload();
            place(load + 1, Math.max(finish, out), waiting + l - f - w.fill());
            give(w, kept, p, f, l);
          }
        }
      }
    }
  }

  private static int minutes(List<Stretch> stretches) {
    int sum = 0;
    for (Stretch stretch : stretches) {
      sum += stretch.minutes();
    }
    return sum;
  }

  private boolean take(LoadWork w, int kept, int p, int f, int l) {
    mark(w, kept, p, f, l, 1);
    boolean fits = fits(w, kept, p, f, l);
    if (!fits) {
      give(w, kept, p, f, l);
    }
    return fits;
  }

  private boolean fits(LoadWork w, int kept, int p, int f, int l) {
    int until = l + w.load() + w.canning() + w.unload() + w.refill();
    int from = Math.min(kept, f - Math.max(w.heatJars(), minutes(w.food())));
    for (int t = Math.min(p, from); t < until; t++) {
      if (hands[t] > work.hands() || pots[t] > work.pots() || canners[w.canner()][t] > 1) {
        return false;
      }
    }
    return true;
  }

  private void give(LoadWork w, int kept, int p, int f, int l) {
    mark(w, kept, p, f, l, -1);
  }

  private void mark(LoadWork w, int kept, int p, int f, int l, int sign) {
    int out = l + w.load() + w.canning();
    addAll(p, w.prepare(), sign);
    addAll(f - minutes(w.food()), w.food(), sign);
    add(pots, f - w.heatJars(), f + w.fill(), sign * w.jarPots());
    int foodPots = w.food().isEmpty() ? 0 : w.food().get(w.food().size() - 1).pots();
    add(pots, f, f + w.fill(), sign * foodPots);
    add(pots, kept, f + w.fill(), sign * w.kept());
    add(hands, f, f + w.fill(), sign * w.fillHands());
    add(hands, l, l + w.load(), sign);
    add(hands, out, out + w.unload(), sign);
    add(canners[w.canner()], l, out + w.unload() + w.refill(), sign);
  }

  private void addAll(int from, List<Stretch> stretches, int sign) {
    int at = from;
    for (Stretch stretch : stretches) {
      add(hands, at, at + stretch.minutes(), sign * stretch.hands());
      add(pots, at, at + stretch.minutes(), sign * stretch.pots());
      at += stretch.minutes();
    }
  }

  private static void add(int[] row, int from, int to, int amount) {
    for (int t = from; t < to; t++) {
      row[t] += amount;
    }
  }

  /** The fewest turns from batch to batch over all orders that the fillings allow. */
  private int changes() {
    List<Integer> left = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      left.add(i);
    }
    return changes(left, -1);
  }

  private int changes(List<Integer> left, int lastBatch) {
    if (left.isEmpty()) {
      return 0;
    }
    int next = left.stream().mapToInt(i -> at[i][1]).min().orElseThrow();
    int fewest = Integer.MAX_VALUE;
    for (Integer i : left) {
      if (at[i][1] == next) {
        List<Integer> rest = new ArrayList<>(left);
        rest.remove(i);
        int batch = work.loads().get(i).batch();
        int turn = lastBatch < 0 || lastBatch == batch ? 0 : 1;
        fewest = Math.min(fewest, turn + changes(rest, batch));
      }
    }
    return fewest;
  }
}
