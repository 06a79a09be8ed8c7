package jarwright.pantry;

import jarwright.lot.JarId;
import java.time.OffsetDateTime;
import java.util.Locale;

/**
 * Another jar of the lot was spoiled.
 *
 * @param cause that jar
 * @param what was found of it
 */
public record Doubt(Kind kind, JarId cause, OffsetDateTime since, Spoiled what) {
  /**
   * Whether a look can lift it. CDC, Home-Canned Foods: the toxin of botulism cannot be seen,
   * smelled or tasted. To condemn the whole lot for it is common practice, no source.
   */
  public enum Kind {
    /** Acid food by a process that is on record: each jar is looked over. */
    TO_CHECK,
    /** Low-acid food, or food that the tables do not know: no look clears it. */
    LOW_ACID,
    /** How it was made is not on record. */
    NOT_MADE_HERE,
    /** What was wrong was wrong with all of the lot. */
    WHOLE_LOT;

    /** As in {@code low-acid}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** Whether all jars of the lot are to be thrown away unopened. */
  public boolean condemns() {
    return kind != Kind.TO_CHECK;
  }
}
