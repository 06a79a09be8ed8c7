package jarwright.day;

import jarwright.batch.Batch;
import jarwright.process.Method;
import java.util.List;
import java.util.Map;

/** Pressure canning with a dial or a weighted gauge: AIB 539 (2015) Guide 1. */
final class PressureSections {
  private final Batch batch;
  private final CannerFigures canner;
  private final Routine own;
  private final StepWords words;

  PressureSections(Batch batch, CannerFigures canner, Routine own, StepWords words) {
    this.batch = batch;
    this.canner = canner;
    this.own = own;
    this.words = words;
  }

  List<Section> sections() {
    return List.of(load(), clock(), out());
  }

  private Section load() {
    SectionBuilder steps = new SectionBuilder("canner", words);
    if (own.fillsWater()) {
      own.water().forEach(steps::add);
      steps.act("canner.jars");
    }
    steps.act("canner.fasten." + batch.method());
    if (own.vents()) {
      own.venting().forEach(steps::add);
    } else {
      steps.act("canner.steam");
      steps.await("canner.vent", words.minutes(Vent.MINUTES));
    }
    steps.act("canner.close." + batch.method());
    return steps.build();
  }

  private Section clock() {
    SectionBuilder steps = new SectionBuilder("clock", words);
    steps.act("clock.pressure." + batch.method());
    steps.add(
        new Step.Clock(
            steps.line("clock.start." + batch.method(), Map.of()),
            batch.process().minutes(),
            batch.process().pressure().map(words::pressure),
            ClockFields.pressure(batch.method(), words),
            canner.loads(),
            words.caution("clock.start." + batch.method())));
    steps.await("clock.hold." + batch.method());
    steps.act("clock.off");
    return steps.build();
  }

  private Section out() {
    SectionBuilder steps = new SectionBuilder("out", words);
    if (batch.method() == Method.DIAL_GAUGE) {
      steps.await("out.depressurise.dial-gauge", Figure.of(words.text("figure.zero")));
    } else {
      steps.await("out.depressurise.weighted-gauge");
    }
    steps.act("out.weight." + batch.method());
    steps.await("out.wait-lid", words.minutes(Rest.AFTER_PRESSURE_MINUTES));
    steps.act("out.unfasten");
    OutSteps.addTo(steps, words);
    return steps.build();
  }
}
