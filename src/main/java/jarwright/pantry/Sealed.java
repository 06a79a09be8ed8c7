package jarwright.pantry;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import java.time.OffsetDateTime;
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

  /** Whether a load among the entries has cooled already, and its jars may be looked at. */
  public boolean canBeLookedAt(OffsetDateTime now) {
    return entries.stream()
        .filter(e -> e.what() instanceof LoadRun)
        .filter(e -> !cooling(e).isEmpty())
        .flatMap(e -> ((LoadRun) e.what()).lookFrom().stream())
        .anyMatch(t -> !now.isBefore(t));
  }

  /** The jars of an entry that got no verdict yet. */
  public JarNumbers cooling(Entry load) {
    return JarNumbers.of(
        load.jars().stream()
            .filter(n -> !verdicts.containsKey(load.lot().orElseThrow().jar(n)))
            .toArray());
  }

  /** Jars of a lot that are thrown away for no other reason than that it is too late. */
  public JarNumbers late(LotCode lot) {
    return JarNumbers.of(
        verdicts.entrySet().stream()
            .filter(v -> v.getKey().lot().equals(lot) && v.getValue().isLate())
            .map(v -> v.getKey().number())
            .toList());
  }
}
