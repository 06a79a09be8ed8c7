package jarwright.checklist;

import jarwright.day.Caution;
import jarwright.day.Figure;
import jarwright.day.Line;
import jarwright.day.Section;
import jarwright.day.Step;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Sections and steps as a template takes them. */
final class StepView {
  private StepView() {}

  static Map<String, Object> section(Section section) {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("id", section.id());
    view.put("title", section.title());
    Set<String> warned = new HashSet<>();
    view.put("steps", section.steps().stream().map(s -> step(s, warned)).toList());
    return view;
  }

  /** How often the canner is filled. */
  static int loads(List<Section> sections) {
    return sections.stream()
        .flatMap(s -> s.steps().stream())
        .filter(Step.Clock.class::isInstance)
        .mapToInt(s -> ((Step.Clock) s).loads().size())
        .sum();
  }

  /**
   * A caution is said at the first of the section's steps that it is for.
   *
   * @param warned of what the section has warned before this step
   */
  private static Map<String, Object> step(Step step, Set<String> warned) {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("kind", step.kind().name().toLowerCase(Locale.ROOT));
    view.put("runs", runs(step.line()));
    view.put("figure", FigureView.of(step.figure().orElse(Figure.of(""))));
    view.put("caution", step.caution().map(Caution::text).filter(warned::add).orElse(""));
    if (step instanceof Step.PerJar tally) {
      view.put("jars", tally.jars());
    } else if (step instanceof Step.Gauge gauge) {
      view.put("depths", gauge.depths().stream().map(StepView::depth).toList());
    } else if (step instanceof Step.WriteIn record) {
      view.put("fields", record.fields());
    } else if (step instanceof Step.Clock clock) {
      view.put("minutes", clock.minutes());
      view.put("pressure", FigureView.of(clock.pressure().orElse(Figure.of(""))));
      view.put("fields", clock.fields());
      view.put("loads", clock.loads());
    }
    return view;
  }

  static List<Map<String, Object>> runs(Line line) {
    return line.runs().stream()
        .map(r -> Map.<String, Object>of("text", r.text(), "amount", r.amount()))
        .toList();
  }

  private static Map<String, Object> depth(Step.Gauge.Depth depth) {
    Map<String, Object> view = new LinkedHashMap<>(FigureView.of(depth.figure()));
    view.put("to", depth.to());
    view.put(
        "mm",
        depth.depth().inMillimetres().numerator().doubleValue()
            / depth.depth().inMillimetres().denominator().doubleValue());
    return view;
  }
}
