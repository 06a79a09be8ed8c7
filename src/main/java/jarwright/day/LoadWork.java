package jarwright.day;

import java.util.List;

/**
 * One load as the timetable sees it: whole minutes and numbers of hands and pots.
 *
 * <p>Three moments are free: when preparing starts, when filling starts, when loading starts. The
 * rest hangs on them: jars and food are heated so as to be hot when filling starts, and from
 * loading on the canner runs without a pause to the unloading.
 *
 * @param batch number of the batch; loads of one batch keep their order
 * @param canner number of the canner
 * @param release before which nothing of the load may start
 * @param prepare minutes of washing, peeling and cutting
 * @param prepareHands pairs of hands at it
 * @param preparePots burners it takes besides
 * @param heatJars minutes before filling that the jars go on a burner
 * @param jarPots burners that the jars take until they are filled
 * @param heatFood minutes before filling that the food or its liquid goes on a burner
 * @param foodHands pairs of hands that stir it
 * @param foodIsPrepared whether what is heated has to be prepared first
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
    int prepare,
    int prepareHands,
    int preparePots,
    int heatJars,
    int jarPots,
    int heatFood,
    int foodHands,
    boolean foodIsPrepared,
    int fill,
    int fillHands,
    int load,
    int canning,
    int unload,
    int refill,
    int preheat) {

  /**
   * What tells one kind of load from another: all of it but whose it is, where it boils, and from
   * when on. A list, since the hash that Java makes for so long a record is slow to be made.
   */
  List<Integer> kind() {
    return List.of(
        prepare,
        prepareHands,
        preparePots,
        heatJars,
        jarPots,
        heatFood,
        foodHands,
        foodIsPrepared ? 1 : 0,
        fill,
        fillHands,
        load,
        canning,
        unload,
        refill);
  }

  /** Minutes from the start of loading to the jars on the bench. */
  int inCanner() {
    return load + canning + unload;
  }

  /** Minutes before filling when the first pot goes on. */
  int heat() {
    return Math.max(heatJars, heatFood);
  }

  /** Least minutes from the start of preparing to the start of filling. */
  int toFill() {
    return prepare + (foodIsPrepared ? heatFood : 0);
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
