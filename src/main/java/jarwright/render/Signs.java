package jarwright.render;

/** Small drawings among words: write-in blanks, boxes, and signs that no typeface need have. */
final class Signs {
  private Signs() {}

  static Piece read(Element element, Style style, int glue) {
    return switch (element.name()) {
      case "blank" -> blank(element, style, glue);
      case "box" -> box(element, style, glue);
      default -> sign(element, style, glue);
    };
  }

  private static Piece blank(Element element, Style style, int glue) {
    double width = element.mm("w");
    double weight = element.weight("line", 0.75);
    element.done();
    Tone tone = style.tone();
    return new Piece.Drawn(
        width,
        style.size(),
        glue,
        (pen, x, y, scale) ->
            pen.straight(tone, weight, 0, x, y + 1.5 * scale, x + width * scale, y + 1.5 * scale));
  }

  private static Piece box(Element element, Style style, int glue) {
    double size = element.mm("size", Units.mm(style.size() * 0.9));
    double weight = element.weight("line", 0.9);
    element.done();
    Tone tone = style.tone();
    double down = size / 2 - style.face().capHeight() * style.size() / 2;
    return new Piece.Drawn(
        size,
        size - down,
        glue,
        (pen, x, y, scale) ->
            pen.strokeRect(tone, weight, x, y - (size - down) * scale, size * scale, size * scale));
  }

  private static Piece sign(Element element, Style style, int glue) {
    String name =
        element.choice("name", null, "tick", "cross", "warning", "clock", "arrow", "drop");
    element.done();
    return of(name, style, glue);
  }

  /** A sign as high as the capitals of {@code style}. */
  static Piece of(String name, Style style, int glue) {
    double cap = style.face().capHeight() * style.size();
    double width = (name.equals("warning") ? 1.15 : 1) * cap;
    Tone tone = style.tone();
    return new Piece.Drawn(
        width,
        cap,
        glue,
        (pen, x, y, scale) -> draw(name, pen, tone, x, y - cap * scale, cap * scale));
  }

  /** A sign in a square of {@code s} whose upper left corner is given. */
  static void draw(String name, Pen pen, Tone tone, double x, double top, double s) {
    double w = s * 0.13;
    switch (name) {
      case "tick" ->
          pen.paint(
              null,
              tone,
              w,
              0,
              () -> pen.polygonPath(at(x, top, s, .05, .55, .35, .9, .95, .1), false));
      case "cross" -> {
        pen.straight(tone, w, 0, x + s * .1, top + s * .1, x + s * .9, top + s * .9);
        pen.straight(tone, w, 0, x + s * .1, top + s * .9, x + s * .9, top + s * .1);
      }
      case "warning" -> {
        pen.paint(
            null,
            tone,
            s * .11,
            0,
            () -> pen.polygonPath(at(x, top, s, .57, .06, 1.1, .95, .05, .95), true));
        pen.straight(tone, s * .12, 0, x + s * .575, top + s * .36, x + s * .575, top + s * .66);
        pen.fillRect(tone, x + s * .515, top + s * .74, s * .12, s * .11);
      }
      case "clock" -> {
        pen.paint(null, tone, s * .1, 0, () -> pen.circlePath(x + s / 2, top + s / 2, s * .45));
        pen.paint(
            null,
            tone,
            s * .1,
            0,
            () -> pen.polygonPath(at(x, top, s, .5, .2, .5, .52, .72, .66), false));
      }
      case "arrow" -> {
        pen.straight(tone, w, 0, x, top + s / 2, x + s * .9, top + s / 2);
        pen.paint(
            null, tone, w, 0, () -> pen.polygonPath(at(x, top, s, .6, .2, .93, .5, .6, .8), false));
      }
      case "drop" -> {
        pen.paint(tone, tone, 0, 0, () -> pen.circlePath(x + s / 2, top + s * .66, s * .3));
        pen.paint(
            tone,
            tone,
            0,
            0,
            () -> pen.polygonPath(at(x, top, s, .5, .02, .765, .52, .235, .52), true));
      }
      default -> throw new IllegalArgumentException("no sign " + name);
    }
  }

  private static double[] at(double x, double top, double s, double... shares) {
    double[] points = new double[shares.length];
    for (int i = 0; i < shares.length; i += 2) {
      points[i] = x + shares[i] * s;
      points[i + 1] = top + shares[i + 1] * s;
    }
    return points;
  }
}
