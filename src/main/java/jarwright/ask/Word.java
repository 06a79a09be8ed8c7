package jarwright.ask;

import java.util.Set;
import java.util.stream.Collectors;

/**
 * A word of what was said.
 *
 * @param written in small letters, without accents
 * @param raw its stem in every language that it may be of
 * @param turned whether the word before it turns it round, as in "without sugar"
 * @param kind what it says
 */
record Word(String written, Set<String> raw, boolean turned, Kind kind) {
  private static final String TURNED = "not ";

  enum Kind {
    /** May name a food. */
    NAMING,
    /** Says nothing of the food, yet may belong to a name, as "in" in "garlic in oil". */
    FILLER,
    /** Belongs to no name. */
    STOP
  }

  /** What names are compared by. */
  Set<String> stems() {
    return turned ? raw.stream().map(TURNED::concat).collect(Collectors.toSet()) : raw;
  }
}
