package jarwright.label;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A rectangle on a label in mm, from the label's upper left corner.
 *
 * @param x left edge
 * @param y upper edge
 * @param w width
 * @param h height
 */
record Area(double x, double y, double w, double h) {
  double right() {
    return x + w;
  }

  double foot() {
    return y + h;
  }

  boolean overlaps(Area other) {
    return x < other.right() && other.x < right() && y < other.foot() && other.y < foot();
  }

  /** The measures for a template, keyed {@code x}, {@code y}, {@code w}, {@code h}. */
  Map<String, Object> view() {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("x", x);
    view.put("y", y);
    view.put("w", w);
    view.put("h", h);
    return view;
  }
}
