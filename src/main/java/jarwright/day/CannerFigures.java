package jarwright.day;

import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.quantity.MeasuredText;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import jarwright.water.WaterAdvice;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a checklist says of the canner.
 *
 * @param loads jars in each load, in order
 * @param water how much water to put in first; empty where it cannot be said
 */
public record CannerFigures(List<Integer> loads, Optional<Figure> water) {
  private static final char NO_BREAK = '\u00a0';

  public CannerFigures {
    loads = List.copyOf(loads);
    if (loads.isEmpty()) {
      throw new IllegalArgumentException("a batch has a load or more");
    }
  }

  /** The figures of a batch's loads; the water is that of the first and fullest one. */
  public static CannerFigures of(List<CannerLoad> loads, Units units, Wording words) {
    return new CannerFigures(
        loads.stream().map(CannerLoad::jars).toList(), water(loads.get(0), units, words));
  }

  /** So much and so deep, both rounded down: topping up is easy, and too much boils over. */
  private static Optional<Figure> water(CannerLoad load, Units units, Wording words) {
    return load.water()
        .fold(
            covering -> Optional.of(covering(covering, units, words)),
            shallow -> Optional.empty(),
            unmeasured -> Optional.empty(),
            pressure -> Optional.of(Figure.of(units, words, style -> depths(pressure, style))));
  }

  private static String depths(WaterAdvice.Pressure water, Style style) {
    String range = "{" + water.from().inInches() + ".." + water.to().inInches() + " in}";
    return MeasuredText.parse(range).text(style, Map.of());
  }

  private static Figure covering(WaterAdvice.Covering water, Units units, Wording words) {
    Figure volume = Figure.of(units, words, style -> water.before().text(style, Rounding.DOWN));
    Units shown = units == Units.US ? Units.US : Units.METRIC;
    String depth =
        words.text(
            "figure.deep",
            Map.of("depth", water.depth().text(UnitWords.style(shown, words), Rounding.DOWN)));
    String whole = depth.replace(' ', NO_BREAK);
    return new Figure(
        volume.main(), volume.also().isEmpty() ? whole : volume.also() + ", " + whole);
  }
}
