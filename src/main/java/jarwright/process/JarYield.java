package jarwright.process;

import jarwright.quantity.Fraction;

/**
 * Jars that a formula gives.
 *
 * @param fewest jars that it surely fills
 * @param most jars that it may fill
 */
public record JarYield(int fewest, int most, JarSize jar) {
  public JarYield {
    if (fewest < 1 || most < fewest) {
      throw new IllegalArgumentException("a formula gives one jar or more, the most not below");
    }
  }

  /** The content that the formula surely gives, in pints. */
  public Fraction leastPints() {
    return jar.pints().times(fewest);
  }

  /** The content that it may give, in pints. */
  public Fraction mostPints() {
    return jar.pints().times(most);
  }
}
