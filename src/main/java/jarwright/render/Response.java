package jarwright.render;

import java.util.ArrayList;
import java.util.List;

/**
 * The figure to act on, at the right end of a step's first line, or below its words where the line
 * would leave them too little room. A sum of measures may go on in the next line after a plus; no
 * part of it is divided.
 */
final class Response {
  private static final double SCALE = 1.4;
  private static final double ALSO_SCALE = 0.86;
  private static final double GAP = Units.pt(3);

  /** The part of the line that the words keep at least. */
  private static final double LEFT_TO_WORDS = 0.42;

  private final Paragraph figure;

  private Response(Paragraph figure) {
    this.figure = figure;
  }

  /** The response of a step; null if it has none. */
  static Response read(Element element, Style style) {
    String main = element.text("figure", "");
    String also = element.text("also", "");
    if (main.isEmpty()) {
      return null;
    }
    List<Piece> pieces = new ArrayList<>();
    Style big = style.bolder().sized(style.size() * SCALE);
    // the line of the words, so that figure and words stand on the same middle
    Style line =
        new Style(
            style.shop(), true, big.size(), style.leading() / SCALE, style.tone(), "right", false);
    String[] parts = main.split(" (?<=\\+ )", -1);
    for (int i = 0; i < parts.length; i++) {
      pieces.addAll(Fractions.set(parts[i], line, style.shop().typeface().figures(), i + 1));
      if (i + 1 < parts.length) {
        pieces.add(Piece.Words.of(" ", line, 0));
      }
    }
    if (!also.isEmpty()) {
      Style small = style.sized(style.size() * ALSO_SCALE);
      pieces.add(Piece.Words.of("\u00A0 ", small, 0));
      pieces.addAll(Fractions.set(also, small, small.face(), 0));
    }
    return new Response(
        new Paragraph(element, pieces, line, Paragraph.Room.NONE, Paragraph.Role.PLAIN).whole());
  }

  /** The width of a line that is left to the step's words. */
  double leaves(double width) {
    return beside(width) ? width - figure.natural() - GAP : width;
  }

  private boolean beside(double width) {
    return width - figure.natural() - GAP >= LEFT_TO_WORDS * width;
  }

  double heightWith(double words, double width) {
    double own = figure.height(width);
    return beside(width) ? Math.max(words, own) : words + own;
  }

  /**
   * Paints the figure.
   *
   * @param words height of the step's words
   * @param middle of the words' first line, from their top
   */
  void paint(Side side, double x, double top, double width, double words, double middle) {
    double down = beside(width) ? Math.max(0, middle - figure.firstMiddle(width)) : words;
    figure.paint(side, x, top + down, width);
  }
}
