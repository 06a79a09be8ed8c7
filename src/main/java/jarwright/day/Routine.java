package jarwright.day;

import java.util.List;

/**
 * What a product does in its own way at the canner.
 *
 * @param water steps in place of the usual water and preheating; empty for the usual
 * @param venting steps in place of the usual venting; empty for the usual
 */
record Routine(List<Step> water, List<Step> venting) {
  Routine {
    water = List.copyOf(water);
    venting = List.copyOf(venting);
  }

  boolean fillsWater() {
    return !water.isEmpty();
  }

  boolean vents() {
    return !venting.isEmpty();
  }
}
