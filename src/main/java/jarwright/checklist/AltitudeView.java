package jarwright.checklist;

import jarwright.day.Figure;
import jarwright.page.Wording;
import jarwright.process.AltitudeBand;
import jarwright.quantity.Altitude;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The band of altitude that a sheet holds for, in words and as a place on a scale of feet. */
final class AltitudeView {
  private static final int TICKS = 8;
  private static final long FOOT_TICK = 1_000;
  private static final long METRE_TICK = 300;

  private final AltitudeBand band;
  private final Altitude kitchen;
  private final Wording words;
  private final Units units;

  AltitudeView(AltitudeBand band, Altitude kitchen, Wording words, Units units) {
    this.band = band;
    this.kitchen = kitchen;
    this.words = words;
    this.units = units;
  }

  Map<String, Object> view() {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("kitchen", FigureView.of(Figure.of(units, words, kitchen::text)));
    view.put("kitchenFeet", kitchen.feetRoundedUp());
    view.put("fromFeet", band.fromFeet());
    view.put("toFeet", band.toFeet().orElse(0));
    view.put("ticks", ticks());
    view.put("band", FigureView.of(Figure.of(units, words, this::band)));
    return view;
  }

  /** Marks of a scale beside the band. */
  private List<Map<String, Object>> ticks() {
    boolean metric = units == Units.METRIC;
    List<Map<String, Object>> ticks = new ArrayList<>();
    for (int n = 1; n <= TICKS; n++) {
      Altitude at = metric ? Altitude.metres(n * METRE_TICK) : Altitude.feet(n * FOOT_TICK);
      Map<String, Object> tick = new LinkedHashMap<>();
      tick.put("feet", at.feetRoundedUp());
      tick.put("label", words.number(n * (metric ? METRE_TICK : FOOT_TICK)));
      ticks.add(tick);
    }
    return ticks;
  }

  /**
   * The band's ends. In metres the lower end is the first whole metre above the band below, and the
   * upper end the last whole metre that is not beyond the band.
   */
  private String band(Style style) {
    boolean metric = style.units() == Units.METRIC;
    if (band.toFeet().isEmpty()) {
      Altitude below = Altitude.feet(Math.max(0, band.fromFeet() - 1L));
      return words.text("band.above", Map.of("from", (metric ? down(below) : below).text(style)));
    }
    Altitude to = Altitude.feet(band.toFeet().getAsInt());
    return words.text(
        "band.between",
        Map.of(
            "from", words.number(metric ? firstMetre() : band.fromFeet()),
            "to", (metric ? down(to) : to).text(style)));
  }

  private long firstMetre() {
    return band.fromFeet() == 0 ? 0 : wholeMetres(Altitude.feet(band.fromFeet() - 1L)) + 1;
  }

  private static Altitude down(Altitude altitude) {
    return Altitude.metres(wholeMetres(altitude));
  }

  private static long wholeMetres(Altitude altitude) {
    return altitude.inMetres().floor().longValueExact();
  }
}
