package jarwright.water;

import jarwright.process.JarSize;
import java.util.Optional;

/**
 * The outside of a jar with its lid on. Makers differ, so each figure is a range, and each question
 * takes the end that cannot mislead:
 *
 * <ul>
 *   <li>do they fit side by side, do they fit under a lid: the widest and tallest jar;
 *   <li>are the lids covered: the tallest jar that pushes up the least water;
 *   <li>does it boil over: the jar that pushes up the most water.
 * </ul>
 *
 * @param heightMm with the lid
 * @param diameterMm at the widest
 * @param emptyGrams of the glass; empty where no figure is published
 */
public record JarDimensions(
    JarSize jar, Range heightMm, Range diameterMm, Optional<Range> emptyGrams) {
  /** Soda-lime glass, g/cm³: from memory, 2.4 to 2.6. */
  private static final double GLASS_DENSITY = 2.6;

  private static final double MM3_PER_ML = 1_000;

  public JarDimensions {
    if (heightMm.low() <= 0 || diameterMm.low() <= 0) {
      throw new IllegalArgumentException("a jar has a height and a width");
    }
  }

  /**
   * Millilitres of water that a closed, filled jar pushes up: at least its nominal content and its
   * glass, at most the cylinder around it.
   */
  public Range displacementMl() {
    double content = contentMl();
    double glass = emptyGrams.map(g -> g.low() / GLASS_DENSITY).orElse(0.0);
    double cylinder =
        Math.PI / 4 * diameterMm.high() * diameterMm.high() * heightMm.high() / MM3_PER_ML;
    double least = Math.min(content + glass, cylinder);
    return new Range(least, cylinder);
  }

  /** Nominal content in millilitres. */
  double contentMl() {
    return Doubles.of(jar.volume().inMillilitres());
  }
}
