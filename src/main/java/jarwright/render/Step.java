package jarwright.render;

import java.util.ArrayList;
import java.util.List;

/** One step, hanging on the line down the margin, which is thick where time must run. */
final class Step implements Block {
  private static final double SPINE = Units.pt(2.2);
  private static final double THIN = 1.2;
  private static final double THICK = Units.pt(3.2);
  private static final double HANG = Units.pt(6);
  private static final double GAP = Units.pt(2.5);

  /** Room between a step's words and a caution on their line. */
  private static final double ASIDE = Units.pt(4);

  /**
   * What all steps of a list share.
   *
   * @param box side of the box to tick, in pt; 0 for none
   * @param numbered whether each has a number
   * @param spine whether they hang on a line
   * @param gap room below each, in pt
   */
  record Look(double box, boolean numbered, boolean spine, double gap) {}

  private final Element at;
  private final Look look;
  private final Tags.Later list;
  private final String line;
  private final double box;
  private final boolean keep;
  private final double above;
  private final Style style;
  private final Paragraph number;
  private final Response response;
  private final Stack lead;
  private final Caution caution;
  private final Stack rest;
  private double below;

  Step(
      Blocks blocks,
      Element element,
      Style outer,
      Look look,
      Tags.Later list,
      int number,
      double above) {
    this.at = element;
    this.look = look;
    this.list = list;
    this.above = above;
    line = element.choice("line", "thin", "thin", "thick", "dashed", "none");
    box = element.mm("box", Units.mm(look.box()));
    keep = element.yes("keep", false);
    style = outer.read(element);
    String label = element.text("label", look.numbered() ? number + "." : "");
    response = Response.read(element, style);
    element.done();
    this.number = label.isEmpty() ? null : label(label);
    List<Block> all = new ArrayList<>();
    blocks.read(element, style, all::add);
    int first = Math.min(1, all.size());
    lead = new Stack(element, all.subList(0, first), false);
    rest = new Stack(element, all.subList(first, all.size()), false);
    boolean warns = all.size() == 2 && all.get(1) instanceof Caution only && only.isBrief();
    caution = warns ? (Caution) all.get(1) : null;
  }

  private Paragraph label(String text) {
    Style bold = style.bolder();
    return new Paragraph(
        at,
        List.of(Piece.Words.of(text, bold, 1)),
        bold,
        Paragraph.Room.NONE,
        new Paragraph.Role("Lbl", 0, ""));
  }

  /** Sets the room below the last step. */
  void endWith(double room) {
    below = room;
  }

  @Override
  public double before() {
    return above;
  }

  @Override
  public double after() {
    return below;
  }

  @Override
  public boolean keepsWithNext() {
    return keep;
  }

  @Override
  public Element at() {
    return at;
  }

  private double boxLeft() {
    return look.spine() ? HANG : 0;
  }

  private double labelLeft() {
    return boxLeft() + (look.box() > 0 ? look.box() + GAP : 0);
  }

  private double textLeft() {
    double labelWidth = number == null ? 0 : Math.max(style.size() * 1.5, number.natural() + 5);
    return labelLeft() + labelWidth;
  }

  /** How far the words move down so that their first line stands in the middle of the box. */
  private double drop(double width) {
    return Math.max(0, box / 2 - lead.firstMiddle(leadWidth(width)));
  }

  private double leadWidth(double width) {
    double all = width - textLeft();
    return response == null ? all : response.leaves(all);
  }

  private double leadHeight(double width) {
    double tall = lead.height(leadWidth(width));
    return response == null ? tall : response.heightWith(tall, width - textLeft());
  }

  /** Whether a lone brief caution has room on the line of the words, at their right. */
  private boolean besideWords(double width) {
    return caution != null && lead.natural() + ASIDE + caution.natural() + 0.5 <= leadWidth(width);
  }

  private double between(double width) {
    return rest.isEmpty() || besideWords(width) ? 0 : Math.max(lead.after(), rest.before());
  }

  private double bodyHeight(double width) {
    double tail = besideWords(width) ? 0 : rest.height(width - textLeft());
    return leadHeight(width) + between(width) + tail;
  }

  @Override
  public double height(double width) {
    double words = drop(width) + bodyHeight(width);
    return Math.max(words, box) + look.gap();
  }

  @Override
  public void paint(Side side, double x, double top, double width) {
    side.tags()
        .inside(
            list,
            () ->
                side.tags()
                    .inside(
                        "LI",
                        () -> {
                          side.artifact(() -> furniture(side.pen(), x, top, width));
                          words(side, x, top, width);
                        }));
  }

  private void words(Side side, double x, double top, double width) {
    double textWidth = leadWidth(width);
    double y = top + drop(width);
    if (number != null) {
      double down = Math.max(0, lead.firstMiddle(textWidth) - number.firstMiddle(textWidth));
      number.paint(side, x + labelLeft(), y + down, number.natural() + 1);
    }
    side.tags()
        .inside(
            "LBody",
            () -> {
              double room = width - textLeft();
              lead.paint(side, x + textLeft(), y, textWidth);
              if (response != null) {
                double tall = lead.height(textWidth);
                response.paint(side, x + textLeft(), y, room, tall, lead.firstMiddle(textWidth));
              }
              if (besideWords(width)) {
                double left = x + textLeft() + lead.natural() + ASIDE;
                double wide = caution.natural() + 0.5;
                double down = lead.firstMiddle(textWidth) - caution.firstMiddle(wide);
                caution.paint(side, left, y + down, wide);
              } else {
                double below = y + leadHeight(width) + between(width);
                rest.paint(side, x + textLeft(), below, room);
              }
            });
  }

  private void furniture(Pen pen, double x, double top, double width) {
    double middle = top + drop(width) + lead.firstMiddle(leadWidth(width));
    double bottom = top + height(width);
    Tone ink = style.tone();
    if (look.spine() && !line.equals("none")) {
      double weight = line.equals("thick") ? THICK : THIN;
      double spine = x + SPINE;
      pen.straight(ink, weight, line.equals("dashed") ? 3 : 0, spine, top, spine, bottom);
      double end = box > 0 ? x + boxLeft() : x + labelLeft() - 2;
      pen.straight(ink, THIN, 0, spine, middle, end, middle);
    }
    if (box > 0) {
      pen.strokeRect(ink, 1.3, x + boxLeft(), middle - box / 2, box, box);
    }
  }
}
