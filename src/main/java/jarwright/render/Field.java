package jarwright.render;

import jarwright.page.DoesNotFit;
import java.util.List;

/** One place to write in: a caption, a rule or a white box, and the unit after it. */
final class Field {
  private static final double GAP = Units.pt(1.8);

  private final Element at;
  private final double write;
  private final double tall;
  private final boolean boxed;
  private final boolean below;
  private final Tone ink;
  private final Paragraph caption;
  private final Paragraph unit;

  Field(Markup markup, Element element, Style outer) {
    at = element;
    String captionText = element.text("caption", "");
    String unitText = element.text("unit", "");
    write = element.has("w") ? element.mm("w") : element.mm("w", 0);
    tall = element.mm("h", 9);
    boxed = element.yes("boxed", false);
    below = element.choice("caption-at", "left", "left", "below").equals("below");
    Style style = outer.read(element).aligned("left");
    ink = style.tone();
    element.done();
    markup.end(element);
    caption = words(captionText, below ? style.sized(Math.max(6, style.size() * 0.75)) : style);
    unit = words(unitText, style);
  }

  private Paragraph words(String text, Style style) {
    List<Piece> pieces = text.isEmpty() ? List.of() : List.of(Piece.Words.of(text, style, 1));
    return new Paragraph(at, pieces, style, Paragraph.Room.NONE, new Paragraph.Role("P", 0, ""));
  }

  private double beside() {
    double left = below ? 0 : room(caption);
    return left + room(unit);
  }

  private static double room(Paragraph words) {
    double width = words.natural();
    return width > 0 ? width + GAP : 0;
  }

  /** Its width in pt; without a {@code w} of its own it takes all there is. */
  double width(double available) {
    double wide = write > 0 ? beside() + write : available;
    if (below) {
      wide = Math.max(wide, caption.natural());
    }
    if (wide > available + 0.1) {
      throw new DoesNotFit(at.where(), Units.mm(wide), Units.mm(available));
    }
    return wide;
  }

  double height() {
    return tall + (below ? caption.height(10_000) + 1 : 0);
  }

  void paint(Side side, double x, double top, double width) {
    double left = below ? x : x + room(caption);
    double right = x + width - room(unit);
    double foot = top + tall;
    Pen pen = side.pen();
    if (!below && room(caption) > 0) {
      caption.paint(side, x, baselined(caption, foot), room(caption));
    }
    side.artifact(
        () -> {
          if (boxed) {
            pen.fillRect(Tone.WHITE, left, top, right - left, tall);
            pen.strokeRect(ink, 1, left, top, right - left, tall);
          } else {
            pen.straight(ink, 1, 0, left, foot - 0.5, right, foot - 0.5);
          }
        });
    if (room(unit) > 0) {
      unit.paint(side, right + GAP, baselined(unit, foot), room(unit));
    }
    if (below) {
      caption.paint(side, x, foot + 1, Math.max(width, 1));
    }
  }

  /** The top of words that stand on the rule, or in the middle of a box. */
  private double baselined(Paragraph words, double foot) {
    if (boxed) {
      return foot - tall / 2 - words.firstMiddle(10_000);
    }
    return foot - words.height(10_000) + 1.5;
  }
}
