package jarwright.process;

import java.util.List;
import java.util.Optional;

/**
 * A fixed formula: its proportions are part of the safety.
 *
 * @param yield as printed, as {@code about 8 to 9 pints}; empty where nothing is printed
 * @param jars the jars it gives; empty where the guide counts none
 */
public record Formula(
    String productId, String yield, Optional<JarYield> jars, List<FormulaLine> lines) {
  public Formula {
    lines = List.copyOf(lines);
  }
}
