package jarwright.batch;

/** Jars that a batch may give. */
public record JarRange(int fewest, int likely, int most) {
  static JarRange exactly(int jars) {
    return new JarRange(jars, jars, jars);
  }

  public boolean isExact() {
    return fewest == most;
  }
}
