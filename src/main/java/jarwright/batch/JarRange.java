package jarwright.batch;

/** Jars that a batch may give. */
public record JarRange(int fewest, int likely, int most) {
  static JarRange exactly(int jars) {
    return new JarRange(jars, jars, jars);
  }

  /** The same, cut where more jars than so many would be made ready. */
  JarRange within(int jars) {
    return new JarRange(Math.min(fewest, jars), Math.min(likely, jars), Math.min(most, jars));
  }

  public boolean isExact() {
    return fewest == most;
  }
}
