package jarwright.pantry;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Something to be written into the ledger, which gives it its number.
 *
 * @param when it was recorded
 * @param jars of the lot; none where the whole lot or no lot is meant
 * @param by who recorded it; may be empty
 */
public record Entry(
    OffsetDateTime when, Optional<LotCode> lot, JarNumbers jars, Happening what, String by) {
  public Entry {
    if (lot.isEmpty() && !jars.isEmpty()) {
      throw new IllegalArgumentException("jars " + jars + " need their lot");
    }
  }

  public static Entry of(OffsetDateTime when, LotCode lot, Happening what, String by) {
    return new Entry(when, Optional.of(lot), JarNumbers.NONE, what, by);
  }

  public static Entry of(
      OffsetDateTime when, LotCode lot, JarNumbers jars, Happening what, String by) {
    return new Entry(when, Optional.of(lot), jars, what, by);
  }

  public static Entry undo(OffsetDateTime when, long event, String why, String by) {
    return new Entry(when, Optional.empty(), JarNumbers.NONE, new Undone(event, why), by);
  }

  /** The same happening to jars of any lots: one entry for each lot. */
  public static List<Entry> forJars(
      OffsetDateTime when, Collection<JarId> jars, Happening what, String by) {
    Map<LotCode, List<Integer>> byLot = new TreeMap<>();
    jars.forEach(j -> byLot.computeIfAbsent(j.lot(), l -> new ArrayList<>()).add(j.number()));
    List<Entry> entries = new ArrayList<>();
    byLot.forEach((lot, numbers) -> entries.add(of(when, lot, JarNumbers.of(numbers), what, by)));
    return entries;
  }
}
