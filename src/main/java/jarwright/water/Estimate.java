package jarwright.water;

/**
 * Minutes that something will probably take. A type of its own, so that an estimate can never stand
 * where the minutes of a tested process belong.
 */
public record Estimate(int min, int max) {
  public Estimate {
    if (min < 0 || max < min) {
      throw new IllegalArgumentException("an estimate runs upwards from 0 min");
    }
  }

  /** The middle, rounded up: what a timeline reckons with. */
  public int planned() {
    return (min + max + 1) / 2;
  }

  public Estimate plus(Estimate other) {
    return new Estimate(min + other.min, max + other.max);
  }

  /** The narrowest estimate that holds both. */
  public Estimate hull(Estimate other) {
    return new Estimate(Math.min(min, other.min), Math.max(max, other.max));
  }
}
