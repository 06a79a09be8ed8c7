package jarwright.pantry;

import jarwright.lot.LotCode;
import jarwright.problem.Place;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the household tells of one canner load, before it is judged: how it was processed, how its
 * jars came out, or both.
 *
 * @param where it stands in the file, or what it was asked by; for messages
 * @param load counted from 1 within the lot
 * @param jars in the load, or of those that cooled the ones that are told of; empty for all
 * @param seen empty where it was recorded before, or nothing was processed
 * @param look empty while the jars cool
 * @param otherwise what went otherwise, told only after the load was recorded
 * @param putAway jars that were put away cold before they were told of
 * @param unfilled planned jars that were never filled
 * @param notes on single jars, by number
 * @param note on the load
 */
public record LoadReport(
    Place where,
    LotCode lot,
    int load,
    Optional<JarNumbers> jars,
    Optional<Observed> seen,
    Optional<Look> look,
    Departures otherwise,
    Optional<PutAway> putAway,
    JarNumbers unfilled,
    SortedMap<Integer, String> notes,
    String note) {
  public LoadReport {
    if (!otherwise.signs(true).isEmpty()) {
      throw new IllegalArgumentException("what jars look like is seen with their seals");
    }
    notes = Collections.unmodifiableSortedMap(new TreeMap<>(notes));
  }

  /** A report of all jars that the plan put into the load, without notes. */
  public static LoadReport of(
      Place where, LotCode lot, int load, Optional<Observed> seen, Optional<Look> look) {
    return new LoadReport(
        where,
        lot,
        load,
        Optional.empty(),
        seen,
        look,
        Departures.NONE,
        Optional.empty(),
        JarNumbers.NONE,
        new TreeMap<>(Map.of()),
        "");
  }

  /** Whether it tells of nothing but jars that were never filled. */
  boolean isOfUnfilled() {
    boolean more = seen.isPresent() || look.isPresent() || putAway.isPresent();
    return !more && otherwise.isEmpty() && !unfilled.isEmpty();
  }

  /** What was recorded of the load, with what is told of it only now. */
  LoadRun on(LoadRun recorded) {
    Observed then = recorded.seen();
    Ticked cloudy =
        seen.map(Observed::cloudy)
            .filter(c -> c != Ticked.BLANK)
            .or(() -> look.map(Look::cloudy))
            .orElse(Ticked.BLANK);
    Departures all =
        then.otherwise()
            .plus(seen.map(Observed::otherwise).orElse(Departures.NONE))
            .plus(otherwise);
    Observed now = then.with(then.cloudy() == Ticked.BLANK ? cloudy : then.cloudy(), all);
    return new LoadRun(recorded.load(), recorded.required(), now, recorded.note());
  }

  /** What is told of a jar beyond what was recorded of its load. */
  Set<Otherwise> toldNow(LoadRun recorded, int jar) {
    Set<Otherwise> all = EnumSet.noneOf(Otherwise.class);
    all.addAll(on(recorded).seen().otherwise().of(jar));
    all.removeAll(recorded.seen().otherwise().of(jar));
    look.ifPresent(l -> all.addAll(l.signs().of(jar)));
    return all;
  }

  /** A note that comes with the seals is one on each of the jars. */
  String noteOn(int jar) {
    return notes.getOrDefault(jar, seen.isEmpty() ? note : "");
  }

  Optional<Judge.Chilled> chilled(int jar) {
    return putAway
        .filter(k -> k.all().contains(jar))
        .map(k -> new Judge.Chilled(k.since(), k.freezer().contains(jar)));
  }
}
