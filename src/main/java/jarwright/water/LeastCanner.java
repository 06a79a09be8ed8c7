package jarwright.water;

import jarwright.plan.Canner;
import jarwright.process.JarSize;
import java.util.Map;
import java.util.Optional;

/**
 * The least size of a pressure canner, whatever jars it is filled with. The times count on how
 * slowly a canner heats and cools: it has to hold four quart jars, upright on the rack with the lid
 * in place.
 *
 * <p>Source: AIB 539 (2015) Guide 1, Recommended canners (small pressure canners hold four quart
 * jars; saucepans of less volume are not recommended for canning); NCHFP, Using Pressure Canners
 * (at least four quart jars for USDA processes).
 */
public final class LeastCanner {
  /** Quart jars that a pressure canner holds at least. */
  public static final int QUARTS = 4;

  private final Rack rack;

  public LeastCanner(Rack rack) {
    this.rack = rack;
  }

  /**
   * A pressure canner that is too small.
   *
   * @param basis whether it was counted or measured
   * @param jar the jars that show it, quarts or smaller ones
   * @param count how many of them it holds at most
   * @param sure whether no make of jar would change it
   */
  public record TooSmall(Places.Basis basis, JarSize jar, int count, boolean sure) {}

  /** Whether the plan tells how many quarts the canner holds, counted or by its measures. */
  public static boolean isKnown(Canner canner) {
    return canner.holds().containsKey(JarSize.QUART) || canner.insideDiameter().isPresent();
  }

  /** Why the canner is too small; empty where it is not, or where nothing is known of its size. */
  public Optional<TooSmall> fault(Canner canner) {
    if (!canner.method().isPressure()) {
      return Optional.empty();
    }
    Integer stated = canner.holds().get(JarSize.QUART);
    if (stated != null && stated < QUARTS) {
      return Optional.of(new TooSmall(Places.Basis.STATED, JarSize.QUART, stated, true));
    }
    if (canner.insideDiameter().isPresent() || canner.insideHeight().isPresent()) {
      Rack.Span quarts = rack.byMeasure(canner, JarSize.QUART);
      int most = stated == null ? quarts.wide() : quarts.slim();
      if (most < QUARTS) {
        return Optional.of(
            new TooSmall(Places.Basis.GEOMETRY, JarSize.QUART, most, quarts.slim() < QUARTS));
      }
    }
    return stated == null ? bySmallerJars(canner) : Optional.empty();
  }

  /** Where quarts were not counted: so few smaller jars that four quarts would not go in. */
  private Optional<TooSmall> bySmallerJars(Canner canner) {
    return canner.holds().entrySet().stream()
        .filter(e -> e.getKey().compareTo(JarSize.QUART) < 0)
        .filter(e -> e.getValue() < QUARTS || rack.leavesNoRoom(e.getKey(), e.getValue(), QUARTS))
        .min(Map.Entry.comparingByKey())
        .map(e -> new TooSmall(Places.Basis.STATED, e.getKey(), e.getValue(), true));
  }
}
