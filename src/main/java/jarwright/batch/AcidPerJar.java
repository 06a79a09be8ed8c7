package jarwright.batch;

import jarwright.process.AcidKind;
import jarwright.quantity.Fraction;
import jarwright.quantity.Volume;

/**
 * The acid of a batch.
 *
 * @param each goes into every jar before the food
 * @param jars how many jars get it
 */
public record AcidPerJar(AcidKind kind, Volume each, int jars) {
  /** Exactly so many times the dose of one jar. */
  public Volume total() {
    return each.times(Fraction.of(jars));
  }
}
