package jarwright.process;

import jarwright.quantity.Fraction;
import jarwright.quantity.Volume;

/**
 * How much of one acid every jar must get.
 *
 * @param jar the size that the dose is printed for
 */
public record AcidDose(AcidKind kind, JarSize jar, Volume amount) {
  public AcidDose {
    if (amount.amount().signum() <= 0) {
      throw new IllegalArgumentException("a dose is more than nothing");
    }
  }

  /** The dose for another size, in exact proportion to its content. */
  public AcidDose forJar(JarSize other) {
    Fraction ratio = other.pints().dividedBy(jar.pints());
    return new AcidDose(kind, other, amount.times(ratio));
  }
}
