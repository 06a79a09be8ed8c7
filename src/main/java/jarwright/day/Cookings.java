package jarwright.day;

import jarwright.batch.Batch;
import jarwright.batch.FormulaMultiple;
import jarwright.day.TaskTimes.Makes;
import jarwright.process.Pack;
import jarwright.quantity.Fraction;
import jarwright.quantity.Volume;
import java.util.List;

/**
 * How often the food of a batch is cooked, and in what.
 *
 * @param count goes for the whole batch; its loads where each load has its own
 * @param pots for each go, the largest first
 */
record Cookings(Manner manner, int count, List<Volume> pots) {
  /** Common practice, no source: what one recipe of a spread fills where no formula says so. */
  private static final Fraction PINTS_A_RECIPE = Fraction.of(4);

  /** What is cooked at a time. */
  enum Manner {
    /** The food of one load of the canner. */
    LOADS,
    /** All of the batch, in as few goes as the pots allow; it is kept hot for later loads. */
    BATCH,
    /** One recipe after the other, each filled at once: a larger pot of it might not set. */
    RECIPES
  }

  Cookings {
    pots = List.copyOf(pots);
  }

  /**
   * The cookings of a batch; one for each load where its pack is raw.
   *
   * @param loads of the batch
   * @param row the figure that counts for its cooking
   */
  static Cookings of(Batch batch, int loads, TaskTimes.Row row, Pots pots) {
    List<Volume> one = pots.sizes().subList(0, 1);
    if (batch.product().isCookedSingly()) {
      return new Cookings(Manner.RECIPES, recipes(batch), one);
    }
    if (batch.pack() != Pack.HOT || row.makes() == Makes.LOAD) {
      return new Cookings(Manner.LOADS, loads, one);
    }
    Fraction quarts = batch.jar().quarts().times(batch.jars()).times(row.potFrom());
    int goes = pots.goes(quarts);
    return new Cookings(Manner.BATCH, goes, pots.holding(quarts.dividedBy(Fraction.of(goes))));
  }

  private static int recipes(Batch batch) {
    Fraction pints = batch.jar().pints().times(batch.jars());
    return batch
        .formula()
        .flatMap(FormulaMultiple::times)
        .orElse(pints.dividedBy(PINTS_A_RECIPE))
        .ceiling()
        .intValueExact();
  }

  /**
   * How many of them a load has to wait for: its food is ready before its first jar is filled.
   *
   * @param before jars in the loads before it
   * @param jars in the load
   * @param all jars of the batch
   */
  int before(int before, int jars, int all) {
    return manner == Manner.LOADS ? 1 : upTo(before + jars, all) - upTo(before, all);
  }

  private int upTo(int jars, int all) {
    return Fraction.of((long) count * jars, all).ceiling().intValueExact();
  }
}
