package jarwright.day;

import java.util.List;
import java.util.stream.Collectors;

/** Writes a checklist down as a reader would: a line for each step, marks for what hangs on it. */
final class Outline {
  private Outline() {}

  /**
   * {@code # section}, then {@code - words [figure] !caution}; {@code ~} for time that runs, {@code
   * x7} for boxes, {@code =} for the clock and {@code |} for drawn depths.
   */
  static String of(List<Section> sections) {
    return sections.stream()
        .map(s -> "# " + s.title() + "\n" + steps(s))
        .collect(Collectors.joining());
  }

  /** The lines of every part of one section. */
  static List<String> section(String id, List<Section> sections) {
    return sections.stream()
        .filter(s -> s.id().equals(id))
        .flatMap(s -> s.steps().stream())
        .map(Outline::line)
        .toList();
  }

  private static String steps(Section section) {
    return section.steps().stream().map(s -> line(s) + "\n").collect(Collectors.joining());
  }

  static String line(Step step) {
    String figure = step.figure().map(f -> " [" + f + "]").orElse("");
    String caution = step.caution().map(c -> " !" + c.text()).orElse("");
    return mark(step) + " " + step.text() + figure + more(step) + caution;
  }

  private static String mark(Step step) {
    return switch (step.kind()) {
      case WAIT -> "~";
      case CLOCK -> "=";
      case GAUGE -> "|";
      default -> "-";
    };
  }

  private static String more(Step step) {
    if (step instanceof Step.PerJar tally) {
      return " x" + tally.jars();
    }
    if (step instanceof Step.Gauge gauge) {
      return gauge.depths().stream()
          .map(d -> " [" + d.figure() + (d.to().isEmpty() ? "" : " " + d.to()) + "]")
          .collect(Collectors.joining());
    }
    if (step instanceof Step.Clock clock) {
      String psi = clock.pressure().map(p -> " [" + p + "]").orElse("");
      return psi + " [" + clock.minutes() + " min] " + clock.loads() + " " + clock.fields();
    }
    return step instanceof Step.WriteIn record ? " " + record.fields() : "";
  }
}
