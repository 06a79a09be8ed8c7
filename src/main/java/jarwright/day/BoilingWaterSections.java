package jarwright.day;

import jarwright.batch.Batch;
import jarwright.quantity.Rounding;
import jarwright.water.WaterOverLids;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Boiling-water canning: AIB 539 (2015) Guide 1. */
final class BoilingWaterSections {
  private final Batch batch;
  private final CannerFigures canner;
  private final StepWords words;

  BoilingWaterSections(Batch batch, CannerFigures canner, StepWords words) {
    this.batch = batch;
    this.canner = canner;
    this.words = words;
  }

  List<Section> sections() {
    return List.of(load(), clock(), out());
  }

  private Section load() {
    SectionBuilder steps = new SectionBuilder("canner", words);
    if (canner.loads().size() == 1) {
      steps.act("canner.jars", Figure.of(Loads.text(canner.loads())));
    } else {
      steps.act("canner.jars");
    }
    steps.act(
        "canner.cover",
        words.figure(style -> WaterOverLids.of(batch.process()).text(style, Rounding.UP)));
    steps.act("canner.lid");
    steps.act("canner.heat");
    steps.act("canner.boil");
    return steps.build();
  }

  private Section clock() {
    SectionBuilder steps = new SectionBuilder("clock", words);
    steps.add(
        new Step.Clock(
            steps.line("clock.start.boiling-water", Map.of()),
            batch.process().minutes(),
            Optional.empty(),
            ClockFields.boiling(words),
            canner.loads(),
            words.caution("clock.start.boiling-water")));
    steps.await("clock.keep");
    steps.await("clock.top-up");
    steps.act("clock.off");
    return steps.build();
  }

  private Section out() {
    SectionBuilder steps = new SectionBuilder("out", words);
    steps.await("out.rest", words.minutes(Rest.MINUTES));
    OutSteps.addTo(steps, words);
    return steps.build();
  }
}
