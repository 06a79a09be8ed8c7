package jarwright.day;

import jarwright.batch.AcidPerJar;
import jarwright.batch.Batch;
import jarwright.batch.SyrupNeed;
import jarwright.plan.Cover;
import jarwright.process.GelPoints;
import jarwright.process.Headspace;
import jarwright.process.PreparationStep;
import jarwright.process.PreparationStep.Stage;
import jarwright.process.SaltRule;
import jarwright.quantity.MeasuredText;
import jarwright.quantity.Rounding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The sections that hang on the product: the work ahead, the produce, filling the jars. */
final class PreparationSections {
  /** Stands in a step where the plan decides the liquid; other products say their own. */
  private static final String LIQUID = "liquid";

  private final Batch batch;
  private final List<PreparationStep> preparation;
  private final GelPoints gelPoints;
  private final CannerFigures canner;
  private final StepWords words;
  private final Function<PreparationStep, Optional<String>> ready;

  PreparationSections(
      Batch batch,
      List<PreparationStep> preparation,
      GelPoints gelPoints,
      CannerFigures canner,
      StepWords words,
      Function<PreparationStep, Optional<String>> ready) {
    this.batch = batch;
    this.preparation = preparation;
    this.gelPoints = gelPoints;
    this.canner = canner;
    this.words = words;
    this.ready = ready;
  }

  /** Work of an earlier day, where the product has any that is done every time. */
  Optional<Section> ahead() {
    SectionBuilder steps = new SectionBuilder("ahead", words);
    List<Step> early = variation().isPresent() ? List.of() : of(Stage.DAY_BEFORE);
    if (!early.isEmpty()) {
      ProduceAtHand.addTo(steps, batch, words);
    }
    early.forEach(steps::add);
    return steps.isEmpty() ? Optional.empty() : Optional.of(steps.build());
  }

  /**
   * A way of working that is begun on an earlier day and that most will not take, as firming with
   * lime: it stands last, so that the sheet does not begin with what is left out.
   */
  Optional<Section> optional() {
    return variation()
        .map(
            way ->
                new Section(
                    "optional", words.text("section.optional." + way), of(Stage.DAY_BEFORE)));
  }

  /** The way that all work of an earlier day belongs to. */
  private Optional<String> variation() {
    List<Optional<String>> ways =
        preparation.stream()
            .filter(p -> p.stage() == Stage.DAY_BEFORE)
            .map(PreparationStep::way)
            .distinct()
            .toList();
    return ways.size() == 1 ? ways.get(0) : Optional.empty();
  }

  Section produce() {
    SectionBuilder steps = new SectionBuilder("produce", words);
    if (preparation.stream().anyMatch(p -> p.text().names().contains(LIQUID))) {
      batch.syrup().ifPresent(syrup -> addSyrup(steps, syrup));
    }
    of(Stage.PRODUCE).forEach(steps::add);
    of(Stage.COOK).forEach(steps::add);
    return steps.build();
  }

  Section fill() {
    SectionBuilder steps = new SectionBuilder("fill", words);
    if (canner.loads().size() > 1) {
      steps.act("fill.load", Figure.of(Loads.text(canner.loads())));
    }
    batch.acid().ifPresent(acid -> addAcid(steps, acid));
    batch
        .salt()
        .ifPresent(
            salt ->
                steps.act(
                    batch.product().salt().kind() == SaltRule.Kind.TASTE
                        ? "fill.salt"
                        : "fill.salt-fixed",
                    words.figure(style -> salt.text(style, Rounding.NEAREST))));
    for (PreparationStep step : preparation) {
      if (step.stage() == Stage.FILL && step.kind() != PreparationStep.Kind.BUBBLES) {
        steps.add(step(step));
      }
    }
    steps.gauge("fill.headspace", batch.headspace().stream().map(this::depth).toList());
    if (preparation.stream().anyMatch(p -> p.kind() == PreparationStep.Kind.BUBBLES)) {
      steps.act("fill.bubbles");
    }
    steps.act("fill.rims");
    steps.act("fill.lids");
    if (batch.process().isPressure()) {
      stand(steps);
    }
    return steps.build();
  }

  /** A pressure canner is loaded jar by jar; its own water is in it by then. */
  private void stand(SectionBuilder steps) {
    if (routine().fillsWater()) {
      return;
    }
    if (canner.loads().size() == 1) {
      steps.act("fill.stand", Figure.of(Loads.text(canner.loads())));
    } else {
      steps.act("fill.stand");
    }
  }

  /** What this product does in its own way at the canner. */
  Routine routine() {
    return new Routine(of(Stage.CANNER), of(Stage.VENT));
  }

  private static void addSyrup(SectionBuilder steps, SyrupNeed syrup) {
    steps.act(
        "produce.syrup",
        Map.of("sugar", "{" + syrup.sugar() + "}", "water", "{" + syrup.water() + "}"),
        Optional.empty());
  }

  private void addAcid(SectionBuilder steps, AcidPerJar acid) {
    steps.perJar(
        "fill.acid",
        Map.of("acid", words.text("acid." + acid.kind().name())),
        words.figure(style -> acid.each().text(style, Rounding.UP)),
        acid.jars());
  }

  private Step.Gauge.Depth depth(Headspace space) {
    String to = space.of().isEmpty() ? "" : words.text("headspace." + space.of());
    Figure figure = words.figure(style -> space.depth().text(style, Rounding.NEAREST));
    return new Step.Gauge.Depth(to, figure, space.depth());
  }

  private List<Step> of(Stage stage) {
    return preparation.stream().filter(p -> p.stage() == stage).map(this::step).toList();
  }

  /** Time runs where the text says how long something waits or stands on the fire. */
  private Step step(PreparationStep step) {
    Line line = written(step.text());
    Optional<Caution> caution = step.caution().map(c -> new Caution(written(c).text()));
    boolean timed =
        (step.kind() == PreparationStep.Kind.COOK && !step.text().times().isEmpty())
            || step.kind() == PreparationStep.Kind.WAIT
            || step.waiting().filter(PreparationStep.Wait::stopsWork).isPresent();
    return timed
        ? new Step.Wait(line, ready.apply(step).map(Figure::of), caution)
        : new Step.Action(line, Optional.empty(), caution);
  }

  private Line written(MeasuredText text) {
    Map<String, String> names = new LinkedHashMap<>();
    for (String name : text.names()) {
      names.put(name, named(name));
    }
    return words.line(text, names);
  }

  private String named(String name) {
    return switch (name) {
      case LIQUID -> words.text("cover." + batch.plan().cover().orElse(Cover.WATER).id());
      case "gel" ->
          gelPoints
              .nearest(batch.kitchen().altitude())
              .map(t -> t.text(words.style(), Rounding.NEAREST))
              .orElseGet(() -> words.text("gel.by-test"));
      default ->
          throw new IllegalArgumentException(
              "a step of " + batch.product().id() + " has {" + name + "}");
    };
  }
}
