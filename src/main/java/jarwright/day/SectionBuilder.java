package jarwright.day;

import jarwright.page.Wording;
import jarwright.quantity.MeasuredText;
import jarwright.quantity.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Collects the steps of one section, each worded by its key {@code step.<key>}. */
final class SectionBuilder {
  private static final String STEP = "step.";
  private static final String CAUTION = "caution.";

  private final String id;
  private final Wording words;
  private final Style style;
  private final List<Step> steps = new ArrayList<>();

  SectionBuilder(String id, Wording words, Style style) {
    this.id = id;
    this.words = words;
    this.style = style;
  }

  SectionBuilder act(String key) {
    return act(key, Map.of(), Optional.empty());
  }

  SectionBuilder act(String key, String figure) {
    return act(key, Map.of(), Optional.of(figure));
  }

  SectionBuilder act(String key, Map<String, ?> values, Optional<String> figure) {
    return add(new Step.Action(text(STEP + key, values), figure, cautionOf(key)));
  }

  SectionBuilder perJar(String key, Map<String, ?> values, String figure, int jars) {
    return add(
        new Step.PerJar(text(STEP + key, values), Optional.of(figure), jars, cautionOf(key)));
  }

  SectionBuilder await(String key, Map<String, ?> values, String figure) {
    return add(new Step.Wait(text(STEP + key, values), Optional.of(figure), cautionOf(key)));
  }

  SectionBuilder record(String key, List<String> fieldKeys) {
    List<String> fields = fieldKeys.stream().map(f -> words.text("field." + f)).toList();
    return add(new Step.WriteIn(text(STEP + key, Map.of()), fields, cautionOf(key)));
  }

  SectionBuilder add(Step step) {
    steps.add(step);
    return this;
  }

  /** A caution of its own wording, where the step's key has one. */
  Optional<Caution> cautionOf(String key) {
    return words.has(CAUTION + key)
        ? Optional.of(new Caution(text(CAUTION + key, Map.of())))
        : Optional.empty();
  }

  /** A text of the bundle, the amounts in it written in the household's units. */
  String text(String key, Map<String, ?> values) {
    return MeasuredText.parse(words.text(key, values)).text(style, Map.of());
  }

  boolean isEmpty() {
    return steps.isEmpty();
  }

  Section build() {
    return new Section(id, words.text("section." + id), steps);
  }
}
