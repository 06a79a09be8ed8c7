package jarwright.day;

import jarwright.batch.Batch;
import jarwright.batch.FormulaMultiple;
import jarwright.day.TaskTimes.Makes;
import jarwright.process.Pack;
import jarwright.quantity.Fraction;
import jarwright.quantity.Rounding;
import jarwright.quantity.Volume;
import java.util.List;

/**
 * How often the food of a batch is cooked, and in what.
 *
 * @param count goes for the whole batch; its loads where each load has its own
 * @param pots for each go, the largest first
 */
record Cookings(Makes makes, int count, List<Volume> pots) {
  /** Common practice, no source: what one recipe of a spread fills where no formula says so. */
  private static final Fraction PINTS_A_RECIPE = Fraction.of(4);

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
    Fraction quarts = batch.jar().quarts().times(batch.jars()).times(row.potFrom());
    Makes makes = batch.pack() == Pack.HOT ? row.makes() : Makes.LOAD;
    return switch (makes) {
      case LOAD -> new Cookings(makes, loads, pots.sizes().subList(0, 1));
      case BATCH -> {
        int goes = pots.goes(quarts);
        yield new Cookings(makes, goes, pots.holding(quarts.dividedBy(Fraction.of(goes))));
      }
      case RECIPE -> new Cookings(makes, recipes(batch), pots.sizes().subList(0, 1));
    };
  }

  private static int recipes(Batch batch) {
    return batch
        .formula()
        .map(FormulaMultiple::times)
        .filter(times -> times.isPresent())
        .map(times -> times.getAsInt())
        .orElseGet(() -> atLeast(batch.jar().pints().times(batch.jars())));
  }

  private static int atLeast(Fraction pints) {
    return Rounding.UP
        .toStep(pints.dividedBy(PINTS_A_RECIPE), Fraction.ONE)
        .numerator()
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
    return makes == Makes.LOAD ? 1 : upTo(before + jars, all) - upTo(before, all);
  }

  private int upTo(int jars, int all) {
    return Fraction.of((long) count * jars, all).ceiling().intValueExact();
  }
}
