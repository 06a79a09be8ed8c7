package jarwright.pantry;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The household's jars as the events of its ledger add up to. */
public final class Pantry {
  public static final Pantry EMPTY = new Pantry(new TreeMap<>(), List.of());

  private final NavigableMap<LotCode, Lot> lots;
  private final List<Remark> remarks;

  Pantry(NavigableMap<LotCode, Lot> lots, List<Remark> remarks) {
    this.lots = Collections.unmodifiableNavigableMap(lots);
    this.remarks = List.copyOf(remarks);
  }

  /**
   * Folds all events of a ledger, in the order of their numbers.
   *
   * @param foods what the tables know; asked only where jars were spoiled or brought in
   */
  public static Pantry of(List<LedgerEvent> events, Supplier<Foods> foods) {
    PantryFold fold = new PantryFold(events, foods);
    events.forEach(fold::add);
    return fold.pantry();
  }

  /** By day of packing, then letter. */
  public Collection<Lot> lots() {
    return lots.values();
  }

  public Optional<Lot> lot(LotCode code) {
    return Optional.ofNullable(lots.get(code));
  }

  public Optional<Jar> jar(JarId id) {
    return lot(id.lot()).flatMap(lot -> lot.jar(id.number()));
  }

  /** Every jar ever planned or brought in, by lot and number. */
  public Stream<Jar> jars() {
    return lots.values().stream().flatMap(lot -> lot.jars().stream());
  }

  /** The full jars in the house, by lot and number. */
  public Stream<Jar> here() {
    return jars().filter(j -> j.standing().isHere());
  }

  /** How many jars there are of each standing; each jar is counted once. */
  public Map<Standing.Kind, Integer> counts() {
    Map<Standing.Kind, Integer> counts = new EnumMap<>(Standing.Kind.class);
    jars().forEach(j -> counts.merge(j.standing().kind(), 1, Integer::sum));
    return counts;
  }

  /** What was odd in the ledger. */
  public List<Remark> remarks() {
    return remarks;
  }
}
