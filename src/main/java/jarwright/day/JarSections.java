package jarwright.day;

import jarwright.batch.Batch;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.process.Method;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The sections that are alike for all products: gear and jars before, seals after. */
final class JarSections {
  private final Batch batch;
  private final Wording words;
  private final Style style;

  JarSections(Batch batch, Wording words) {
    this.batch = batch;
    this.words = words;
    this.style = UnitWords.style(batch.kitchen().units(), words);
  }

  Section before() {
    SectionBuilder steps = new SectionBuilder("before", words, style);
    steps.act("before.match", batch.kitchen().altitude().text(style));
    if (batch.method() == Method.DIAL_GAUGE) {
      steps.act("before.dial");
    }
    if (batch.process().isPressure()) {
      steps.act("before.vent");
    }
    steps.act("before.look", String.valueOf(batch.jars()));
    steps.act("before.lids", String.valueOf(batch.lids()));
    steps.act("before.tools");
    batch
        .acid()
        .ifPresent(
            acid ->
                steps.act(
                    "before.acid." + acid.kind().name().toLowerCase(Locale.ROOT),
                    acid.total().text(style, Rounding.UP)));
    steps.act("before.fire." + (batch.process().isPressure() ? "pressure" : "boiling"));
    return steps.build();
  }

  Section jars() {
    SectionBuilder steps = new SectionBuilder("jars", words, style);
    steps.act("jars.wash");
    Optional<Integer> sterilise = batch.sterilise();
    if (sterilise.isPresent()) {
      String minutes = words.text("figure.minutes", Map.of("n", sterilise.get()));
      steps.await("jars.sterilise", Map.of(), minutes);
    }
    steps.act(sterilise.isPresent() ? "jars.keep-hot" : "jars.heat");
    steps.act("jars.lids");
    return steps.build();
  }

  Section nextDay() {
    SectionBuilder steps = new SectionBuilder("next-day", words, style);
    steps.act("next-day.bands");
    steps.act("next-day.press");
    steps.act("next-day.tap");
    steps.act("next-day.look");
    steps.act("next-day.unsealed");
    steps.act("next-day.liquid");
    steps.act("next-day.label");
    steps.act("next-day.store");
    steps.record("next-day.record", List.of("sealed", "unsealed", "low", "by"));
    return steps.build();
  }
}
