package jarwright.label;

import jarwright.lot.QrText;
import jarwright.page.LabelShape;
import jarwright.page.LabelStock;
import jarwright.page.Registration;
import jarwright.page.Series;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import jarwright.plan.Kitchen;
import jarwright.problem.Place;
import jarwright.problem.Refused;
import jarwright.quantity.Fraction;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Jar labels on their stock. */
public final class LabelsSheet {
  private static final String TEMPLATE = "labels.ftl";

  /** Weight in pt of the line to cut along. */
  private static final double CUT = 0.5;

  /**
   * How the sheet is used.
   *
   * @param start the first free label of a part-used sheet, from 1
   * @param copies how many of each label, side by side
   * @param cut whether a thin frame shows where to cut plain paper
   */
  public record Use(int start, int copies, boolean cut) {
    private static final int MOST_COPIES = 99;

    /** A fresh sheet, one label a jar. */
    public static final Use USUAL = new Use(1, 1, false);

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException naming the number and what it may be
     */
    public Use {
      if (start < 1) {
        throw new IllegalArgumentException("labels on a sheet count from 1, not " + start);
      }
      if (copies < 1 || copies > MOST_COPIES) {
        throw new IllegalArgumentException(
            "copies of a label are 1 to " + MOST_COPIES + ", not " + copies);
      }
    }
  }

  private LabelsSheet() {}

  /** The kitchen's correction of its printer. */
  public static Registration registration(Kitchen kitchen) {
    return new Registration(
        number(kitchen.offsetRight().inMillimetres()),
        number(kitchen.offsetDown().inMillimetres()),
        number(kitchen.sheetScale()));
  }

  private static double number(Fraction exact) {
    return exact.numerator().doubleValue() / exact.denominator().doubleValue();
  }

  /**
   * The document: the labels in the order given, on as many sheets as they need.
   *
   * @param made the day that the document carries inside, from the plan
   * @throws Refused if the stock's labels are too small, or the sheet has no such first label
   */
  public static Sheet of(
      List<JarLabel> labels,
      LabelStock stock,
      Registration registration,
      Use use,
      Wording words,
      LocalDate made)
      throws Refused {
    LabelLayout layout = LabelLayout.of(stock).orElseThrow(() -> tooSmall(stock));
    if (use.start() > stock.labelsPerSheet()) {
      throw new Refused(
          Place.wholeFile("label stock " + stock.id()),
          "label " + use.start() + " is to be the first, and a sheet has " + stock.labelsPerSheet(),
          "start at 1 to " + stock.labelsPerSheet());
    }
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("stock", stock.view());
    view.put("right", registration.right());
    view.put("down", registration.down());
    view.put("scale", registration.scale());
    view.put("start", use.start());
    view.put("cut", use.cut() ? CUT : 0);
    view.put("areas", layout.view());
    view.put("bend", stock.shape() == LabelShape.CIRCLE ? 0 : LabelLayout.SLIMMEST_JAR);
    view.put(
        "labels",
        new Series(labels.size() * use.copies(), i -> label(labels.get(i / use.copies()), words)));
    List<String> products = labels.stream().map(JarLabel::product).distinct().toList();
    Sheet.About about =
        new Sheet.About(words.text("label.title"), String.join(", ", products), products, made);
    return new Sheet(TEMPLATE, view, stock.paper(), words, about);
  }

  private static Map<String, Object> label(JarLabel label, Wording words) {
    ProductTitle title = ProductTitle.of(label.product());
    LocalDate useBy = label.useBy().date();
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("title", title.title());
    one.put("rest", title.rest());
    one.put("note", title.note());
    one.put("lot", label.jar().lot().toString());
    one.put("jar", label.jar().toString());
    one.put("packed", label.packed().map(LocalDate::toString).orElse(""));
    one.put("useBy", useBy.toString());
    one.put("month", useBy.getMonthValue());
    one.put("year", String.valueOf(useBy.getYear()));
    one.put("day", words.date("label-day", useBy));
    one.put("facts", label.facts());
    one.put("cold", label.coldDays().isPresent());
    one.put("days", label.coldDays().orElse(0));
    one.put("codes", codes(label));
    return one;
  }

  private static List<String> codes(JarLabel label) {
    return label
        .link()
        .map(base -> List.of(QrText.address(base, label.jar(), label.useBy())))
        .orElseGet(() -> QrText.words(label.jar(), label.useBy(), label.coded()));
  }

  /** The refusal names the size that a label of the same proportions needs. */
  private static Refused tooSmall(LabelStock stock) {
    double grow = 1;
    while (LabelLayout.of(stock.shape(), grow * stock.labelWidth(), grow * stock.labelHeight())
        .isEmpty()) {
      grow += 0.01;
    }
    return new Refused(
        Place.wholeFile("label stock " + stock.id()),
        "its labels of "
            + size(stock.labelWidth(), stock.labelHeight())
            + " have no room for a code that can be scanned and type that can be read",
        "a label of this form needs "
            + size(Math.ceil(grow * stock.labelWidth()), Math.ceil(grow * stock.labelHeight())));
  }

  private static String size(double w, double h) {
    return String.format(Locale.ROOT, "%.1f × %.1f mm", w, h).replace(".0", "");
  }
}
