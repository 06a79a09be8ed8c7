package jarwright.pantry;

import jarwright.lot.LotCode;
import java.util.Optional;

/**
 * What a stock-take says of a lot at one place.
 *
 * @param place where the jars were seen; empty where not said, which tells of no move
 * @param listed jars that were looked for there
 * @param found jars that were seen there, listed or not
 */
public record Counted(LotCode lot, Optional<String> place, JarNumbers listed, JarNumbers found) {}
