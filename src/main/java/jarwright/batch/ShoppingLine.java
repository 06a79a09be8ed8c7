package jarwright.batch;

import jarwright.process.Aisle;
import java.util.List;

/**
 * One thing to buy for all batches together.
 *
 * @param what its name in the shop, in English
 * @param optional whether it may be left out
 * @param choice the one of several sauces that it belongs to; empty where there is no choice
 * @param oneMaking whether the amount is for one making of a formula without a count of jars
 * @param batches that take it
 */
public record ShoppingLine(
    String what,
    Aisle aisle,
    Amounts amounts,
    boolean optional,
    String choice,
    boolean oneMaking,
    List<Batch> batches) {
  public ShoppingLine {
    batches = List.copyOf(batches);
  }
}
