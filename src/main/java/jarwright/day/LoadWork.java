package jarwright.day;

import java.util.List;

/**
 * One load as the timetable sees it: whole minutes and numbers of hands and pots.
 *
 * <p>Three moments are free: when preparing starts, when filling starts, when loading starts. The
 * rest depends on them: jars and food are heated so as to be hot when filling starts, and from
 * loading on the canner runs without a pause to the unloading.
 *
 * @param batch number of the batch; loads of one batch keep their order
 * @param canner number of the canner
 * @param release before which nothing of the load may start
 * @param prepare washing, peeling, cutting, and waits between, one after the other
 * @param stands most minutes that the prepared food may stand before it is needed; {@link
 *     #ANY_TIME} where that is no matter
 * @param heatJars minutes before filling that the jars go on a burner
 * @param jarPots burners that the jars take until they are filled
 * @param food what makes the food or its liquid hot, ending when filling starts; the pots of its
 *     last part are taken until the jars are filled
 * @param foodIsPrepared whether what is heated has to be prepared first
 * @param kept burners that take the batch's hot food from the filling of the load before until this
 *     one is filled; 0 where the load's food is heated for it
 * @param fill minutes of filling
 * @param fillHands pairs of hands at it
 * @param load minutes of loading, by one pair of hands
 * @param canning minutes from loaded to unloading
 * @param unload minutes of unloading, by one pair of hands
 * @param refill minutes before the canner takes its next load
 * @param preheat minutes before the canner takes its first load
 */
record LoadWork(
    int batch,
    int canner,
    int release,
    List<Stretch> prepare,
    int stands,
    int heatJars,
    int jarPots,
    List<Stretch> food,
    boolean foodIsPrepared,
    int kept,
    int fill,
    int fillHands,
    int load,
    int canning,
    int unload,
    int refill,
    int preheat) {
  static final int ANY_TIME = Integer.MAX_VALUE;

  LoadWork {
    prepare = List.copyOf(prepare);
    food = List.copyOf(food);
    if (kept > 0 && !food.isEmpty()) {
      throw new IllegalArgumentException("food that is kept hot is not heated again");
    }
  }

  /**
   * What tells one kind of load from another: all of it but whose it is, where it boils, and from
   * when on. A list, since the hash that Java makes for so long a record is slow to be made.
   */
  List<Object> kind() {
    return List.of(
        prepare,
        stands,
        heatJars,
        jarPots,
        food,
        foodIsPrepared,
        kept,
        fill,
        fillHands,
        load,
        canning,
        unload,
        refill);
  }

  int prepareMinutes() {
    return Stretch.minutes(prepare);
  }

  int foodMinutes() {
    return Stretch.minutes(food);
  }

  /** Burners that the hot food takes while the jars are filled. */
  int foodPots() {
    return food.isEmpty() ? 0 : food.get(food.size() - 1).pots();
  }

  /** Minutes from the start of loading to the jars on the bench. */
  int inCanner() {
    return load + canning + unload;
  }

  /** Minutes before filling when the first pot goes on. */
  int heat() {
    return Math.max(heatJars, foodMinutes());
  }

  /** Least minutes from the start of preparing to the start of filling. */
  int toFill() {
    return prepareMinutes() + (foodIsPrepared ? foodMinutes() : 0);
  }

  /** Whether there is a longest time from the start of preparing to the start of filling. */
  boolean spoilsByStanding() {
    return stands < ANY_TIME;
  }

  /** Least minutes from nothing done to the start of filling. */
  int earliestFill() {
    return release + Math.max(toFill(), heat());
  }

  /** Least minutes from nothing done to the start of loading. */
  int earliestLoad() {
    return Math.max(earliestFill() + fill, release + preheat);
  }
}
