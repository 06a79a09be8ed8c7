package jarwright.day;

import jarwright.batch.Batch;
import jarwright.plan.Canner;
import jarwright.problem.Problems;
import jarwright.process.JarSize;
import jarwright.quantity.Fraction;
import jarwright.water.Places;
import jarwright.water.Rack;
import jarwright.water.WaterAdvice;
import jarwright.water.WaterLevel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Divides a batch into canner loads. */
public final class LoadPlanner {
  /**
   * No tested minimum is published. Two quarts or four pints is called good practice, with jars of
   * water in the empty places: Iowa State University Extension, "Canner load guidelines", 2024.
   */
  private static final Fraction LEAST_PINTS = Fraction.of(4);

  private final Rack rack;
  private final WaterLevel water;

  public LoadPlanner(Rack rack, WaterLevel water) {
    this.rack = rack;
    this.water = water;
  }

  /**
   * The loads, as even as they go, the fuller ones first; none where a problem was told: the jar
   * does not go into the canner, or the canner is too shallow to cover it.
   */
  public List<CannerLoad> loads(Batch batch, Problems problems) {
    Places places = rack.places(batch.canner(), batch.jar());
    if (places.total() < 1) {
      tellTooSmall(batch, problems);
      return List.of();
    }
    int count = (batch.jars() + places.total() - 1) / places.total();
    List<CannerLoad> loads = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int jars = batch.jars() / count + (i < batch.jars() % count ? 1 : 0);
      loads.add(load(batch, places, i + 1, count, jars));
    }
    Optional<WaterAdvice.TooShallow> shallow = tooShallow(loads.get(0).water());
    shallow.ifPresent(s -> tellTooShallow(batch, s, problems));
    return shallow.isPresent() ? List.of() : List.copyOf(loads);
  }

  private CannerLoad load(Batch batch, Places places, int number, int of, int jars) {
    boolean below =
        batch.method().isPressure() && pints(batch.jar(), jars).compareTo(LEAST_PINTS) < 0;
    boolean small = below || jars * 2 < places.total();
    int waterJars = small ? places.total() - jars : 0;
    WaterAdvice advice =
        water.advise(batch.canner(), batch.jar(), jars + waterJars, batch.process());
    return new CannerLoad(batch, number, of, jars, waterJars, places, advice, below);
  }

  private static Fraction pints(JarSize jar, int jars) {
    return jar.pints().times(jars);
  }

  private static Optional<WaterAdvice.TooShallow> tooShallow(WaterAdvice advice) {
    return advice.fold(
        covering -> Optional.empty(),
        Optional::of,
        unmeasured -> Optional.empty(),
        pressure -> Optional.empty());
  }

  private void tellTooSmall(Batch batch, Problems problems) {
    Canner canner = batch.canner();
    problems.add(
        batch.plan().placeOf("canner"),
        "a " + batch.jar() + " jar does not go into \"" + canner.name() + "\"",
        rack.widthFor(batch.jar())
            .map(width -> "the canner needs an inside diameter of " + width + " or more")
            .orElse("take a larger canner, or say under holds how many it takes"));
  }

  private static void tellTooShallow(
      Batch batch, WaterAdvice.TooShallow shallow, Problems problems) {
    problems.add(
        batch.plan().placeOf("canner"),
        "\""
            + batch.canner().name()
            + "\" is "
            + shallow.inside()
            + " deep, too shallow to cover "
            + batch.jar()
            + " jars by "
            + shallow.cover().aboveLids(),
        "it needs an inside height of "
            + shallow.least()
            + " for the shortest jars of this size, "
            + shallow.sure()
            + " for the tallest; take a deeper canner or smaller jars");
  }
}
