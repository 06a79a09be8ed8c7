package jarwright.day;

import jarwright.batch.AcidPerJar;
import jarwright.batch.Batch;
import jarwright.process.Method;
import jarwright.quantity.Altitude;
import jarwright.quantity.Rounding;
import jarwright.quantity.Units;
import java.util.List;
import java.util.Locale;

/** The sections that hang on jars and canner alone: gear and jars before, seals after. */
final class JarSections {
  private final Batch batch;
  private final CannerFigures canner;
  private final Routine own;
  private final StepWords words;

  JarSections(Batch batch, CannerFigures canner, Routine own, StepWords words) {
    this.batch = batch;
    this.canner = canner;
    this.own = own;
    this.words = words;
  }

  /**
   * Gear before the fire is lit.
   *
   * @param produceFirst whether the work on the produce begins here too
   */
  Section before(boolean produceFirst) {
    SectionBuilder steps = new SectionBuilder("before", words);
    if (produceFirst) {
      ProduceAtHand.addTo(steps, batch, words);
    }
    steps.act("before.match", altitude());
    if (batch.method() == Method.DIAL_GAUGE) {
      steps.act("before.dial");
    }
    if (batch.process().isPressure()) {
      steps.act("before.vent");
    }
    steps.act("before.jars", Figure.of(String.valueOf(batch.jars())));
    steps.act("before.lids", Figure.of(String.valueOf(batch.lids())));
    batch.acid().ifPresent(acid -> addAcid(steps, acid));
    steps.act("before.tools");
    return steps.build();
  }

  /**
   * In the unit that she gave it in, and in the other whatever units the sheet has: a lost thousand
   * or a wrong unit is seen.
   */
  private Figure altitude() {
    Altitude altitude = batch.kitchen().altitude();
    boolean metric = altitude.unit() == Altitude.Unit.M;
    return new Figure(
        altitude.text(words.style(metric ? Units.METRIC : Units.US)),
        altitude.text(words.style(metric ? Units.US : Units.METRIC)));
  }

  private void addAcid(SectionBuilder steps, AcidPerJar acid) {
    steps.act(
        "before.acid." + acid.kind().name().toLowerCase(Locale.ROOT),
        Figure.of(words.figure(style -> acid.total().text(style, Rounding.UP)).main()));
  }

  Section jars() {
    SectionBuilder steps = new SectionBuilder("jars", words);
    if (!own.fillsWater()) {
      addWater(steps);
      steps.act("jars.fire." + batch.pack(), Preheat.of(batch.pack(), words));
    }
    steps.act("jars.wash");
    if (batch.sterilise().isPresent()) {
      steps.await("jars.sterilise", words.minutes(batch.sterilise().get()));
      steps.act("jars.keep-hot");
    } else {
      steps.act(own.fillsWater() ? "jars.clean" : "jars.heat");
    }
    steps.act("jars.lids");
    return steps.build();
  }

  private void addWater(SectionBuilder steps) {
    boolean pressure = batch.process().isPressure();
    if (canner.water().isPresent()) {
      steps.act("jars.water." + (pressure ? "pressure" : "boiling"), canner.water().get());
    } else if (pressure) {
      steps.act("jars.water.pressure", words.figure("figure.shallow"));
    } else {
      steps.act("jars.half-fill");
    }
  }

  Section nextDay() {
    SectionBuilder steps = new SectionBuilder("next-day", words);
    steps.act("next-day.bands");
    steps.act("next-day.press");
    steps.act("next-day.tap");
    steps.act("next-day.look");
    steps.act("next-day.wash");
    steps.act("next-day.label");
    steps.act("next-day.store");
    steps.record("next-day.record", List.of("sealed", "unsealed", "low", "by"));
    return steps.build();
  }
}
