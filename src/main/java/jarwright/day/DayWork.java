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
    for (int i = 0; i < loads.size(); i++) {
      LoadWork one = loads.get(i);
      if (mostHands(one) > hands || mostPots(one) > pots) {
        throw new IllegalArgumentException("a load needs more hands or pots than there are");
      }
      if (one.kept() > 0 && (i == 0 || loads.get(i - 1).batch() != one.batch())) {
        throw new IllegalArgumentException("a batch's first load has no food of a load before");
      }
    }
  }

  private static int mostHands(LoadWork load) {
    int food = Stretch.mostHands(load.food());
    int prepare = Stretch.mostHands(load.prepare());
    int held = meets(load) ? food + prepare : Math.max(food, prepare);
    return Math.max(1, Math.max(load.fillHands(), held));
  }

  private static int mostPots(LoadWork load) {
    int food = Math.max(load.kept(), Stretch.mostPots(load.food()));
    int heated = load.jarPots() + food;
    int prepare = Stretch.mostPots(load.prepare());
    return meets(load) ? heated + prepare : Math.max(heated, prepare);
  }

  /** Whether the preparing, which cannot be moved ahead, may run while the liquid is heated. */
  private static boolean meets(LoadWork load) {
    return load.spoilsByStanding() && !load.foodIsPrepared();
  }

  int canners() {
    return loads.stream().mapToInt(LoadWork::canner).max().orElseThrow() + 1;
  }

  /** Whether the load after it lives on what it leaves in the pots. */
  boolean isKeptAfter(int load) {
    return load + 1 < loads.size() && loads.get(load + 1).kept() > 0;
  }
}
