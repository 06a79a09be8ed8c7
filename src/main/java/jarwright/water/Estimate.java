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

  /**
   * What a timeline reckons with: the geometric middle, rounded up, because such guesses are wrong
   * by factors rather than by minutes.
   */
  public int planned() {
    return (int) Math.ceil(Math.sqrt((double) Math.max(1, min) * max));
  }

  public Estimate plus(Estimate other) {
    return new Estimate(min + other.min, max + other.max);
  }

  /** The narrowest estimate that holds both. */
  public Estimate hull(Estimate other) {
    return new Estimate(Math.min(min, other.min), Math.max(max, other.max));
  }
}
