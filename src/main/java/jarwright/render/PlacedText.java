package jarwright.render;

import jarwright.page.DoesNotFit;
import java.util.ArrayList;
import java.util.List;

/**
 * Words placed on a canvas: anchored to a point, or fitted into a box. Fitting sets them as large
 * as they go between {@code size} and {@code min}; parts that may be dropped are, the highest
 * {@code drop} first, when all together would be smaller than {@code drop-below}.
 */
final class PlacedText implements Canvas.Item {
  private static final double STEP = 0.25;

  /** Words are divided only when keeping them whole would cost more than a fifth of the size. */
  private static final double WHOLE_WORDS = 0.8;

  private record Part(Galley galley, Style style, int drop) {
    /** The scale at which it is set when the whole is set at {@code scale}: never below 6 pt. */
    double scale(double scale) {
      return Math.max(scale, Element.LEAST_SIZE / style.size());
    }
  }

  private record Setting(Part part, List<Line> lines, double scale) {
    double tall() {
      double tall = 0;
      for (Line line : lines) {
        double[] reach = part.galley().reach(line);
        tall += (reach[0] + reach[1]) * scale;
      }
      return tall;
    }
  }

  private record Fitted(List<Setting> parts, double scale, double tall) {}

  private final Element at;
  private final double x;
  private final double y;
  private final double width;
  private final double tall;
  private final double least;
  private final double dropBelow;
  private final boolean wraps;
  private final String valign;
  private final int turn;
  private final Style style;
  private final List<Part> parts = new ArrayList<>();
  private Fitted fitted;

  private PlacedText(Markup markup, Element element, Style outer) {
    at = element;
    x = element.mm("x");
    y = element.mm("y");
    boolean boxed = element.has("w") || element.has("h");
    width = boxed ? element.mm("w") : element.mm("w", 0);
    tall = boxed ? element.mm("h") : element.mm("h", 0);
    valign = element.choice("valign", "top", "top", "middle", "bottom");
    turn = element.whole("turn", 0, -90, 90);
    wraps = element.yes("wrap", true);
    style = outer.read(element);
    least = element.size("min", style.size());
    dropBelow = Math.min(style.size(), element.size("drop-below", least));
    element.done();
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
      parts.add(new Part(galley, style, 0));
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
      parts.add(new Part(Galley.of(pieces, PageCount.UNKNOWN, element), own, drop));
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
    for (Part part : parts) {
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
      fitted = fit();
    }
    double along = along();
    double slack = across() - fitted.tall();
    double down = valign.equals("middle") ? slack / 2 : valign.equals("bottom") ? slack : 0;
    for (Setting set : fitted.parts()) {
      Galley galley = set.part().galley();
      double scale = set.scale();
      for (Line line : set.lines()) {
        double[] reach = galley.reach(line);
        double in = (along - line.width() * scale) * share(set.part().style());
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

  private Fitted fit() {
    List<Part> left = new ArrayList<>(parts);
    while (true) {
      Fitted found = largest(left);
      if (found != null) {
        return found;
      }
      int most = left.stream().mapToInt(Part::drop).max().orElse(0);
      if (most == 0) {
        throw tooLarge(left);
      }
      left.removeIf(part -> part.drop() == most);
    }
  }

  private Fitted largest(List<Part> some) {
    boolean bare = some.stream().allMatch(part -> part.drop() == 0);
    double smallest = (bare ? least : Math.max(least, dropBelow)) / style.size();
    Fitted whole = search(some, smallest, false);
    if (whole != null && whole.scale() >= WHOLE_WORDS) {
      return whole;
    }
    Fitted divided = search(some, smallest, true);
    boolean saves =
        divided != null && (whole == null || whole.scale() < WHOLE_WORDS * divided.scale());
    return saves ? divided : whole;
  }

  /** The largest scale at which the parts fit, found by halving the range of steps. */
  private Fitted search(List<Part> some, double smallest, boolean divide) {
    int low = 0;
    int high = (int) Math.ceil(style.size() * (1 - smallest) / STEP - 1e-6);
    Fitted best = null;
    while (low <= high) {
      int middle = best == null && low == 0 ? 0 : (low + high) / 2;
      double scale = Math.max(smallest, 1 - middle * STEP / style.size());
      Fitted found = at(some, scale, divide);
      if (found != null) {
        best = found;
        high = middle - 1;
      } else {
        low = middle + 1;
      }
    }
    return best;
  }

  private Fitted at(List<Part> some, double scale, boolean divide) {
    List<Setting> all = new ArrayList<>();
    double height = 0;
    for (Part part : some) {
      Setting set = set(part, scale, divide);
      if (set == null) {
        return null;
      }
      height += set.tall();
      all.add(set);
    }
    return height <= across() + 0.01 ? new Fitted(all, scale, height) : null;
  }

  /** The part in lines, or null if a word or the one line is too wide. */
  private Setting set(Part part, double whole, boolean divide) {
    double scale = part.scale(whole);
    Style style = divide ? part.style() : part.style().whole();
    List<Line> lines = Breaking.lines(part.galley(), style, along() / scale, false);
    return lines == null || (!wraps && lines.size() > 1) ? null : new Setting(part, lines, scale);
  }

  private double along() {
    return turn == 0 ? width : tall;
  }

  private double across() {
    return turn == 0 ? tall : width;
  }

  private DoesNotFit tooLarge(List<Part> some) {
    double scale = least / style.size();
    double height = 0;
    for (Part part : some) {
      Setting set = set(part, scale, true);
      if (set == null) {
        double needs = part.galley().width(0, part.galley().length()) * part.scale(scale);
        return new DoesNotFit(
            at.where() + " " + Markup.shorten(part.galley().text()),
            Units.mm(needs),
            Units.mm(along()));
      }
      height += set.tall();
    }
    String first = some.isEmpty() ? "" : " " + Markup.shorten(some.get(0).galley().text());
    return new DoesNotFit(at.where() + first, Units.mm(height), Units.mm(across()));
  }
}
