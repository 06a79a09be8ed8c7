package jarwright.render;

import java.util.ArrayList;
import java.util.List;

/**
 * Words placed on a canvas: anchored to a point, or fitted into a box. Fitting sets them as large
 * as they go between {@code size} and {@code min}; parts that may be dropped are, the highest
 * {@code drop} first, when all together would be smaller than {@code drop-below}.
 */
final class PlacedText implements Canvas.Item {
  private final Element at;
  private final double x;
  private final double y;
  private final double width;
  private final double tall;
  private final String valign;
  private final int turn;
  private final Style style;
  private final List<Fitting.Part> parts = new ArrayList<>();
  private final Fitting fitting;
  private Fitting.Fitted fitted;

  private PlacedText(Markup markup, Element element, Style outer) {
    at = element;
    x = element.mm("x");
    y = element.mm("y");
    boolean boxed = element.has("w") || element.has("h");
    width = boxed ? element.mm("w") : element.mm("w", 0);
    tall = boxed ? element.mm("h") : element.mm("h", 0);
    valign = element.choice("valign", "top", "top", "middle", "bottom");
    turn = element.whole("turn", 0, -90, 90);
    boolean wraps = element.yes("wrap", true);
    style = outer.read(element);
    double least = element.size("min", style.size());
    double dropBelow = Math.min(style.size(), element.size("drop-below", least));
    element.done();
    fitting =
        new Fitting(
            element,
            style.size(),
            least,
            dropBelow,
            wraps,
            turn == 0 ? width : tall,
            turn == 0 ? tall : width);
    if (turn % 90 != 0) {
      throw element.bad("turn", String.valueOf(turn), "0, 90 or -90");
    }
    if (boxed && !(width > 0 && tall > 0)) {
      throw element.fault("<text> needs a box wider and higher than nothing");
    }
    content(markup);
  }

  static Canvas.Item read(Markup markup, Element element, Style style) {
    return new PlacedText(markup, element, style);
  }

  private void content(Markup markup) {
    Inline inline = new Inline(markup);
    for (Object next = markup.next(); next != null; next = markup.next()) {
      if (next instanceof String words) {
        inline.add(words, style);
      } else if (((Element) next).name().equals("part")) {
        inline = flush(inline, markup);
        part(markup, (Element) next);
      } else if (Inline.holds(((Element) next).name())) {
        inline.add((Element) next, style);
      } else {
        throw ((Element) next).notHere(at, "part", Inline.names());
      }
    }
    flush(inline, markup);
  }

  private Inline flush(Inline inline, Markup markup) {
    if (!inline.isEmpty()) {
      Galley galley = Galley.of(inline.pieces(), PageCount.UNKNOWN, at);
      parts.add(new Fitting.Part(galley, style, 0));
    }
    return new Inline(markup);
  }

  private void part(Markup markup, Element element) {
    int drop = element.whole("drop", 0, 0, 99);
    double scale = element.number("scale", 1);
    Style own = style.sized(Math.max(Element.LEAST_SIZE, style.size() * scale)).read(element);
    element.done();
    List<Piece> pieces = Inline.read(markup, element, own);
    if (!pieces.isEmpty()) {
      parts.add(new Fitting.Part(Galley.of(pieces, PageCount.UNKNOWN, element), own, drop));
    }
  }

  @Override
  public void paint(Side side, double left, double top) {
    if (parts.isEmpty()) {
      return;
    }
    side.content(
        "P",
        () -> {
          if (width > 0) {
            boxed(side.pen(), left + x, top + y);
          } else {
            anchored(side.pen(), left + x, top + y);
          }
        });
  }

  /** One line from, around or up to the point, which lies on its baseline. */
  private void anchored(Pen pen, double px, double py) {
    for (Fitting.Part part : parts) {
      int n = part.galley().length();
      double wide = part.galley().width(0, n);
      double back = wide * share(part.style());
      Line line = new Line(0, n, n, false, wide);
      double dx = turn == 0 ? -back : 0;
      double dy = turn == 0 ? 0 : turn > 0 ? back : -back;
      part.galley().draw(line, pen, px + dx, py + dy, 1, turn);
    }
  }

  private static double share(Style style) {
    return style.align().equals("center") ? 0.5 : style.align().equals("right") ? 1 : 0;
  }

  private void boxed(Pen pen, double bx, double by) {
    if (fitted == null) {
      fitted = fitting.fit(parts);
    }
    double slack = fitting.across() - fitted.tall();
    double down = valign.equals("middle") ? slack / 2 : valign.equals("bottom") ? slack : 0;
    for (Fitting.Setting set : fitted.parts()) {
      Galley galley = set.part().galley();
      double scale = set.scale();
      for (Line line : set.lines()) {
        double[] reach = galley.reach(line);
        double in = (fitting.along() - line.width() * scale) * share(set.part().style());
        double base = down + reach[0] * scale;
        if (turn == 0) {
          galley.draw(line, pen, bx + in, by + base, scale, 0);
        } else if (turn > 0) {
          galley.draw(line, pen, bx + base, by + tall - in, scale, turn);
        } else {
          galley.draw(line, pen, bx + width - base, by + in, scale, turn);
        }
        down += (reach[0] + reach[1]) * scale;
      }
    }
  }
}
