package jarwright.render;

import java.util.List;

/**
 * Part of a canvas that is one picture with words of its own for readers who cannot see it, or mere
 * ornament.
 *
 * @param x left edge on the canvas around it, in pt
 * @param y upper edge
 * @param alt what it shows; empty for ornament
 * @param items placed from its own upper left corner
 */
record Picture(double x, double y, double w, double h, String alt, List<Canvas.Item> items)
    implements Canvas.Item {

  /** Reads a {@code picture} element to its end. */
  static Picture read(Canvas canvas, Element element, Style style) {
    double x = element.mm("x");
    double y = element.mm("y");
    double w = element.mm("w");
    double h = element.mm("h");
    String alt = element.text("alt");
    Style own = style.read(element);
    element.done();
    return new Picture(x, y, w, h, alt, canvas.read(element, own));
  }

  @Override
  public void paint(Side side, double left, double top) {
    Runnable paint = () -> items.forEach(item -> item.paint(side, left + x, top + y));
    if (alt.isEmpty()) {
      side.artifact(paint);
    } else {
      side.tags().figure(alt, () -> side.bounds(left + x, top + y, w, h), side.content(), paint);
    }
  }
}
