package jarwright.water;

/**
 * Places for jars of one size in a canner.
 *
 * @param layer jars that stand side by side; 0 where none fits
 * @param layers one above the other, with a rack between
 * @param basis where the number comes from
 * @param withSlimJars what the number would be with the narrowest jars that are made; at least as
 *     many
 */
public record Places(int layer, int layers, Basis basis, int withSlimJars) {
  /** What a number of places rests on. */
  public enum Basis {
    /** The household counted its rack's places. */
    STATED,
    /** Circles in a circle, from the inside diameter. */
    GEOMETRY,
    /** The guide's own load, where the canner would hold more or was not measured. */
    GUIDE
  }

  public int total() {
    return layer * layers;
  }
}
