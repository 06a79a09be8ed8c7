package jarwright.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Collects the steps of one section, each worded by its key {@code step.<key>}. */
final class SectionBuilder {
  private static final String STEP = "step.";

  private final String id;
  private final StepWords words;
  private final List<Step> steps = new ArrayList<>();

  SectionBuilder(String id, StepWords words) {
    this.id = id;
    this.words = words;
  }

  void act(String key) {
    act(key, Map.of(), Optional.empty());
  }

  void act(String key, Figure figure) {
    act(key, Map.of(), Optional.of(figure));
  }

  void act(String key, Map<String, ?> values, Optional<Figure> figure) {
    add(new Step.Action(line(key, values), figure, words.caution(key)));
  }

  void perJar(String key, Map<String, ?> values, Figure figure, int jars) {
    add(new Step.PerJar(line(key, values), Optional.of(figure), jars, words.caution(key)));
  }

  void await(String key) {
    add(new Step.Wait(line(key, Map.of()), Optional.empty(), words.caution(key)));
  }

  void await(String key, Figure figure) {
    add(new Step.Wait(line(key, Map.of()), Optional.of(figure), words.caution(key)));
  }

  void gauge(String key, List<Step.Gauge.Depth> depths) {
    add(new Step.Gauge(line(key, Map.of()), depths, words.caution(key)));
  }

  void record(String key, List<String> fieldKeys) {
    List<String> fields = fieldKeys.stream().map(f -> words.text("field." + f)).toList();
    add(new Step.WriteIn(line(key, Map.of()), fields, words.caution(key)));
  }

  void add(Step step) {
    steps.add(step);
  }

  Line line(String key, Map<String, ?> values) {
    return words.line(STEP + key, values);
  }

  boolean isEmpty() {
    return steps.isEmpty();
  }

  Section build() {
    return new Section(id, words.text("section." + id), steps);
  }
}
