package jarwright.day;

import java.util.List;

/**
 * All the work of a day as the timetable sees it.
 *
 * @param loads those of one batch stand together, in their order
 * @param hands pairs of hands
 * @param pots burners left beside the canners
 * @param waitLimit minutes that filled jars may wait for the canner
 */
record DayWork(List<LoadWork> loads, int hands, int pots, int waitLimit) {
  DayWork {
    loads = List.copyOf(loads);
    if (loads.isEmpty()) {
      throw new IllegalArgumentException("a day has a load");
    }
    for (LoadWork one : loads) {
      int held = Math.max(one.fillHands(), Math.max(one.foodHands(), one.prepareHands()));
      if (Math.max(1, held) > hands || Math.max(one.jarPots() + 1, one.preparePots()) > pots) {
        throw new IllegalArgumentException("a load needs more hands or pots than there are");
      }
    }
  }

  int canners() {
    return loads.stream().mapToInt(LoadWork::canner).max().orElseThrow() + 1;
  }
}
