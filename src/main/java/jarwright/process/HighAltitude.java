package jarwright.process;

import jarwright.quantity.Altitude;
import java.util.Locale;
import java.util.Optional;

/**
 * What is to be said of a table at an altitude where other publications doubt it or end. The dial
 * tables of AIB 539 (2015) end there, so that a dial gauge has no process.
 */
public enum HighAltitude {
  /** Boiling water: one state service prints longer times than the guide. */
  LONGER_ELSEWHERE,
  /** A weighted gauge: the guide's band has no upper end, though its dial pressures end here. */
  NO_UPPER_END;

  /** Above it, not on it. */
  public static final Altitude ABOVE = Altitude.feet(8_000);

  /** As bundles of words write it. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What holds for a method at an altitude; empty where nothing does. */
  public static Optional<HighAltitude> of(Method method, Altitude altitude) {
    if (altitude.compareTo(ABOVE) <= 0) {
      return Optional.empty();
    }
    return switch (method) {
      case BOILING_WATER -> Optional.of(LONGER_ELSEWHERE);
      case WEIGHTED_GAUGE -> Optional.of(NO_UPPER_END);
      case DIAL_GAUGE -> Optional.empty();
    };
  }
}
