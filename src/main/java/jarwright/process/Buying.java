package jarwright.process;

import java.util.List;
import java.util.Map;

/** How the ingredients of formulas are bought, and what products take besides. */
public final class Buying {
  private final Map<String, Purchase> purchases;
  private final List<Supply> supplies;

  /**
   * @param purchases by the ingredient as formulas print it
   * @param supplies in the order of their table
   */
  public Buying(Map<String, Purchase> purchases, List<Supply> supplies) {
    this.purchases = Map.copyOf(purchases);
    this.supplies = List.copyOf(supplies);
  }

  /** How an ingredient of a formula is bought. */
  public Purchase of(FormulaLine line) {
    Purchase purchase = purchases.get(line.ingredient());
    if (purchase == null) {
      throw new IllegalArgumentException("nobody knows how " + line.ingredient() + " is bought");
    }
    return purchase;
  }

  /** What a product takes besides its formula, in this pack. */
  public List<Supply> supplies(Product product, Pack pack) {
    return supplies.stream()
        .filter(s -> s.productId().equals(product.id()) && s.isFor(pack))
        .toList();
  }
}
