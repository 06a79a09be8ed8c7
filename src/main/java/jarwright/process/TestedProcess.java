package jarwright.process;

import jarwright.quantity.GaugePressure;
import java.util.Optional;

/**
 * A published process: hold for so many minutes, at boiling or at no less than a gauge pressure.
 *
 * @param minutes never shortened by anything
 * @param pressure present for pressure canners only
 */
public record TestedProcess(int minutes, Optional<GaugePressure> pressure) {
  /** Below this time the jars themselves must be sterile: AIB 539 (2015) p. 1-14. */
  private static final int JARS_CLEAN_FROM_MINUTES = 10;

  public TestedProcess {
    if (minutes < 1) {
      throw new IllegalArgumentException("a process takes a minute or more, not " + minutes);
    }
  }

  public boolean isPressure() {
    return pressure.isPresent();
  }

  /** Whether empty jars are boiled first; pressure sterilises them by itself. */
  public boolean needsSterileJars() {
    return pressure.isEmpty() && minutes < JARS_CLEAN_FROM_MINUTES;
  }
}
