package jarwright.process;

import java.time.Duration;

/**
 * How long jars cool before their seals are tested: 12 to 24 hours. AIB 539 (2015) Guide 1, cooling
 * jars and testing jar seals.
 */
public final class Cooling {
  /** A seal that is tested sooner tells nothing. */
  public static final Duration LEAST = Duration.ofHours(12);

  public static final Duration MOST = Duration.ofHours(24);

  private Cooling() {}
}
