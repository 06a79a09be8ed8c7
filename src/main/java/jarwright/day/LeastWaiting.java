package jarwright.day;

/**
 * Among all moments that satisfy the requirements, those with the least waiting of filled jars.
 *
 * <p>From the earliest moments upwards: whenever moving some fillings later, with all that they
 * push along, makes more fillings than loadings later, that saves waiting; where no such move is
 * left, none exists at all, for the waiting is a sum of differences of moments.
 */
final class LeastWaiting {
  private final Gaps gaps;
  private final int loads;
  private final int[] at;

  private LeastWaiting(Gaps gaps, int loads) {
    this.gaps = gaps;
    this.loads = loads;
    this.at = new int[gaps.size()];
    for (int v = 0; v < at.length; v++) {
      at[v] = gaps.between(0, v);
    }
  }

  /** Minutes by moment; the requirements must hold an upper end for each. */
  static int[] moments(Gaps gaps, DayWork work) {
    LeastWaiting search = new LeastWaiting(gaps, work.loads().size());
    boolean moved = true;
    while (moved) {
      moved = false;
      for (int fillings = 1; fillings < 1 << search.loads; fillings++) {
        moved |= search.moveLater(fillings);
      }
    }
    return search.at;
  }

  private boolean moveLater(int fillings) {
    boolean[] moving = new boolean[at.length];
    for (int i = 0; i < loads; i++) {
      if ((fillings >> i & 1) == 1) {
        push(fill(i), moving);
      }
    }
    int saved = 0;
    for (int i = 0; i < loads; i++) {
      saved += (moving[fill(i)] ? 1 : 0) - (moving[fill(i) + 1] ? 1 : 0);
    }
    if (moving[0] || saved <= 0) {
      return false;
    }
    int room = room(moving);
    for (int v = 0; v < at.length; v++) {
      at[v] += moving[v] ? room : 0;
    }
    return true;
  }

  private static int fill(int load) {
    return 3 * load + 2;
  }

  /** Marks a moment and all that must move with it. */
  private void push(int moment, boolean[] moving) {
    for (int v = 0; v < at.length; v++) {
      if (at[v] - at[moment] == gaps.between(moment, v)) {
        moving[v] = true;
      }
    }
  }

  /** How far the marked moments can move before they meet another. */
  private int room(boolean[] moving) {
    int room = Integer.MAX_VALUE;
    for (int u = 0; u < at.length; u++) {
      for (int v = 0; v < at.length; v++) {
        if (moving[u] && !moving[v]) {
          room = Math.min(room, at[v] - at[u] - gaps.between(u, v));
        }
      }
    }
    return room;
  }
}
