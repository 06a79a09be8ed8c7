package jarwright.pantry;

import jarwright.lot.LotCode;
import jarwright.problem.Place;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the household tells of one canner load and its jars, before it is judged.
 *
 * @param where it stands in the file, or what it was asked by; for messages
 * @param load counted from 1 within the lot
 * @param jars in the load; empty for those that the plan put into it
 * @param unsealed of them
 * @param someLost of them, less than half of the liquid
 * @param halfLost of them, half of the liquid or more
 * @param unfilled planned jars that were never filled
 * @param notes on single jars, by number
 * @param note on the load
 */
public record LoadReport(
    Place where,
    LotCode lot,
    int load,
    Optional<JarNumbers> jars,
    Observed seen,
    JarNumbers unsealed,
    JarNumbers someLost,
    JarNumbers halfLost,
    JarNumbers unfilled,
    SortedMap<Integer, String> notes,
    String note) {
  public LoadReport {
    notes = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(notes));
  }

  /** A report without notes in which all jars were filled. */
  public static LoadReport of(
      Place where,
      LotCode lot,
      int load,
      Observed seen,
      JarNumbers unsealed,
      JarNumbers someLost,
      JarNumbers halfLost) {
    return new LoadReport(
        where,
        lot,
        load,
        Optional.empty(),
        seen,
        unsealed,
        someLost,
        halfLost,
        JarNumbers.NONE,
        new TreeMap<>(Map.of()),
        "");
  }

  Liquid lost(int jar) {
    if (halfLost.contains(jar)) {
      return Liquid.HALF_OR_MORE;
    }
    return someLost.contains(jar) ? Liquid.SOME : Liquid.NONE;
  }

  boolean anyLow() {
    return !someLost.isEmpty() || !halfLost.isEmpty();
  }
}
