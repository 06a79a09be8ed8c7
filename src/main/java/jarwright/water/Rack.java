package jarwright.water;

import jarwright.plan.Canner;
import jarwright.process.JarSize;
import jarwright.quantity.Length;
import jarwright.quantity.Rounding;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Works out how many jars a canner takes at once. */
public final class Rack {
  private final JarBook jars;
  private final CirclePacking packing;
  private final GuideLoads guide;

  public Rack(JarBook jars, CirclePacking packing, GuideLoads guide) {
    this.jars = jars;
    this.packing = packing;
    this.guide = guide;
  }

  /**
   * The places that the household states; else what fits by measure, never more than the guide's
   * own load.
   */
  public Places places(Canner canner, JarSize jar) {
    Integer stated = canner.holds().get(jar);
    if (stated != null) {
      return new Places(stated, 1, Places.Basis.STATED, stated);
    }
    Optional<JarDimensions> known = jars.of(jar);
    GuideLoads.Load most = guide.of(jar);
    if (known.isEmpty() || canner.insideDiameter().isEmpty()) {
      return new Places(most.layer(), 1, Places.Basis.GUIDE, most.layer());
    }
    int wide = layer(canner, known.get(), Range::high);
    int slim = layer(canner, known.get(), Range::low);
    int layers = layers(canner, known.get(), most);
    return new Places(
        Math.min(wide, most.layer()),
        layers,
        wide > most.layer() ? Places.Basis.GUIDE : Places.Basis.GEOMETRY,
        Math.min(slim, most.layer()) * layers);
  }

  /** Jars on the rack, by the widest and by the narrowest that are made. */
  record Span(int wide, int slim) {}

  /**
   * What stands on the rack by the canner's measures alone; the guide's load where one is missing.
   */
  Span byMeasure(Canner canner, JarSize jar) {
    GuideLoads.Load most = guide.of(jar);
    Span any = new Span(most.layer(), most.layer());
    return jars.of(jar)
        .map(
            known ->
                layers(canner, known, most) == 0
                    ? new Span(0, 0)
                    : canner.insideDiameter().isEmpty()
                        ? any
                        : new Span(
                            layer(canner, known, Range::high), layer(canner, known, Range::low)))
        .orElse(any);
  }

  /**
   * Whether a canner that holds no more than so many jars of one size is too narrow for so many
   * quarts, whichever make of both is taken.
   */
  boolean leavesNoRoom(JarSize jar, int count, int quarts) {
    Optional<JarDimensions> own = jars.of(jar);
    Optional<JarDimensions> quart = jars.of(JarSize.QUART);
    OptionalDouble beyond = packing.ratio(count + 1);
    OptionalDouble wanted = packing.ratio(quarts);
    return own.isPresent()
        && quart.isPresent()
        && beyond.isPresent()
        && wanted.isPresent()
        && beyond.getAsDouble() * own.get().diameterMm().high()
            <= wanted.getAsDouble() * quart.get().diameterMm().high()
        && beyond.getAsDouble() * own.get().diameterMm().low()
            <= wanted.getAsDouble() * quart.get().diameterMm().low();
  }

  private int layer(Canner canner, JarDimensions jar, Function<Range, Double> end) {
    double inside = Doubles.millimetres(canner.insideDiameter().orElseThrow());
    return packing.most(inside, end.apply(jar.diameterMm()));
  }

  /**
   * Two where the canner is a pressure canner surely tall enough for both layers and racks; none
   * where its lid cannot close over the shortest jars.
   */
  private static int layers(Canner canner, JarDimensions jar, GuideLoads.Load most) {
    if (!canner.method().isPressure() || canner.insideHeight().isEmpty()) {
      return 1;
    }
    double inside = Doubles.millimetres(canner.insideHeight().get());
    double rack = canner.rackHeight().map(Doubles::millimetres).orElse(0.0);
    if (rack + jar.heightMm().low() > inside) {
      return 0;
    }
    double sureRack = Doubles.millimetres(canner.rackHeight().orElse(WaterLevel.TALL_RACK));
    int standing = (int) Math.floor(inside / (sureRack + jar.heightMm().high()));
    return Math.max(1, Math.min(standing, most.layers()));
  }

  /** The least inside diameter that surely takes one jar; empty where jars are not known. */
  public Optional<Length> widthFor(JarSize jar) {
    return jars.of(jar).map(j -> Doubles.eighthsOfAnInch(j.diameterMm().high(), Rounding.UP));
  }
}
