package jarwright.render;

import java.util.List;

/** The shapes of a canvas: rect, circle, line, polygon, arc, sign. */
final class Shapes {

  /** How a shape is filled and outlined. */
  private record Paint(Tone fill, Tone ink, double line, double dash, double hatch, double stroke) {

    static Paint read(Element element, Style style, boolean outlined) {
      Tone fill = style.shop().tone(element, "fill", null);
      double hatch = element.mm("hatch", 0);
      double stroke = element.weight("hatch-line", 0.6);
      boolean bare = outlined && fill == null && hatch == 0;
      return new Paint(
          fill,
          style.shop().tone(element, "ink", style.tone()),
          element.weight("line", bare ? 0.75 : 0),
          element.mm("dash", 0),
          hatch,
          stroke);
    }

    void draw(Pen pen, double[] box, Runnable path) {
      if (fill != null) {
        pen.paint(fill, ink, 0, 0, path);
      }
      if (hatch > 0) {
        pen.hatch(ink, stroke, hatch, box[0], box[1], box[2], box[3], path);
      }
      pen.paint(null, ink, line, dash, path);
    }
  }

  private Shapes() {}

  static Canvas.Item read(Element element, Style style) {
    return switch (element.name()) {
      case "rect" -> rect(element, style);
      case "circle" -> circle(element, style);
      case "line" -> line(element, style);
      case "polygon" -> polygon(element, style);
      case "arc" -> arc(element, style);
      default -> sign(element, style);
    };
  }

  private static Canvas.Item rect(Element element, Style style) {
    double x = element.mm("x");
    double y = element.mm("y");
    double w = element.mm("w");
    double h = element.mm("h");
    double radius = element.mm("radius", 0);
    Paint paint = Paint.read(element, style, true);
    element.done();
    double in = paint.line() / 2;
    return (side, left, top) ->
        side.artifact(
            () ->
                paint.draw(
                    side.pen(),
                    new double[] {left + x, top + y, w, h},
                    () ->
                        side.pen()
                            .rectPath(
                                left + x + in, top + y + in, w - 2 * in, h - 2 * in, radius)));
  }

  private static Canvas.Item circle(Element element, Style style) {
    double cx = element.mm("cx");
    double cy = element.mm("cy");
    double r = element.mm("r");
    Paint paint = Paint.read(element, style, true);
    element.done();
    return (side, left, top) ->
        side.artifact(
            () ->
                paint.draw(
                    side.pen(),
                    new double[] {left + cx - r, top + cy - r, 2 * r, 2 * r},
                    () -> side.pen().circlePath(left + cx, top + cy, r - paint.line() / 2)));
  }

  private static Canvas.Item line(Element element, Style style) {
    double x1 = element.mm("x1");
    double y1 = element.mm("y1");
    double x2 = element.mm("x2");
    double y2 = element.mm("y2");
    double weight = element.weight("line", 0.75);
    double dash = element.mm("dash", 0);
    Tone ink = style.shop().tone(element, "ink", style.tone());
    element.done();
    return (side, left, top) ->
        side.artifact(
            () -> side.pen().straight(ink, weight, dash, left + x1, top + y1, left + x2, top + y2));
  }

  private static Canvas.Item polygon(Element element, Style style) {
    List<String> numbers = element.list("points");
    boolean closed = element.yes("closed", true);
    Paint paint = Paint.read(element, style, true);
    element.done();
    if (numbers.size() < 4 || numbers.size() % 2 != 0) {
      throw element.fault("<polygon> needs points as \"x,y x,y x,y\" in mm");
    }
    double[] points = new double[numbers.size()];
    double[] box = {1e9, 1e9, -1e9, -1e9};
    for (int i = 0; i < points.length; i++) {
      try {
        points[i] = Units.pt(Double.parseDouble(numbers.get(i)));
      } catch (NumberFormatException e) {
        throw element.bad("points", numbers.get(i), "numbers of mm");
      }
      box[i % 2] = Math.min(box[i % 2], points[i]);
      box[i % 2 + 2] = Math.max(box[i % 2 + 2], points[i]);
    }
    return (side, left, top) ->
        side.artifact(
            () ->
                paint.draw(
                    side.pen(),
                    new double[] {left + box[0], top + box[1], box[2] - box[0], box[3] - box[1]},
                    () -> side.pen().polygonPath(moved(points, left, top), closed)));
  }

  private static double[] moved(double[] points, double x, double y) {
    double[] moved = points.clone();
    for (int i = 0; i < moved.length; i++) {
      moved[i] += i % 2 == 0 ? x : y;
    }
    return moved;
  }

  private static Canvas.Item arc(Element element, Style style) {
    double cx = element.mm("cx");
    double cy = element.mm("cy");
    double r = element.mm("r");
    double from = element.number("from");
    double until = element.number("to");
    boolean sector = element.yes("sector", false);
    Paint paint = Paint.read(element, style, true);
    element.done();
    return (side, left, top) ->
        side.artifact(
            () ->
                paint.draw(
                    side.pen(),
                    new double[] {left + cx - r, top + cy - r, 2 * r, 2 * r},
                    () -> side.pen().arcPath(left + cx, top + cy, r, from, until, sector)));
  }

  private static Canvas.Item sign(Element element, Style style) {
    double x = element.mm("x");
    double y = element.mm("y");
    double size = element.mm("size");
    String name =
        element.choice("name", null, "tick", "cross", "warning", "clock", "arrow", "drop");
    Tone ink = style.shop().tone(element, "ink", style.tone());
    element.done();
    return (side, left, top) ->
        side.artifact(() -> Signs.draw(name, side.pen(), ink, left + x, top + y, size));
  }
}
