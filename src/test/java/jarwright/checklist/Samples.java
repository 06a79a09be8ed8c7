package jarwright.checklist;

import jarwright.day.PlannedBatch;
import jarwright.process.AcidKind;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;

/** Batches as an invented household puts them up. */
final class Samples {
  private Samples() {}

  static PlannedBatch plums() {
    return PlannedBatch.of("plums-halved-or-whole", Method.BOILING_WATER, Pack.RAW, JarSize.QUART)
        .jars(14)
        .cover("light");
  }

  static PlannedBatch tomatoes() {
    return PlannedBatch.of("tomatoes-whole-in-water", Method.BOILING_WATER, Pack.RAW, JarSize.PINT)
        .acid(AcidKind.CITRIC_ACID)
        .salted();
  }

  static PlannedBatch beans() {
    return PlannedBatch.of("beans-snap-italian", Method.DIAL_GAUGE, Pack.RAW, JarSize.QUART)
        .salted()
        .at("5400 ft");
  }

  /** Long: its work begins days before, and a formula is printed. */
  static PlannedBatch pickles() {
    return PlannedBatch.of("14-day-sweet-pickles", Method.BOILING_WATER, Pack.RAW, JarSize.PINT)
        .jars(8)
        .at("200 ft");
  }

  static PlannedBatch meatSauce() {
    return PlannedBatch.of(
            "spaghetti-sauce-with-meat", Method.WEIGHTED_GAUGE, Pack.HOT, JarSize.PINT)
        .at("3000 ft");
  }
}
