package jarwright.day;

import java.util.List;
import java.util.Optional;

/**
 * What a checklist says of the canner.
 *
 * @param loads jars in each load, in order
 * @param water to put in before the jars; empty where only the general rule can be told
 */
public record CannerFigures(List<Integer> loads, Optional<Figure> water) {
  public CannerFigures {
    loads = List.copyOf(loads);
    if (loads.isEmpty()) {
      throw new IllegalArgumentException("a batch has a load or more");
    }
  }
}
