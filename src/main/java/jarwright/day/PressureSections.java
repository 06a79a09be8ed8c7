package jarwright.day;

import jarwright.batch.Batch;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.process.Pack;
import jarwright.quantity.GaugePressure;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Temperature;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Pressure canning with a dial or a weighted gauge: AIB 539 (2015) Guide 1. */
final class PressureSections {
  private static final Temperature RAW_PREHEAT = Temperature.fahrenheit(140);
  private static final Temperature HOT_PREHEAT = Temperature.fahrenheit(180);

  private final Batch batch;
  private final CannerFigures canner;
  private final List<Step> own;
  private final Wording words;
  private final Style style;

  /**
   * @param own steps of a routine that only this product has; they stand in place of the usual
   *     water and venting
   */
  PressureSections(Batch batch, CannerFigures canner, List<Step> own, Wording words) {
    this.batch = batch;
    this.canner = canner;
    this.own = own;
    this.words = words;
    this.style = UnitWords.style(batch.kitchen().units(), words);
  }

  List<Section> sections() {
    return List.of(load(), clock(), out());
  }

  private Section load() {
    SectionBuilder steps = new SectionBuilder("canner", words, style);
    if (own.isEmpty()) {
      Temperature preheat = batch.pack() == Pack.RAW ? RAW_PREHEAT : HOT_PREHEAT;
      steps.act("canner.water-pressure", canner.water());
      steps.act("canner.preheat." + batch.pack(), preheat.text(style, Rounding.UP));
    }
    steps.act("canner.jars", Loads.text(canner.loads()));
    steps.act("canner.fasten");
    return steps.build();
  }

  private Section clock() {
    SectionBuilder steps = new SectionBuilder("clock", words, style);
    GaugePressure pressure = batch.process().pressure().orElseThrow();
    if (own.isEmpty()) {
      steps.act("clock.steam");
      steps.await("clock.vent", Map.of(), words.text("figure.minutes", Map.of("n", Vent.MINUTES)));
    } else {
      own.forEach(steps::add);
    }
    steps.act("clock.close." + batch.method());
    steps.act("clock.pressure." + batch.method(), pressure.text(style));
    steps.add(
        new Step.Clock(
            steps.text("step.clock.start." + batch.method(), Map.of()),
            Optional.of(words.text("figure.minutes", Map.of("n", batch.process().minutes()))),
            ClockFields.pressure(words),
            canner.loads().size(),
            steps.cautionOf("clock.start-pressure")));
    steps.act("clock.hold." + batch.method(), pressure.text(style));
    return steps.build();
  }

  private Section out() {
    SectionBuilder steps = new SectionBuilder("out", words, style);
    steps.await("out.depressurise", Map.of(), words.text("figure.zero"));
    steps.act("out.weight." + batch.method());
    steps.await(
        "out.wait-lid",
        Map.of(),
        words.text("figure.minutes", Map.of("n", Rest.AFTER_PRESSURE_MINUTES)));
    steps.act("out.unfasten");
    OutSteps.addTo(steps);
    return steps.build();
  }
}
