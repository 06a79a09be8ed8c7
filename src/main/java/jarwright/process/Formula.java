package jarwright.process;

import jarwright.quantity.Fraction;
import java.util.List;

/**
 * A fixed formula: its proportions are part of the safety.
 *
 * @param yield as printed, as {@code about 8 to 9 pints}
 * @param fewest jars of the yield's size that it surely gives
 * @param most jars of the yield's size that it may give
 */
public record Formula(
    String productId,
    String yield,
    Fraction fewest,
    Fraction most,
    JarSize jar,
    List<FormulaLine> lines) {
  public Formula {
    lines = List.copyOf(lines);
  }
}
