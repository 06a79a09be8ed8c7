package jarwright.render;

import jarwright.page.DoesNotFit;
import java.util.List;

/** Words broken into lines. */
final class Paragraph implements Block {
  private final Element at;
  private final List<Piece> pieces;
  private final Style style;
  private final Room room;
  private final Role role;
  private boolean whole;
  private Galley galley;
  private List<Line> lines;
  private double setAt = -1;

  /** The room above and below in pt, and whether the next block must follow on the same side. */
  record Room(double before, double after, boolean keep) {
    static final Room NONE = new Room(0, 0, false);
  }

  /**
   * What the words are.
   *
   * @param tag the structure element; empty if the words are the content of an open one
   * @param level the heading level; 0 for none
   * @param bookmark its entry in the outline; empty for none
   */
  record Role(String tag, int level, String bookmark) {
    static final Role PLAIN = new Role("P", 0, "");
  }

  Paragraph(Element at, List<Piece> pieces, Style style, Room room, Role role) {
    this.at = at;
    this.pieces = pieces;
    this.style = style;
    this.room = room;
    this.role = role;
  }

  private Paragraph(Paragraph of, List<Line> some, double width, Room room) {
    this(of.at, of.pieces, of.style, room, of.role);
    this.galley = of.galley;
    this.lines = some;
    this.setAt = width;
  }

  /** The same words, of which none may be cut: a figure in two parts would be another figure. */
  Paragraph whole() {
    whole = true;
    return this;
  }

  @Override
  public double before() {
    return room.before();
  }

  @Override
  public double after() {
    return room.after();
  }

  @Override
  public boolean keepsWithNext() {
    return room.keep();
  }

  @Override
  public Element at() {
    return at;
  }

  /** The width its longest line would take unbroken. */
  double natural() {
    Galley all = Galley.of(pieces, PageCount.UNKNOWN, at);
    return all.width(0, all.length());
  }

  private void set(double width, PageCount count) {
    if (setAt != width || changes()) {
      if (galley == null || changes()) {
        galley = Galley.of(pieces, count, at);
      }
      lines = Breaking.lines(galley, style, width, !whole);
      if (lines == null) {
        throw new DoesNotFit(at.where(), Units.mm(natural()), Units.mm(width));
      }
      setAt = width;
    }
  }

  private boolean changes() {
    return pieces.stream().anyMatch(Piece.PageNumber.class::isInstance);
  }

  @Override
  public double height(double width) {
    if (width <= 0) {
      throw new DoesNotFit(at.where(), 1, Units.mm(width));
    }
    set(width, PageCount.UNKNOWN);
    double height = 0;
    for (Line line : lines) {
      double[] reach = galley.reach(line);
      height += reach[0] + reach[1];
    }
    return height;
  }

  /** From the top to the middle of the first line's capitals. */
  double firstMiddle(double width) {
    set(width, PageCount.UNKNOWN);
    return lines.isEmpty() ? 0 : galley.reach(lines.get(0))[0] - galley.halfCap();
  }

  @Override
  public void paint(Side side, double x, double top, double width) {
    set(width, side.count());
    if (lines.isEmpty()) {
      return;
    }
    if (role.level() > 0) {
      if (!side.bookmarks().mayFollow(role.level())) {
        throw at.fault("a heading of level " + role.level() + " stands under none one level up");
      }
      String title = role.bookmark().isEmpty() ? galley.text().strip() : role.bookmark();
      side.bookmarks().add(role.level(), title, side.height() - top + 6);
    }
    if (role.tag().isEmpty()) {
      lines(side.pen(), x, top, width);
    } else {
      side.content(role.tag(), () -> lines(side.pen(), x, top, width));
    }
  }

  private void lines(Pen pen, double x, double top, double width) {
    double y = top;
    for (Line line : lines) {
      double[] reach = galley.reach(line);
      double slack = width - line.width();
      double left =
          switch (style.align()) {
            case "right" -> x + slack;
            case "center" -> x + slack / 2;
            default -> x;
          };
      galley.draw(line, pen, left, y + reach[0], 1, 0);
      y += reach[0] + reach[1];
    }
  }

  @Override
  public List<Block> split(double width, double most) {
    set(width, PageCount.UNKNOWN);
    double height = 0;
    int fit = 0;
    for (Line line : lines) {
      double[] reach = galley.reach(line);
      height += reach[0] + reach[1];
      if (height > most) {
        break;
      }
      fit++;
    }
    fit = Math.min(fit, lines.size() - 2);
    if (fit < 2 || role.level() > 0) {
      return List.of();
    }
    Room first = new Room(room.before(), 0, false);
    Room rest = new Room(0, room.after(), room.keep());
    return List.of(
        new Paragraph(this, lines.subList(0, fit), width, first),
        new Paragraph(this, lines.subList(fit, lines.size()), width, rest));
  }
}
