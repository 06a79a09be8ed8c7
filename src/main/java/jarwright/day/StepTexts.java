package jarwright.day;

import jarwright.batch.Batch;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.process.PreparationStep;
import jarwright.process.Product;
import jarwright.quantity.MeasuredText;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The words of single steps, outside their checklist.
 *
 * @param words of the print-out
 * @param steps of a product in the same language, for all its packs
 */
public record StepTexts(Wording words, Function<Product, List<PreparationStep>> steps) {

  /** The step at a place among all of the batch's product; of a wait, which names nothing else. */
  public Line line(Batch batch, int place) {
    return written(batch, step(batch, place).text());
  }

  /** What the step warns of; empty where it does not. */
  Line caution(Batch batch, int place) {
    return step(batch, place).caution().map(c -> written(batch, c)).orElse(new Line(List.of()));
  }

  private PreparationStep step(Batch batch, int place) {
    return steps.apply(batch.product()).get(place);
  }

  private Line written(Batch batch, MeasuredText text) {
    return new Line(text.runs(UnitWords.style(batch.kitchen().units(), words), Map.of()));
  }
}
