package jarwright.label;

import jarwright.page.LabelShape;
import jarwright.page.LabelStock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The label stocks as a table of words, for a terminal. */
public final class StockTable {
  /** What each column holds. */
  public static final List<String> HEADINGS =
      List.of("stock", "paper", "shape", "labels", "size, mm", "code, mm", "on the lid");

  /** Clear width inside the band of a regular and of a wide lid: common measures of makers. */
  private static final double REGULAR_LID = 60;

  private static final double WIDE_LID = 76;

  private StockTable() {}

  /** One row for each stock, as many cells as {@link #HEADINGS}. */
  public static List<List<String>> rows(List<LabelStock> stocks) {
    return stocks.stream().map(StockTable::row).toList();
  }

  private static List<String> row(LabelStock stock) {
    Optional<LabelLayout> layout = LabelLayout.of(stock);
    return List.of(
        stock.id(),
        stock.paper().name(),
        stock.shape().word(),
        stock.columns() + " × " + stock.rows() + " = " + stock.labelsPerSheet(),
        stock.shape() == LabelShape.CIRCLE
            ? "⌀ " + mm(stock.labelWidth())
            : mm(stock.labelWidth()) + " × " + mm(stock.labelHeight()),
        layout.map(l -> mm(l.code().w())).orElse("too small"),
        lid(Math.hypot(stock.labelWidth(), stock.labelHeight()), stock));
  }

  private static String lid(double diagonal, LabelStock stock) {
    double across = stock.shape() == LabelShape.CIRCLE ? stock.labelWidth() : diagonal;
    return across <= REGULAR_LID ? "regular, wide" : across <= WIDE_LID ? "wide" : "no";
  }

  private static String mm(double length) {
    return String.format(Locale.ROOT, "%.1f", length);
  }
}
