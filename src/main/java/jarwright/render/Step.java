package jarwright.render;

import java.util.List;

/** One step, hanging on the line down the margin, which is thick where time must run. */
final class Step implements Block {
  private static final double SPINE = Units.pt(2.2);
  private static final double THIN = 1.2;
  private static final double THICK = Units.pt(3.2);
  private static final double HANG = Units.pt(6);
  private static final double GAP = Units.pt(2.5);

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
  private final StepBody body;
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
    Response response = Response.read(element, style);
    element.done();
    this.number = label.isEmpty() ? null : label(label);
    body = StepBody.read(blocks, element, style, response);
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

  /** From the top to the line on which box, number and the first words have their middle. */
  private double middle(double width) {
    double text = width - textLeft();
    double label = number == null ? 0 : number.firstMiddle(text);
    return Math.max(Math.max(box / 2, label), body.firstMiddle(text));
  }

  /** How far the words move down so that their first line has its middle there. */
  private double drop(double width) {
    double first = body.firstMiddle(width - textLeft());
    return first > 0 ? middle(width) - first : 0;
  }

  @Override
  public double height(double width) {
    double words = drop(width) + body.height(width - textLeft());
    return Math.max(words, middle(width) + box / 2) + look.gap();
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
    double textWidth = width - textLeft();
    double y = top + drop(width);
    if (number != null) {
      double down = middle(width) - number.firstMiddle(textWidth);
      number.paint(side, x + labelLeft(), top + down, number.natural() + 1);
    }
    side.tags().inside("LBody", () -> body.paint(side, x + textLeft(), y, textWidth));
  }

  private void furniture(Pen pen, double x, double top, double width) {
    double middle = top + middle(width);
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
