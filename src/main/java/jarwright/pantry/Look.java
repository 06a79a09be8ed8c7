package jarwright.pantry;

/**
 * How the jars of a load came out, seen once they had cooled.
 *
 * @param unsealed jars that did not seal
 * @param someLost jars that lost less than half of their liquid
 * @param halfLost jars that lost half of their liquid or more
 * @param signs of spoilage
 * @param cloudy the canner's water, where nobody told of it before
 */
public record Look(
    JarNumbers unsealed,
    JarNumbers someLost,
    JarNumbers halfLost,
    Departures signs,
    Ticked cloudy) {
  public Look {
    if (!signs.signs(false).isEmpty()) {
      throw new IllegalArgumentException("only signs are seen on jars");
    }
  }

  /** One in which nothing else was seen. */
  public Look(JarNumbers unsealed, JarNumbers someLost, JarNumbers halfLost) {
    this(unsealed, someLost, halfLost, Departures.NONE, Ticked.BLANK);
  }

  /**
   * What was seen of one jar.
   *
   * @param water whether the canner's was cloudy
   */
  Seen of(int jar, Ticked water) {
    return new Seen(
        !unsealed.contains(jar),
        lost(jar),
        !someLost.isEmpty() || !halfLost.isEmpty(),
        water,
        signs.of(jar));
  }

  private Liquid lost(int jar) {
    if (halfLost.contains(jar)) {
      return Liquid.HALF_OR_MORE;
    }
    return someLost.contains(jar) ? Liquid.SOME : Liquid.NONE;
  }
}
