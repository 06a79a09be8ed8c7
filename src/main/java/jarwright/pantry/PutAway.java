package jarwright.pantry;

import java.time.OffsetDateTime;

/**
 * Jars that were put away cold before they were told of, so that their food kept.
 *
 * @param since when they were put there
 */
public record PutAway(JarNumbers refrigerator, JarNumbers freezer, OffsetDateTime since) {
  JarNumbers all() {
    return refrigerator.plus(freezer);
  }
}
