package jarwright.files;

import jarwright.page.LabelShape;
import jarwright.page.LabelStock;
import jarwright.page.PaperSize;
import java.util.List;

/** Reads one row of the program's own table of label stocks; lengths are mm. */
final class LabelStockRow {
  static final List<String> COLUMNS =
      List.of(
          "layout_id",
          "sheet",
          "sheet_w_mm",
          "sheet_h_mm",
          "shape",
          "cols",
          "rows",
          "count",
          "label_w_mm",
          "label_h_mm",
          "margin_left_mm",
          "margin_top_mm",
          "pitch_x_mm",
          "pitch_y_mm",
          "gap_x_mm",
          "gap_y_mm",
          "confidence");

  /** The published measures are rounded to a thousandth of a millimetre. */
  private static final double ROUNDING = 0.0011;

  private final TableText.Row row;

  private LabelStockRow(TableText.Row row) {
    this.row = row;
  }

  /**
   * The row's stock.
   *
   * @throws IllegalArgumentException where a cell is wrong or two contradict each other
   */
  static LabelStock read(TableText.Row row) {
    return new LabelStockRow(row).stock();
  }

  private LabelStock stock() {
    PaperSize paper = PaperSize.parse(row.get("sheet"));
    agree("sheet_w_mm", paper.width());
    agree("sheet_h_mm", paper.height());
    LabelStock stock =
        new LabelStock(
            row.get("layout_id"),
            paper,
            LabelShape.parse(row.get("shape")),
            row.number("cols"),
            row.number("rows"),
            mm("label_w_mm"),
            mm("label_h_mm"),
            mm("margin_left_mm"),
            mm("margin_top_mm"),
            mm("pitch_x_mm"),
            mm("pitch_y_mm"));
    agree("count", stock.labelsPerSheet());
    agree("gap_x_mm", stock.pitchX() - stock.labelWidth());
    agree("gap_y_mm", stock.pitchY() - stock.labelHeight());
    if (!stock.id().equals(Fields.plain(stock.id()))) {
      throw new IllegalArgumentException("the id " + stock.id() + " is not in small letters");
    }
    return stock;
  }

  private void agree(String column, double wanted) {
    if (Math.abs(mm(column) - wanted) > ROUNDING) {
      throw new IllegalArgumentException(
          column + " is " + row.get(column) + "; the other cells give " + wanted);
    }
  }

  private double mm(String column) {
    String cell = row.get(column);
    if (!cell.matches("\\d{1,3}(\\.\\d{1,4})?")) {
      throw new IllegalArgumentException(column + " \"" + cell + "\" is no number of mm");
    }
    return Double.parseDouble(cell);
  }
}
