package jarwright.water;

/** A figure known only to lie between two ends, both in the same unit. */
public record Range(double low, double high) {
  public Range {
    if (!(low >= 0 && high >= low)) {
      throw new IllegalArgumentException("a range runs upwards from 0, not " + low + " to " + high);
    }
  }

  public static Range exactly(double value) {
    return new Range(value, value);
  }
}
