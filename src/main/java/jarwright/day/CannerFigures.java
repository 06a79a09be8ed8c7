package jarwright.day;

import java.util.List;

/**
 * What a checklist says of the canner.
 *
 * @param loads jars in each load, in order
 * @param water how much water to put in first, as printed; empty where it cannot be said
 */
public record CannerFigures(List<Integer> loads, String water) {
  public CannerFigures {
    loads = List.copyOf(loads);
    if (loads.isEmpty()) {
      throw new IllegalArgumentException("a batch has a load or more");
    }
  }
}
