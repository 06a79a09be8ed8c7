package jarwright.benchmark;

import jarwright.label.JarLabel;
import jarwright.lot.LotCode;
import jarwright.lot.UseBy;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Jars of an invented cannery: lots of a hundred, four lots a day, no two jars alike. */
final class Jars {
  static final int PER_LOT = 100;
  private static final int LOTS_A_DAY = 4;
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
  private static final List<String> FACTS =
      List.of(
          "Raw pack · quart",
          "Boiling water 45 min",
          "at 1,378 ft (420 m)",
          "1/2 tsp (2.5 mL) citric acid",
          "Fernhollow kitchen");
  private static final List<String> CODED =
      List.of(
          "Tomatoes, whole",
          "Raw pack",
          "quart",
          "Boiling water",
          "45 min",
          "420 m",
          "citric acid");

  private Jars() {}

  static int lots(int jars) {
    return (jars + PER_LOT - 1) / PER_LOT;
  }

  static LotCode lot(int number) {
    return new LotCode(FIRST.plusDays(number / LOTS_A_DAY), (char) ('A' + number % LOTS_A_DAY));
  }

  static List<JarLabel> labels(int jars) {
    List<JarLabel> labels = new ArrayList<>(jars);
    for (int lot = 0; lot < lots(jars); lot++) {
      LotCode code = lot(lot);
      JarLabel first =
          new JarLabel(
              code.jar(1),
              "Tomatoes, whole or halved",
              Optional.of(code.packed()),
              UseBy.after(code.packed(), UseBy.USUAL_MONTHS),
              FACTS,
              CODED,
              Optional.empty(),
              Optional.empty());
      for (int number = 1; number <= PER_LOT && labels.size() < jars; number++) {
        labels.add(first.of(number));
      }
    }
    return labels;
  }
}
