package jarwright.pantry;

import jarwright.lot.LotCode;
import java.util.Optional;

/**
 * Jars of a lot that are not as the ledger has them.
 *
 * @param was where the ledger has them; empty where it knows of none
 * @param place where they were seen; empty where they were not, or it was not said
 */
public record Difference(
    Kind kind, LotCode lot, JarNumbers jars, Optional<Standing> was, String place) {

  /** In which way. */
  public enum Kind {
    MISSING,
    MOVED,
    /** Seen, though the ledger has them gone. */
    FOUND,
    /** Seen, though the ledger has them gone, and not to be eaten. */
    TURNED_UP,
    /** Seen on a shelf where they must not stand. */
    NOT_FOR_SHELF,
    /** Seen, though nobody has recorded how they came out of the canner. */
    NOT_SEALED,
    /** Seen, though the ledger says that they cannot be there. */
    IMPOSSIBLE,
    /** The lot has no jar of that number. */
    NO_SUCH_JAR,
    /** The ledger has no such lot. */
    NO_SUCH_LOT
  }

  /** The event that brings the ledger up to what was seen; empty where a person must see to it. */
  public Optional<JarStep> step() {
    return switch (kind) {
      case MISSING -> Optional.of(JarStep.missing());
      case MOVED -> Optional.of(JarStep.moved(place));
      case FOUND, TURNED_UP -> Optional.of(JarStep.found(place));
      default -> Optional.empty();
    };
  }
}
