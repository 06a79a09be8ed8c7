package jarwright.render;

import com.lowagie.text.pdf.PdfTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Words placed on a canvas: anchored to a point, or fitted into a box. Fitting sets them as large
 * as they go between {@code size} and {@code min}; parts that may be dropped are, the highest
 * {@code drop} first, when all together would be smaller than {@code drop-below}. Words with a name
 * are drawn once, and shown wherever they stand.
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
  private final boolean shared;
  private final Fitting fitting;
  private final Fitting.Fitted fitted;
  private PdfTemplate form;

  private PlacedText(Markup markup, Fits fits, Element element, Style outer, boolean shared) {
    at = element;
    this.shared = shared;
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
    if (shared && !boxed) {
      throw element.fault("<text> with a name needs a box: w and h");
    }
    content(markup);
    fitted = boxed ? fits.fit(fitting, parts) : null;
  }

  /**
   * Reads a {@code text} element to its end.
   *
   * @param named the texts of the canvas that have a name; gets this one, or gives it again
   */
  static Canvas.Item read(
      Markup markup, Fits fits, Map<String, PlacedText> named, Element element, Style style) {
    String name = element.text("name", "");
    PlacedText before = named.get(name);
    if (before == null) {
      PlacedText read = new PlacedText(markup, fits, element, style, !name.isEmpty());
      if (!name.isEmpty()) {
        named.put(name, read);
      }
      return read;
    }
    if (!element.isBare() || markup.next() != null) {
      throw element.fault(
          "a text named \""
              + name
              + "\" stands before; this one must have its name alone, to repeat it");
    }
    return before;
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
      parts.add(new Fitting.Part(parts.size(), galley, style, 0));
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
      Galley galley = Galley.of(pieces, PageCount.UNKNOWN, element);
      parts.add(new Fitting.Part(parts.size(), galley, own, drop));
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
          if (shared) {
            stamp(side, left + x, top + y);
          } else if (fitted != null) {
            boxed(side.pen(), left + x, top + y);
          } else {
            anchored(side.pen(), left + x, top + y);
          }
        });
  }

  /**
   * Shows a form with the words, on which there is room for what of a letter is outside the box.
   */
  private void stamp(Side side, double bx, double by) {
    double edge = style.size();
    double high = tall + 2 * edge;
    if (form == null) {
      form = side.content().createTemplate((float) (width + 2 * edge), (float) high);
      boxed(new Pen(form, high), edge, edge);
    }
    side.content()
        .addTemplate(form, (float) (bx - edge), (float) (side.height() - by + edge - high));
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
