package jarwright.pantry;

import jarwright.lot.JarId;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Reports judged: what is to be written, and each jar's verdict to be shown.
 *
 * @param entries none where all was recorded before
 * @param verdicts of the jars that were not recorded before
 */
public record Sealed(List<Entry> entries, SortedMap<JarId, Judged> verdicts) {
  public Sealed {
    entries = List.copyOf(entries);
    verdicts = Collections.unmodifiableSortedMap(new TreeMap<>(verdicts));
  }
}
