package jarwright.pantry;

import java.util.EnumSet;
import java.util.Set;

/**
 * What was seen of a jar once it had cooled.
 *
 * @param sealed by the tests for a seal
 * @param anyLow whether any jar of the load has lost liquid
 * @param cloudy whether the canner's water was cloudy
 */
public record Seen(
    boolean sealed, Liquid lost, boolean anyLow, Ticked cloudy, Set<Otherwise> otherwise) {
  public Seen {
    otherwise = Set.copyOf(otherwise);
  }

  /** What speaks against the jar; none where it is as it should be. */
  Set<Finding> against() {
    Set<Finding> found = EnumSet.noneOf(Finding.class);
    otherwise.forEach(o -> found.add(o.finding()));
    if (!sealed) {
      found.add(Finding.NOT_SEALED);
    }
    switch (lost) {
      case NONE -> {}
      case SOME -> found.add(Finding.SOME_LOST);
      case HALF_OR_MORE -> found.add(Finding.HALF_LOST);
    }
    if (cloudy != Ticked.NO && lost != Liquid.NONE) {
      found.add(Finding.CLOUDY_AND_LOW);
    } else if (cloudy != Ticked.NO && !anyLow) {
      found.add(Finding.CLOUDY_NONE_LOW);
    }
    return found;
  }
}
