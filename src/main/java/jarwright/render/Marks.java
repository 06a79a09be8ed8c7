package jarwright.render;

import java.util.ArrayList;
import java.util.List;

/** Numbered boxes to tick or rings to strike, in rows. */
final class Marks implements Block {
  private final Element at;
  private final boolean ring;
  private final double size;
  private final double gap;
  private final double around;
  private final boolean keep;
  private final List<String> labels;
  private final List<String> struck;
  private final Style style;

  private Marks(Markup markup, Element element, Style outer) {
    at = element;
    ring = element.choice("shape", "box", "box", "ring").equals("ring");
    size = element.mm("size", 7);
    gap = element.mm("gap", 1.5);
    around = element.mm("around", 1);
    keep = element.yes("keep", false);
    int from = element.whole("from", 1, 0, 1_000_000);
    int count = element.whole("count", 0, 0, 10_000);
    List<String> given = element.list("labels");
    struck = element.list("struck");
    Style own = outer.read(element);
    style = own.sized(Math.max(6, Math.min(own.size(), size * (ring ? 0.42 : 0.38))));
    element.done();
    markup.end(element);
    if (given.isEmpty() == (count == 0)) {
      throw element.fault("<marks> needs either a count or labels");
    }
    labels = new ArrayList<>(given);
    for (int i = 0; i < count; i++) {
      labels.add(String.valueOf(from + i));
    }
    Galley.of(List.of(Piece.Words.of(String.join(" ", labels), style, 0)), PageCount.UNKNOWN, at);
  }

  static Marks read(Markup markup, Element element, Style style) {
    return new Marks(markup, element, style);
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

  private int perRow(double width) {
    return Math.max(1, (int) ((width + gap + 0.01) / (size + gap)));
  }

  @Override
  public double height(double width) {
    int rows = (labels.size() + perRow(width) - 1) / perRow(width);
    return rows * (size + gap) - gap;
  }

  @Override
  public void paint(Side side, double x, double top, double width) {
    int perRow = perRow(width);
    side.artifact(() -> outlines(side.pen(), x, top, perRow));
    side.content("P", () -> numbers(side.pen(), x, top, perRow));
  }

  private void outlines(Pen pen, double left, double top, int perRow) {
    for (int i = 0; i < labels.size(); i++) {
      double x = left + i % perRow * (size + gap);
      int row = i / perRow;
      double y = top + row * (size + gap);
      if (ring) {
        double half = size / 2;
        pen.paint(null, style.tone(), 0.9, 0, () -> pen.circlePath(x + half, y + half, half - 0.5));
      } else {
        pen.strokeRect(style.tone(), 1.1, x, y, size, size);
      }
      if (struck.contains(labels.get(i))) {
        double in = size * 0.14;
        pen.straight(style.tone(), 1.4, 0, x + in, y + size - in, x + size - in, y + in);
      }
    }
  }

  private void numbers(Pen pen, double left, double top, int perRow) {
    Face face = style.face();
    for (int i = 0; i < labels.size(); i++) {
      double x = left + i % perRow * (size + gap);
      int row = i / perRow;
      double y = top + row * (size + gap);
      double wide = face.width(labels.get(i), style.size());
      double fit = Math.min(1, (size - 2.5) / wide);
      double type = style.size() * fit;
      double cap = face.capHeight() * type;
      double inset = ring ? (size - wide * fit) / 2 : 1.1 + size * 0.07;
      double down = ring ? (size + cap) / 2 : 1.1 + size * 0.08 + cap;
      String more = i + 1 < labels.size() ? " " : "";
      pen.text(face, type, style.tone(), x + inset, y + down, labels.get(i) + more);
    }
  }
}
