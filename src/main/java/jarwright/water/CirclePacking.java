package jarwright.water;

import java.util.List;
import java.util.OptionalDouble;

/** How many equal circles fit into a circle, by the best packings published. */
public final class CirclePacking {
  private static final double NOISE = 1e-9;

  private final List<Double> ratios;

  /**
   * Takes for 1, 2, 3 … circles the least published ratio of the outer circle's diameter to theirs.
   *
   * @throws IllegalArgumentException when the list does not start at 1 or falls
   */
  public CirclePacking(List<Double> ratios) {
    this.ratios = List.copyOf(ratios);
    double last = 1;
    for (double ratio : this.ratios) {
      if (ratio < last) {
        throw new IllegalArgumentException("more circles never need a smaller circle");
      }
      last = ratio;
    }
    if (this.ratios.isEmpty() || this.ratios.get(0) != 1) {
      throw new IllegalArgumentException("one circle needs a circle of its own size");
    }
  }

  /**
   * How many times wider than one of so many equal circles the circle round them is; empty beyond
   * what is published.
   */
  OptionalDouble ratio(int circles) {
    return circles <= ratios.size()
        ? OptionalDouble.of(ratios.get(circles - 1))
        : OptionalDouble.empty();
  }

  /** The most circles of one diameter inside another; never more than the list is long. */
  public int most(double outer, double circle) {
    int fitting = 0;
    for (double ratio : ratios) {
      if (ratio * circle > outer * (1 + NOISE)) {
        return fitting;
      }
      fitting++;
    }
    return fitting;
  }
}
