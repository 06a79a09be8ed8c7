package jarwright.pantry;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What jars are looked for by; all that is given must fit. Texts are found within what the ledger
 * has, without regard to case.
 *
 * @param from where the produce came from
 * @param day of packing
 * @param shelf where a jar stands now, or last stood
 */
public record Sought(
    Optional<String> from, Optional<String> lids, Optional<LocalDate> day, Optional<String> shelf) {

  public boolean isEmpty() {
    return from.isEmpty() && lids.isEmpty() && day.isEmpty() && shelf.isEmpty();
  }

  /** Whether a jar is one of those. */
  public boolean fits(Jar jar) {
    return from.map(t -> holds(jar.facts().from(), t)).orElse(true)
        && lids.map(t -> holds(jar.facts().lids(), t)).orElse(true)
        && day.map(d -> jar.facts().packed().equals(Optional.of(d))).orElse(true)
        && shelf.map(t -> holds(place(jar), t)).orElse(true);
  }

  /** For a jar that is gone, where its lot was to stand. */
  private static String place(Jar jar) {
    Standing standing = jar.standing();
    if (standing instanceof Standing.Missing missing) {
      standing = missing.before();
    }
    return standing.isHere() ? Spot.of(standing).name() : jar.facts().shelf();
  }

  private static boolean holds(String text, String part) {
    return !part.isBlank() && Spot.alike(text).contains(Spot.alike(part));
  }
}
