package jarwright.render;

import java.util.ArrayList;
import java.util.List;

/**
 * A caution: a bar hatched like a barrier stands beside it, and its lead word in bold capitals'
 * place begins it. No other element looks so, and it shows on any printer.
 */
final class Caution implements Block {
  private static final double BAR = Units.pt(4);
  private static final double GAP = Units.pt(3);
  private static final double PAD = Units.pt(1.5);

  private final Element at;
  private final Tone ink;
  private final boolean keep;
  private final double around;
  private final boolean brief;
  private final Stack inside;

  private Caution(Blocks blocks, Element element, Style outer) {
    at = element;
    brief = element.yes("brief", false);
    String word = brief ? element.text("word", "") : element.text("word");
    keep = element.yes("keep", false);
    around = element.mm("around", brief ? 0.6 : 2.5);
    Style style = outer.read(element);
    ink = style.tone();
    element.done();
    Style lead = style.bolder().sized(style.size() * 1.08);
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Signs.of("warning", lead, 1));
    pieces.add(Piece.Words.of("\u00A0", lead, 1));
    List<Block> all = new ArrayList<>();
    if (brief) {
      pieces.add(Piece.Words.of(word.isEmpty() ? "" : word + " ", style.bolder(), 1));
      pieces.addAll(Inline.read(blocks.markup(), element, style));
      all.add(new Paragraph(element, pieces, style, Paragraph.Room.NONE, Paragraph.Role.PLAIN));
    } else {
      pieces.add(Piece.Words.of(word, lead, 1));
      Paragraph.Room room = new Paragraph.Room(0, 1, true);
      all.add(new Paragraph(element, pieces, lead, room, Paragraph.Role.PLAIN));
      blocks.read(element, style, all::add);
    }
    inside = new Stack(element, all, false);
  }

  static Caution read(Blocks blocks, Element element, Style style) {
    return new Caution(blocks, element, style);
  }

  @Override
  public double before() {
    return around;
  }

  @Override
  public double after() {
    return around;
  }

  @Override
  public boolean keepsWithNext() {
    return keep;
  }

  @Override
  public Element at() {
    return at;
  }

  @Override
  public double height(double width) {
    return inside.height(width - BAR - GAP) + 2 * pad();
  }

  /** The width that it would take on one line. */
  double natural() {
    return inside.natural() + BAR + GAP;
  }

  boolean isBrief() {
    return brief;
  }

  /** From the top to the middle of its first line. */
  double firstMiddle(double width) {
    return pad() + inside.firstMiddle(width - BAR - GAP);
  }

  private double pad() {
    return brief ? 0 : PAD;
  }

  @Override
  public void paint(Side side, double x, double top, double width) {
    double height = height(width);
    Pen pen = side.pen();
    side.artifact(
        () -> {
          pen.hatch(ink, 3.2, 4.6, x, top, BAR, height, () -> pen.rectPath(x, top, BAR, height, 0));
          pen.strokeRect(ink, 1, x, top, BAR, height);
          if (!brief) {
            pen.straight(ink, 1, 0, x, top + 0.5, x + width, top + 0.5);
            pen.straight(ink, 1, 0, x, top + height - 0.5, x + width, top + height - 0.5);
          }
        });
    inside.paint(side, x + BAR + GAP, top + pad(), width - BAR - GAP);
  }
}
