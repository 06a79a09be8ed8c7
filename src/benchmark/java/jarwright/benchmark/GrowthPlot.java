package jarwright.benchmark;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Processor time and peak memory over size, as two drawings side by side in SVG. Its tones read on
 * white and on black.
 */
final class GrowthPlot {
  private static final String INK = "#7a828c";
  private static final List<String> TONES = List.of("#0f83c9", "#d9661f", "#12a07a", "#b566a8");
  private static final List<Double> DECADES = List.of(10., 100., 1e3, 1e4, 1e5, 1e6);
  private static final List<String> DECADE_NAMES =
      List.of("10", "100", "1,000", "10,000", "100,000", "1 million");
  private static final double LINE = 17;

  private final Map<String, List<Measured>> growth;
  private final StringBuilder out = new StringBuilder();

  GrowthPlot(Map<String, List<Measured>> growth) {
    this.growth = growth;
  }

  /** The places of one drawing, in units of the picture; both axes logarithmic. */
  private record Frame(double left, double low, double high) {
    private static final double TOP = 44;
    private static final double FOOT = 350;
    private static final double WIDTH = 340;

    double x(double size) {
      return left + WIDTH * (Math.log10(size) - 1) / 5;
    }

    double y(double figure) {
      return FOOT - (FOOT - TOP) * Math.log(figure / low) / Math.log(high / low);
    }
  }

  String svg() {
    put(
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1080 410' role='img'"
            + " font-family='system-ui, sans-serif' font-size='13' fill='%s'>",
        INK);
    put("<title>How processor time and peak memory grow with the size of the work</title>");
    draw(
        "Processor time, seconds",
        new Frame(52, 0.1, 100),
        List.of(0.1, 1., 10., 100.),
        Measured::processor);
    draw(
        "Peak memory, MB",
        new Frame(600, 50, 1000),
        List.of(50., 100., 200., 500., 1000.),
        Measured::peak);
    put("</svg>");
    return out.toString();
  }

  private void put(String format, Object... values) {
    out.append(String.format(Locale.ROOT, format, values).replace('\'', '"')).append('\n');
  }

  private void draw(String title, Frame at, List<Double> ticks, ToDoubleFunction<Measured> figure) {
    put("<text x='%.0f' y='22' font-size='15' font-weight='600'>%s</text>", at.left(), title);
    for (double tick : ticks) {
      double y = at.y(tick);
      put("<path d='M%.0f %.1fh%.0f' stroke='%s' opacity='.35'/>", at.left(), y, Frame.WIDTH, INK);
      put(
          "<text x='%.0f' y='%.1f' text-anchor='end'>%s</text>",
          at.left() - 8, y + 4.5, plain(tick));
    }
    for (int i = 0; i < DECADES.size(); i++) {
      double x = at.x(DECADES.get(i));
      put("<path d='M%.1f %.0fv5' stroke='%s'/>", x, Frame.FOOT, INK);
      put(
          "<text x='%.1f' y='%.0f' text-anchor='middle' font-size='11.5'>%s</text>",
          x, Frame.FOOT + 20, DECADE_NAMES.get(i));
    }
    put(
        "<text x='%.1f' y='%.0f' text-anchor='middle'>labels, jars, events or batches</text>",
        at.left() + Frame.WIDTH / 2, Frame.FOOT + 44);
    List<Name> names = new ArrayList<>();
    int tone = 0;
    for (Map.Entry<String, List<Measured>> one : growth.entrySet()) {
      names.add(series(one.getKey(), one.getValue(), at, TONES.get(tone++ % TONES.size()), figure));
    }
    names(names, at.left() + Frame.WIDTH + 12);
  }

  private static String plain(double number) {
    return number < 1 ? String.valueOf(number) : String.format(Locale.ROOT, "%,.0f", number);
  }

  /** What stands at the end of a line. */
  private record Name(String what, double exponent, String tone, double y) {}

  /** The law as a line, what was measured as dots. */
  private Name series(
      String what, List<Measured> sizes, Frame at, String tone, ToDoubleFunction<Measured> figure) {
    Power law = Power.of(sizes, figure);
    int least = sizes.get(0).size();
    int most = sizes.get(sizes.size() - 1).size();
    put(
        "<path d='M%.1f %.1fL%.1f %.1f' stroke='%s' stroke-width='2'/>",
        at.x(least), at.y(law.at(least)), at.x(most), at.y(law.at(most)), tone);
    for (Measured m : sizes) {
      put(
          "<circle cx='%.1f' cy='%.1f' r='4' fill='%s'/>",
          at.x(m.size()), at.y(figure.applyAsDouble(m)), tone);
    }
    return new Name(what, law.exponent(), tone, at.y(law.at(most)));
  }

  /** The names at the right edge in the order of their lines' ends, none over another. */
  private void names(List<Name> names, double x) {
    names.sort(Comparator.comparingDouble(Name::y));
    double free = 0;
    for (Name name : names) {
      double y = Math.max(free, name.y());
      put(
          "<text x='%.0f' y='%.1f' fill='%s' font-weight='600'>%s ~ n<tspan dy='-5'"
              + " font-size='10'>%.2f</tspan></text>",
          x, y + 4.5, name.tone(), name.what(), name.exponent());
      free = y + LINE;
    }
  }
}
