package jarwright.files;

import jarwright.pantry.JarNumbers;
import jarwright.pantry.Ticked;
import java.util.Optional;

/**
 * What a row says of acid: in every jar, or which jars went without.
 *
 * @param acid whether the jars got it, those that are missing it aside
 */
record AcidCells(Ticked acid, JarNumbers missing) {
  private static final String EVERY = "acid-in-every-jar";
  private static final String MISSING = "acid-missing";
  private static final String ALL = "all";
  private static final String UNSURE = "?";

  static AcidCells of(Fields load, RecordWords words) {
    Ticked every = words.ticked(EVERY);
    Optional<String> word = load.plainWord(MISSING);
    if (word.isEmpty()) {
      return new AcidCells(every, JarNumbers.NONE);
    }
    if (word.get().equals(UNSURE) || word.get().equals(ALL)) {
      Ticked none = word.get().equals(ALL) ? Ticked.NO : Ticked.BLANK;
      if (every == Ticked.YES) {
        contradiction(load);
      }
      return new AcidCells(none, JarNumbers.NONE);
    }
    JarNumbers missing = words.jars(MISSING).orElse(JarNumbers.NONE);
    boolean contradicts = load.has(EVERY) && every != (missing.isEmpty() ? Ticked.YES : Ticked.NO);
    if (contradicts) {
      contradiction(load);
    }
    return new AcidCells(Ticked.YES, missing);
  }

  private static void contradiction(Fields load) {
    load.problem(
        MISSING, "does not agree with " + EVERY, "keep the one that holds: the jars without acid");
  }
}
