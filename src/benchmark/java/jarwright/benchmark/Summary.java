package jarwright.benchmark;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * {@code Summary CSV SVG}: medians of what was measured, each beside the least thing of its part,
 * and how time and memory grow, as Markdown; and a plot of the growth.
 */
final class Summary {
  private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.UTF_8);

  /** What the others of a part are told in multiples of. */
  private static final Map<String, String> LEAST =
      Map.of("start", "floor", "labels", "bare-drawing", "parallel", "jobs-1");

  private Summary() {}

  public static void main(String[] args) throws IOException {
    List<Measured> all = Measured.read(Path.of(args[0]));
    LEAST.keySet().stream().sorted().forEach(part -> beside(part, all));
    Map<String, List<Measured>> growth =
        all.stream()
            .filter(m -> m.part().equals("growth"))
            .sorted((a, b) -> Integer.compare(a.size(), b.size()))
            .collect(Collectors.groupingBy(Measured::what, TreeMap::new, Collectors.toList()));
    growth.values().removeIf(sizes -> sizes.size() < 2);
    if (!growth.isEmpty()) {
      growth(growth);
      Files.writeString(Path.of(args[1]), new GrowthPlot(growth).svg());
    }
  }

  private static void line(String format, Object... values) {
    OUT.println(String.format(Locale.ROOT, format, values));
  }

  private static void beside(String part, List<Measured> all) {
    List<Measured> some = all.stream().filter(m -> m.part().equals(part)).toList();
    if (some.isEmpty()) {
      return;
    }
    line("%n| %s | size | wall | | processor | | peak memory | runs |", part);
    line("|---|---|---|---|---|---|---|---|");
    for (Measured m : some) {
      Measured least =
          some.stream()
              .filter(o -> o.size() == m.size() && o.what().equals(LEAST.get(part)))
              .findFirst()
              .orElse(m);
      line(
          "| %s | %,d | %.2f s | %.1f × | %.2f s | %.1f × | %.0f MB | %d |",
          m.what(),
          m.size(),
          m.wall(),
          m.wall() / least.wall(),
          m.processor(),
          m.processor() / least.processor(),
          m.peak(),
          m.runs().size());
    }
  }

  private static void growth(Map<String, List<Measured>> growth) {
    line("%n| growth | sizes | processor | peak memory | exponent of time | of memory |");
    line("|---|---|---|---|---|---|");
    growth.forEach(
        (what, sizes) -> {
          Measured first = sizes.get(0);
          Measured last = sizes.get(sizes.size() - 1);
          Power time = Power.of(sizes, Measured::processor);
          Power memory = Power.of(sizes, Measured::peak);
          line(
              "| %s | %,d to %,d | %.2f to %.2f s | %.0f to %.0f MB | %.2f ± %.2f | %.2f ± %.2f |",
              what,
              first.size(),
              last.size(),
              first.processor(),
              last.processor(),
              first.peak(),
              last.peak(),
              time.exponent(),
              time.error(),
              memory.exponent(),
              memory.error());
        });
  }
}
