package jarwright.day;

import jarwright.batch.AcidPerJar;
import jarwright.batch.Batch;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.plan.Cover;
import jarwright.process.Headspace;
import jarwright.process.PreparationStep;
import jarwright.process.PreparationStep.Stage;
import jarwright.process.SaltRule;
import jarwright.quantity.MeasuredText;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sections that hang on the product: the work ahead, the produce, filling the jars. */
final class PreparationSections {
  private final Batch batch;
  private final List<PreparationStep> preparation;
  private final Wording words;
  private final Style style;

  PreparationSections(Batch batch, List<PreparationStep> preparation, Wording words) {
    this.batch = batch;
    this.preparation = preparation;
    this.words = words;
    this.style = UnitWords.style(batch.kitchen().units(), words);
  }

  /** Work of an earlier day, where the product has any. */
  Optional<Section> ahead() {
    SectionBuilder steps = new SectionBuilder("ahead", words, style);
    of(Stage.DAY_BEFORE).forEach(steps::add);
    return steps.isEmpty() ? Optional.empty() : Optional.of(steps.build());
  }

  Section produce() {
    SectionBuilder steps = new SectionBuilder("produce", words, style);
    batch
        .syrup()
        .ifPresent(
            s ->
                steps.act(
                    "produce.syrup",
                    Map.of(
                        "sugar", s.sugar().text(style, Rounding.UP),
                        "water", s.water().text(style, Rounding.UP)),
                    Optional.of(words.text("cover." + s.syrup()))));
    of(Stage.PRODUCE).forEach(steps::add);
    of(Stage.COOK).forEach(steps::add);
    return steps.build();
  }

  Section fill() {
    SectionBuilder steps = new SectionBuilder("fill", words, style);
    batch.acid().ifPresent(acid -> addAcid(steps, acid));
    batch
        .salt()
        .ifPresent(
            salt ->
                steps.act(
                    batch.product().salt().kind() == SaltRule.Kind.TASTE
                        ? "fill.salt"
                        : "fill.salt-fixed",
                    salt.text(style, Rounding.NEAREST)));
    for (PreparationStep step : preparation) {
      if (step.stage() == Stage.FILL) {
        if (step.kind() == PreparationStep.Kind.BUBBLES) {
          addHeadspace(steps);
          steps.act("fill.bubbles");
        } else {
          steps.add(step(step));
        }
      }
    }
    if (!releasesBubbles()) {
      addHeadspace(steps);
    }
    steps.act("fill.rims");
    steps.act("fill.lids");
    return steps.build();
  }

  /** Steps of a canner routine that only this product has. */
  List<Step> canner() {
    return of(Stage.CANNER);
  }

  private void addAcid(SectionBuilder steps, AcidPerJar acid) {
    String kind = words.text("acid." + acid.kind().name());
    steps.perJar(
        "fill.acid", Map.of("acid", kind), acid.each().text(style, Rounding.UP), acid.jars());
  }

  private void addHeadspace(SectionBuilder steps) {
    for (Headspace space : batch.headspace()) {
      String key = space.of().isEmpty() ? "fill.headspace" : "fill.headspace." + space.of();
      steps.act(key, space.depth().text(style, Rounding.NEAREST));
    }
  }

  private boolean releasesBubbles() {
    return preparation.stream().anyMatch(p -> p.kind() == PreparationStep.Kind.BUBBLES);
  }

  private List<Step> of(Stage stage) {
    List<Step> steps = new ArrayList<>();
    for (PreparationStep step : preparation) {
      if (step.stage() == stage) {
        steps.add(step(step));
      }
    }
    return steps;
  }

  private Step step(PreparationStep step) {
    String text = written(step.text());
    Optional<Caution> caution = step.caution().map(c -> new Caution(written(c)));
    return step.kind() == PreparationStep.Kind.WAIT
        ? new Step.Wait(text, Optional.empty(), caution)
        : new Step.Action(text, Optional.empty(), caution);
  }

  private String written(MeasuredText text) {
    Map<String, String> names = new LinkedHashMap<>();
    for (String name : text.names()) {
      names.put(name, named(name));
    }
    return text.text(style, names);
  }

  private String named(String name) {
    if (name.equals("liquid")) {
      return words.text("cover." + batch.plan().cover().orElse(Cover.WATER).id());
    }
    throw new IllegalArgumentException("a step of " + batch.product().id() + " has {" + name + "}");
  }
}
