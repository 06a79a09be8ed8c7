package jarwright.label;

import jarwright.page.LabelStock;
import jarwright.page.PaperSize;
import jarwright.page.Registration;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The page that brings a printer into register with a label stock: the labels' outlines, rulers to
 * read the offset on, and a bar to measure the scale by. It is printed with the correction in
 * force, so that a page printed again shows what is left.
 */
public final class AlignmentSheet {
  private static final String TEMPLATE = "alignment.ftl";

  /** An edge that lies closer to the paper's is not sure to be printed (common practice). */
  private static final double PRINTABLE = 3;

  private static final double[] MISSES = {-1, -0.5, 0.5, 1};

  private AlignmentSheet() {}

  /**
   * The page.
   *
   * @param registration the correction in force
   * @param made the day that the document carries inside
   */
  public static Sheet of(
      LabelStock stock, Registration registration, Wording words, LocalDate made) {
    PaperSize paper = stock.paper();
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("stock", stock.view());
    view.put("paper", Map.of("w", paper.width(), "h", paper.height()));
    view.put("right", registration.right());
    view.put("down", registration.down());
    view.put("scale", registration.scale());
    view.put(
        "now", Map.of("right", plain(registration.right()), "down", plain(registration.down())));
    List<Object> labels = new ArrayList<>();
    for (int i = 0; i < stock.labelsPerSheet(); i++) {
      labels.add(point(stock.position(i).x(), stock.position(i).y()));
    }
    view.put("labels", labels);
    view.put("across", across(stock));
    view.put("along", along(stock));
    int bar = (int) Math.max(0, Math.floor((paper.height() - 70) / 50) * 50);
    view.put("bar", bar);
    view.put("scales", bar == 0 ? List.of() : scales(bar, registration.scale()));
    String title = words.text("align.title", Map.of("stock", stock.id()));
    return new Sheet(
        TEMPLATE, view, paper, words, new Sheet.About(title, "", List.of(stock.id()), made));
  }

  /** Upright edges of the first row, far from each other: where their rulers have zero. */
  private static List<Object> across(LabelStock stock) {
    double y = stock.marginTop() + stock.labelHeight() / 2;
    double first = stock.marginLeft();
    double last = first + (stock.columns() - 1) * stock.pitchX();
    double w = stock.labelWidth();
    boolean tight = stock.columns() > 1 && first < PRINTABLE;
    return List.of(point(tight ? first + w : first, y), point(tight ? last : last + w, y));
  }

  /** Level edges of the first column in the same way. */
  private static List<Object> along(LabelStock stock) {
    double x = stock.marginLeft() + stock.labelWidth() / 2;
    double first = stock.marginTop();
    double last = first + (stock.rows() - 1) * stock.pitchY();
    double h = stock.labelHeight();
    boolean tight = stock.rows() > 1 && first < PRINTABLE;
    return List.of(point(x, tight ? first + h : first), point(x, tight ? last : last + h));
  }

  private static Map<String, Object> point(double x, double y) {
    Map<String, Object> point = new LinkedHashMap<>();
    point.put("x", x);
    point.put("y", y);
    return point;
  }

  /** What to write when the bar measures a little less or more than it should. */
  private static List<Object> scales(int bar, double now) {
    List<Object> scales = new ArrayList<>();
    for (double miss : MISSES) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("measured", tenths(bar + miss));
      one.put("percent", tenths(100 * now * bar / (bar + miss)));
      scales.add(one);
    }
    return scales;
  }

  /** As short as it can be written. */
  private static BigDecimal plain(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
    BigDecimal stripped = rounded.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  private static BigDecimal tenths(double value) {
    return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_EVEN);
  }
}
