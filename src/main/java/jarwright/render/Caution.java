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
  private final Stack inside;

  private Caution(Blocks blocks, Element element, Style outer) {
    at = element;
    String word = element.text("word");
    keep = element.yes("keep", false);
    around = element.mm("around", 2.5);
    Style style = outer.read(element);
    ink = style.tone();
    element.done();
    Style lead = style.bolder().sized(style.size() * 1.08);
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Signs.of("warning", lead, 1));
    pieces.add(Piece.Words.of("\u00A0", lead, 1));
    pieces.add(Piece.Words.of(word, lead, 1));
    List<Block> all = new ArrayList<>();
    all.add(
        new Paragraph(element, pieces, lead, new Paragraph.Room(0, 1, true), Paragraph.Role.PLAIN));
    blocks.read(element, style, all::add);
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
    return inside.height(width - BAR - GAP) + 2 * PAD;
  }

  @Override
  public void paint(Side side, double x, double top, double width) {
    double height = height(width);
    Pen pen = side.pen();
    side.artifact(
        () -> {
          pen.hatch(ink, 3.2, 4.6, x, top, BAR, height, () -> pen.rectPath(x, top, BAR, height, 0));
          pen.strokeRect(ink, 1, x, top, BAR, height);
          pen.straight(ink, 1, 0, x, top + 0.5, x + width, top + 0.5);
          pen.straight(ink, 1, 0, x, top + height - 0.5, x + width, top + height - 0.5);
        });
    inside.paint(side, x + BAR + GAP, top + PAD, width - BAR - GAP);
  }
}
