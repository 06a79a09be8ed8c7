package jarwright.day;

import jarwright.batch.Batch;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.process.Pack;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Temperature;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Boiling-water canning: AIB 539 (2015) Guide 1. */
final class BoilingWaterSections {
  private static final Temperature RAW_PREHEAT = Temperature.fahrenheit(140);
  private static final Temperature HOT_PREHEAT = Temperature.fahrenheit(180);

  private final Batch batch;
  private final CannerFigures canner;
  private final Wording words;
  private final Style style;

  BoilingWaterSections(Batch batch, CannerFigures canner, Wording words) {
    this.batch = batch;
    this.canner = canner;
    this.words = words;
    this.style = UnitWords.style(batch.kitchen().units(), words);
  }

  List<Section> sections() {
    return List.of(load(), clock(), out());
  }

  private Section load() {
    SectionBuilder steps = new SectionBuilder("canner", words, style);
    Temperature preheat = batch.pack() == Pack.RAW ? RAW_PREHEAT : HOT_PREHEAT;
    steps.act("canner.water", canner.water());
    steps.act("canner.preheat." + batch.pack(), preheat.text(style, Rounding.UP));
    steps.act("canner.jars", Loads.text(canner.loads()));
    steps.act("canner.cover", WaterOverLids.of(batch.process()).text(style, Rounding.UP));
    steps.act("canner.lid");
    return steps.build();
  }

  private Section clock() {
    SectionBuilder steps = new SectionBuilder("clock", words, style);
    steps.act("clock.boil");
    steps.add(
        new Step.Clock(
            steps.text("step.clock.start", Map.of()),
            Optional.of(words.text("figure.minutes", Map.of("n", batch.process().minutes()))),
            ClockFields.boiling(words),
            canner.loads().size(),
            steps.cautionOf("clock.start")));
    steps.act("clock.keep");
    steps.act("clock.top-up");
    return steps.build();
  }

  private Section out() {
    SectionBuilder steps = new SectionBuilder("out", words, style);
    steps.await("out.rest", Map.of(), words.text("figure.minutes", Map.of("n", Rest.MINUTES)));
    OutSteps.addTo(steps);
    return steps.build();
  }
}
