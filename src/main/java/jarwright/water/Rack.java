package jarwright.water;

import jarwright.plan.Canner;
import jarwright.process.JarSize;
import jarwright.quantity.Length;
import jarwright.quantity.Rounding;
import java.util.Optional;
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
