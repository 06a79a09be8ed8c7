package jarwright.pantry;

import jarwright.lot.LotCode;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A lot as the ledger knows it.
 *
 * @param planned empty for jars from an old list
 * @param background what its jars have in common
 * @param doubt present while a spoiled jar speaks against the lot, whether or not its jars were
 *     looked over since
 * @param loads how the loads were processed, in the order recorded
 * @param byNumber the jars, those never filled included
 */
public record Lot(
    LotCode code,
    LotFacts facts,
    Optional<Planned> planned,
    Background background,
    Optional<Doubt> doubt,
    List<LoadRun> loads,
    NavigableMap<Integer, Jar> byNumber) {
  public Lot {
    loads = List.copyOf(loads);
    byNumber = Collections.unmodifiableNavigableMap(new TreeMap<>(byNumber));
  }

  public Collection<Jar> jars() {
    return byNumber.values();
  }

  public Optional<Jar> jar(int number) {
    return Optional.ofNullable(byNumber.get(number));
  }

  public Optional<LoadRun> load(int load) {
    return loads.stream().filter(l -> l.load() == load).findFirst();
  }

  /** Whether something has happened to it, after which its plan stays as it is. */
  public boolean isFrozen() {
    return planned.isEmpty()
        || !loads.isEmpty()
        || doubt.isPresent()
        || jars().stream().anyMatch(j -> !(j.standing() instanceof Standing.Planned));
  }

  /** When and why it was cancelled; empty where it was not. */
  public Optional<Standing.Cancelled> cancelled() {
    return jars().stream()
        .map(Jar::standing)
        .filter(Standing.Cancelled.class::isInstance)
        .map(Standing.Cancelled.class::cast)
        .findFirst();
  }

  /** Jars of which nobody has recorded yet how they came out. */
  public JarNumbers open() {
    return JarNumbers.of(
        jars().stream().filter(j -> j.isOpen()).map(j -> j.id().number()).toList());
  }
}
