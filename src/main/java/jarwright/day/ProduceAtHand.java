package jarwright.day;

import jarwright.batch.Batch;
import jarwright.batch.JarRange;
import jarwright.batch.ProduceRange;
import jarwright.quantity.Mass;
import jarwright.quantity.Rounding;
import jarwright.quantity.Units;
import java.util.Map;
import java.util.Optional;

/** The first box of a checklist: the produce that the work begins with. */
final class ProduceAtHand {
  private ProduceAtHand() {}

  /**
   * Adds the step: as the plan gives it, else about what so many jars take. A formula lists its own
   * produce.
   */
  static void addTo(SectionBuilder steps, Batch batch, StepWords words) {
    batch
        .plan()
        .amount()
        .fold(
            jars -> {
              if (batch.formula().isEmpty()) {
                batch.produce().map(ProduceRange::about).ifPresent(m -> about(steps, m, words));
              }
              return true;
            },
            mass -> {
              there(steps, mass, batch, words);
              return true;
            });
  }

  private static void there(SectionBuilder steps, Mass mass, Batch batch, StepWords words) {
    Figure figure = asWritten(mass, batch, words);
    JarRange fills = batch.expected();
    if (fills.isExact()) {
      steps.act("before.produce", figure);
    } else {
      String jars = words.text("range", Map.of("from", fills.fewest(), "to", fills.most()));
      steps.act("before.produce-for", Map.of("jars", jars), Optional.of(figure));
    }
  }

  private static void about(SectionBuilder steps, Mass mass, StepWords words) {
    steps.act("before.produce-about", words.figure(style -> mass.text(style, Rounding.UP)));
  }

  /** In the unit that the plan has it in, the other beside it where the household reads both. */
  private static Figure asWritten(Mass mass, Batch batch, StepWords words) {
    boolean metric = mass.unit().isMetric();
    String own = mass.text(words.style(metric ? Units.METRIC : Units.US), Rounding.NEAREST);
    String other = mass.text(words.style(metric ? Units.US : Units.METRIC), Rounding.NEAREST);
    return new Figure(own, batch.kitchen().units() == Units.BOTH ? other : "");
  }
}
