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
  private static final String POUND = "lb";

  public Formula {
    lines = List.copyOf(lines);
  }

  /** The ingredient that is weighed in more pounds than every other; none where two weigh alike. */
  public Optional<FormulaLine> mainProduce() {
    List<FormulaLine> weighed =
        lines.stream()
            .filter(l -> l.unit().equals(POUND))
            .sorted((a, b) -> b.most().compareTo(a.most()))
            .toList();
    boolean clear =
        weighed.size() == 1
            || (weighed.size() > 1 && weighed.get(0).most().compareTo(weighed.get(1).most()) > 0);
    return clear ? Optional.of(weighed.get(0)) : Optional.empty();
  }
}
