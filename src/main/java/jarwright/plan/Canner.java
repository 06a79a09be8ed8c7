package jarwright.plan;

import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.quantity.GaugePressure;
import jarwright.quantity.Length;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A canner as the household describes it.
 *
 * @param rackHeight of the rack's top above the bottom
 * @param watts power of the burner or element under it
 * @param energy what heats it; empty where not said
 * @param holds places for jars where the household has counted them
 * @param weights pressures that a weighted gauge can hold; empty where not said
 * @param gaugeTested the day on which its dial gauge was last tested; empty where not said
 */
public record Canner(
    String name,
    Method method,
    Optional<Length> insideDiameter,
    Optional<Length> insideHeight,
    Optional<Length> rackHeight,
    OptionalInt watts,
    Optional<Energy> energy,
    Map<JarSize, Integer> holds,
    List<GaugePressure> weights,
    Optional<LocalDate> gaugeTested) {
  public Canner {
    holds = Map.copyOf(holds);
    weights = List.copyOf(weights);
  }

  /** A canner without a dial gauge, or with one that nobody said was tested. */
  public Canner(
      String name,
      Method method,
      Optional<Length> insideDiameter,
      Optional<Length> insideHeight,
      Optional<Length> rackHeight,
      OptionalInt watts,
      Optional<Energy> energy,
      Map<JarSize, Integer> holds,
      List<GaugePressure> weights) {
    this(
        name,
        method,
        insideDiameter,
        insideHeight,
        rackHeight,
        watts,
        energy,
        holds,
        weights,
        Optional.empty());
  }

  /** Whether the canner can hold at least the given pressure as its maker made it. */
  public boolean canHold(GaugePressure pressure) {
    return weights.isEmpty() || weights.stream().anyMatch(w -> w.compareTo(pressure) == 0);
  }
}
