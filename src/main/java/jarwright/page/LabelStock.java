package jarwright.page;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * One sheet of labels by its measures, all in millimetres from the upper left corner.
 *
 * @param id the name users choose it by
 * @param paper the sheet
 * @param shape the outline of a label
 * @param columns labels side by side
 * @param rows labels one below the other
 * @param labelWidth width of a label; of a circle its diameter
 * @param labelHeight height of a label; of a circle its diameter
 * @param marginLeft from the sheet's left edge to the first label
 * @param marginTop from the sheet's upper edge to the first label
 * @param pitchX from a label's left edge to the next one's
 * @param pitchY from a label's upper edge to the next one's
 */
public record LabelStock(
    String id,
    PaperSize paper,
    LabelShape shape,
    int columns,
    int rows,
    double labelWidth,
    double labelHeight,
    double marginLeft,
    double marginTop,
    double pitchX,
    double pitchY) {

  /** Published measures are rounded to a hundredth of a millimetre; sums may miss by a few. */
  private static final double ROUNDING = 0.05;

  /** A place on the sheet in mm: a label's upper left corner. */
  public record Position(double x, double y) {}

  /**
   * Checks that the labels lie on the sheet and not on each other.
   *
   * @throws IllegalArgumentException with the measure that is wrong and what it may be
   */
  public LabelStock {
    require(id, !id.isBlank(), "has no id");
    require(id, columns >= 1 && columns <= 100, "has " + columns + " columns; 1 to 100 can be");
    require(id, rows >= 1 && rows <= 100, "has " + rows + " rows; 1 to 100 can be");
    require(id, labelWidth >= 5, "label width " + mm(labelWidth) + "; at least 5 mm");
    require(id, labelHeight >= 5, "label height " + mm(labelHeight) + "; at least 5 mm");
    require(id, marginLeft >= 0, "left margin " + mm(marginLeft) + "; not below 0");
    require(id, marginTop >= 0, "top margin " + mm(marginTop) + "; not below 0");
    require(
        id,
        shape != LabelShape.CIRCLE || Math.abs(labelWidth - labelHeight) < ROUNDING,
        "is a circle of " + mm(labelWidth) + " by " + mm(labelHeight) + "; both must be equal");
    require(
        id,
        columns == 1 || pitchX >= labelWidth - ROUNDING,
        "pitch " + mm(pitchX) + " across is less than the label width " + mm(labelWidth));
    require(
        id,
        rows == 1 || pitchY >= labelHeight - ROUNDING,
        "pitch " + mm(pitchY) + " down is less than the label height " + mm(labelHeight));
    double across = marginLeft + (columns - 1) * pitchX + labelWidth;
    require(
        id,
        across <= paper.width() + ROUNDING,
        "labels reach " + mm(across) + " across; the sheet is " + mm(paper.width()) + " wide");
    double down = marginTop + (rows - 1) * pitchY + labelHeight;
    require(
        id,
        down <= paper.height() + ROUNDING,
        "labels reach " + mm(down) + " down; the sheet is " + mm(paper.height()) + " high");
  }

  /** How many labels one sheet holds. */
  public int labelsPerSheet() {
    return columns * rows;
  }

  /**
   * Where label {@code i} begins; labels count from 0, row by row.
   *
   * @throws IllegalArgumentException if the sheet has no such label
   */
  public Position position(int i) {
    if (i < 0 || i >= labelsPerSheet()) {
      throw new IllegalArgumentException(
          "label " + i + " of stock " + id + "; it has 0 to " + (labelsPerSheet() - 1));
    }
    int row = i / columns;
    return new Position(marginLeft + (i % columns) * pitchX, marginTop + row * pitchY);
  }

  /** The measures for a template, keyed as the attributes of its {@code labels} element. */
  public Map<String, Object> view() {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("id", id);
    view.put("shape", shape.word());
    view.put("columns", columns);
    view.put("rows", rows);
    view.put("w", labelWidth);
    view.put("h", labelHeight);
    view.put("left", marginLeft);
    view.put("top", marginTop);
    view.put("pitch-x", pitchX);
    view.put("pitch-y", pitchY);
    return view;
  }

  private static void require(String id, boolean holds, String otherwise) {
    if (!holds) {
      throw new IllegalArgumentException("label stock " + id + ": " + otherwise);
    }
  }

  private static String mm(double length) {
    return String.format(Locale.ROOT, "%.2f mm", length);
  }
}
