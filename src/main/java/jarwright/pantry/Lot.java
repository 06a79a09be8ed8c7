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

  /**
   * The jars of a load: those that were in it, and those that are planned for it and of which
   * nothing has been recorded yet.
   */
  public JarNumbers inLoad(int load) {
    JarNumbers meant = planned.map(p -> p.inLoad(load)).orElse(JarNumbers.NONE);
    return JarNumbers.of(
        jars().stream()
            .filter(
                j ->
                    j.loaded().map(n -> n == load).orElse(false)
                        || (j.standing() instanceof Standing.Planned
                            && meant.contains(j.id().number())))
            .map(j -> j.id().number())
            .toList());
  }

  /** The jars of a load that are cooling. */
  public JarNumbers cooling(int load) {
    return JarNumbers.of(
        jars().stream()
            .filter(j -> j.standing() instanceof Standing.Cooling c && c.load() == load)
            .map(j -> j.id().number())
            .toList());
  }

  /** Whether a verdict has been recorded on any jar of a load. */
  public boolean hasOutcome(int load) {
    return jars().stream().anyMatch(j -> j.outcome().filter(o -> o.load() == load).isPresent());
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
