package jarwright.label;

import jarwright.page.LabelShape;
import jarwright.page.LabelStock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Where things stand on a label of given shape and size. All ink keeps clear of the edge by {@link
 * #SAFE}; the code's quiet zone, which is only paper, by half of that.
 *
 * @param arrangement how the areas lie to each other
 * @param name the product
 * @param ids lot, use-by and, where {@code facts} is empty, all that else is said; on a small round
 *     label the same area as {@code name}, for all words together
 * @param facts what is said of the process beside the ids
 * @param code the square of the QR code with its quiet zone
 * @param months the strip of months; of a round label the square around its ring
 * @param ring width of the ring of months; 0 on labels that are not round
 */
record LabelLayout(
    Arrangement arrangement,
    Area name,
    Area ids,
    Optional<Area> facts,
    Area code,
    Area months,
    double ring) {

  /** Printers and people miss the edge by up to so many mm (common practice, no source). */
  static final double SAFE = 2;

  /** The side of the leanest code: 33 modules of 0.42 mm with the quiet zone. */
  static final double LEAST_CODE = 33 * 0.42;

  /** Millimetres across of the slimmest jars (common practice, no source). */
  static final double SLIMMEST_JAR = 64;

  /** A code wider than half a jar turns away too far at its edge. */
  private static final double MOST_CODE = 30;

  private static final double GAP = 0.8;
  private static final double LEAST_TEXT_WIDTH = 17;
  private static final double LEAST_NAME = 5.5;
  private static final double LEAST_IDS = 5;
  private static final double TWO_COLUMNS = 43;

  /** Lines of a smaller box than this share it with the name. */
  private static final double ROOMY_IDS = 8;

  private static final int MONTHS = 12;

  /** Degrees of a ring that are kept for the year. */
  private static final double FOOT_OF_DIAL = 60;

  enum Arrangement {
    /** The code to the right of the words. */
    BESIDE,
    /** The name across the whole label, words and code below it. */
    STACKED,
    /** Everything below each other. */
    TOWER,
    /** The name in front, the code and the facts round the jar's sides. */
    AROUND,
    /** In a ring of months. */
    ROUND
  }

  /** The layout of a stock's labels; empty if they are too small. */
  static Optional<LabelLayout> of(LabelStock stock) {
    return of(stock.shape(), stock.labelWidth(), stock.labelHeight());
  }

  static Optional<LabelLayout> of(LabelShape shape, double w, double h) {
    LabelLayout layout;
    if (shape == LabelShape.CIRCLE) {
      layout = round(w);
    } else if (shape == LabelShape.STRIP || w >= 4 * h) {
      layout = around(w, h);
    } else if (w >= 1.6 * h) {
      layout = beside(w, h);
    } else if (w >= 0.8 * h && w >= 40) {
      layout = stacked(w, h);
    } else {
      layout = tower(w, h);
    }
    return Optional.of(layout).filter(LabelLayout::isRoomy);
  }

  private boolean isRoomy() {
    boolean text = name.w() >= LEAST_TEXT_WIDTH && ids.w() >= LEAST_TEXT_WIDTH;
    return text
        && name.h() >= LEAST_NAME
        && ids.h() >= LEAST_IDS
        && code.w() >= LEAST_CODE
        && code.x() >= 0
        && code.y() >= 0;
  }

  private static LabelLayout beside(double w, double h) {
    Area months = strip(w, h, SAFE, w - 2 * SAFE);
    double side = Math.min(months.y() - GAP - SAFE / 2, Math.min(0.36 * w, MOST_CODE));
    Area code = new Area(w - SAFE / 2 - side, SAFE / 2, side, side);
    Area words = new Area(SAFE, SAFE, code.x() - SAFE, months.y() - GAP - SAFE);
    return words(Arrangement.BESIDE, words, code, months);
  }

  private static LabelLayout words(Arrangement how, Area words, Area code, Area months) {
    boolean two = words.w() >= TWO_COLUMNS;
    double share = two ? 3.6 + 0.3 * words.h() : 0.5 * words.h();
    double idsHeight = Math.max(LEAST_IDS, share);
    double top = words.foot() - idsHeight;
    Area name = new Area(words.x(), words.y(), words.w(), top - GAP - words.y());
    if (!two) {
      Area ids = new Area(words.x(), top, words.w(), idsHeight);
      return new LabelLayout(how, name, ids, Optional.empty(), code, months, 0);
    }
    double left = 0.5 * words.w();
    return new LabelLayout(
        how,
        name,
        new Area(words.x(), top, left - GAP, idsHeight),
        Optional.of(new Area(words.x() + left, top, words.w() - left, idsHeight)),
        code,
        months,
        0);
  }

  private static LabelLayout stacked(double w, double h) {
    Area months = strip(w, h, SAFE, w - 2 * SAFE);
    double foot = months.y() - GAP;
    double side = Math.min(MOST_CODE, Math.min(0.46 * w, 0.55 * (foot - SAFE)));
    Area code = new Area(w - SAFE / 2 - side, foot - side, side, side);
    Area name = new Area(SAFE, SAFE, w - 2 * SAFE, code.y() - SAFE);
    Area ids = new Area(SAFE, code.y() + SAFE / 2, code.x() - SAFE, foot - code.y() - SAFE / 2);
    return new LabelLayout(Arrangement.STACKED, name, ids, Optional.empty(), code, months, 0);
  }

  private static LabelLayout tower(double w, double h) {
    Area months = new Area(SAFE, 0.86 * h - SAFE, w - 2 * SAFE, 0.14 * h);
    double foot = months.y() - GAP;
    double side = Math.min(MOST_CODE, Math.min(w - SAFE, 0.36 * h));
    Area code = new Area((w - side) / 2, foot - side, side, side);
    double words = code.y() - SAFE;
    Area name = new Area(SAFE, SAFE, w - 2 * SAFE, 0.45 * words);
    Area ids = new Area(SAFE, name.foot() + GAP, w - 2 * SAFE, 0.55 * words - GAP);
    return new LabelLayout(Arrangement.TOWER, name, ids, Optional.empty(), code, months, 0);
  }

  private static LabelLayout around(double w, double h) {
    double front = Math.min(85, Math.max(46, 0.4 * w));
    double left = (w - front) / 2;
    Area months = strip(front, h, left, front);
    double side = Math.min(h - SAFE, MOST_CODE);
    Area code = new Area(left + front + SAFE, (h - side) / 2, side, side);
    Area name = new Area(left, SAFE, front, months.y() - GAP - SAFE);
    Area ids = new Area(code.right() + GAP, SAFE, w - SAFE - code.right() - GAP, h - 2 * SAFE);
    Area facts = new Area(SAFE, SAFE, left - 2 * SAFE, h - 2 * SAFE);
    return new LabelLayout(
        Arrangement.AROUND,
        name,
        ids,
        Optional.of(facts).filter(a -> a.w() >= LEAST_TEXT_WIDTH),
        code,
        months,
        0);
  }

  /** The code below the middle, as low as its corners allow; the words above it. */
  private static LabelLayout round(double diameter) {
    double outer = diameter / 2 - SAFE;
    double ring = Math.min(5, Math.max(2.6, 0.068 * diameter));
    double inner = outer - ring;
    double side = Math.min(MOST_CODE, Math.max(LEAST_CODE + 0.12, 0.8 * inner));
    double foot = Math.sqrt(Math.max(0, inner * inner - side * side / 4));
    double middle = diameter / 2;
    Area code = new Area(middle - side / 2, middle + foot - side, side, side);
    double clear = inner - GAP;
    double above = foot - side;
    Area months = new Area(SAFE, SAFE, 2 * outer, 2 * outer);
    double high = 0.79 * clear;
    double nameHeight = 0.56 * (high + above);
    double idsHeight = high + above - nameHeight;
    if (idsHeight < ROOMY_IDS) {
      double low = 0.72 * clear;
      Area words = chord(middle, clear, low, low + above);
      return new LabelLayout(Arrangement.ROUND, words, words, Optional.empty(), code, months, ring);
    }
    Area name = chord(middle, clear, high, nameHeight - GAP);
    Area ids = chord(middle, clear, high - nameHeight, idsHeight);
    return new LabelLayout(Arrangement.ROUND, name, ids, Optional.empty(), code, months, ring);
  }

  /**
   * The widest box that begins {@code up} above the middle of a disc and lies in its upper half.
   */
  private static Area chord(double middle, double radius, double up, double height) {
    double half = Math.sqrt(Math.max(0, radius * radius - up * up));
    return new Area(middle - half, middle - up, 2 * half, height);
  }

  private static Area strip(double w, double h, double x, double width) {
    double height = Math.min(8.5, Math.max(4.4, Math.min(0.17 * h, 0.075 * w)));
    return new Area(x, h - SAFE - height, width, height);
  }

  /** The areas for a template, by their names. */
  Map<String, Object> view() {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("arrangement", arrangement.name().toLowerCase(Locale.ROOT));
    view.put("name", name.view());
    view.put("ids", ids.view());
    facts.ifPresent(a -> view.put("facts", a.view()));
    view.put("code", code.view());
    view.put("months", months.view());
    view.put("together", ids.equals(name));
    view.put("ring", ring);
    view.put("dial", ring > 0 ? dial() : List.of());
    return view;
  }

  /** The months of a ring: from the left of its foot round to the right of it. */
  private List<Map<String, Object>> dial() {
    double radius = (months.w() - ring) / 2;
    double middle = months.w() / 2;
    double step = (360.0 - FOOT_OF_DIAL) / MONTHS;
    List<Map<String, Object>> dial = new ArrayList<>();
    for (int month = 0; month < MONTHS; month++) {
      double from = 180 + FOOT_OF_DIAL / 2 + month * step;
      double at = Math.toRadians(from + step / 2);
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("from", from);
      one.put("to", from + step);
      one.put("x", middle + radius * Math.sin(at));
      one.put("y", middle - radius * Math.cos(at));
      dial.add(one);
    }
    return dial;
  }
}
