package jarwright.water;

import jarwright.plan.Canner;
import jarwright.plan.Energy;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.TestedProcess;
import jarwright.quantity.GaugePressure;
import jarwright.quantity.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Invented canners for the tests. */
final class Canners {
  /** The usual one of its trade: 13 in across, seven quarts or nine pints. */
  static final Canner STANDARD =
      canner(Method.BOILING_WATER, "13 in", "11-1/2 in", "15 mm", 2_400, Energy.ELECTRIC);

  private Canners() {}

  /** Empty texts, 0 and null leave things unsaid. */
  static Canner canner(
      Method method, String diameter, String height, String rack, int watts, Energy energy) {
    return new Canner(
        "pot",
        method,
        length(diameter),
        length(height),
        length(rack),
        watts == 0 ? OptionalInt.empty() : OptionalInt.of(watts),
        Optional.ofNullable(energy),
        Map.of(),
        List.of());
  }

  static Canner holding(Canner canner, Map<JarSize, Integer> holds) {
    return new Canner(
        canner.name(),
        canner.method(),
        canner.insideDiameter(),
        canner.insideHeight(),
        canner.rackHeight(),
        canner.watts(),
        canner.energy(),
        holds,
        canner.weights());
  }

  static TestedProcess boiling(int minutes) {
    return new TestedProcess(minutes, Optional.empty());
  }

  static TestedProcess pressure(int minutes) {
    return new TestedProcess(minutes, Optional.of(GaugePressure.psi(11)));
  }

  private static Optional<Length> length(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(Length.parse(text));
  }
}
