package jarwright.render;

import java.util.ArrayList;
import java.util.List;

/** Places to write in, side by side, going on in a new row where the width ends. */
final class Fields implements Block {
  private final Element at;
  private final double gap;
  private final double rowGap;
  private final double around;
  private final boolean keep;
  private final List<Field> fields = new ArrayList<>();

  private Fields(Blocks blocks, Element element, Style outer) {
    at = element;
    gap = element.mm("gap", 6);
    rowGap = element.mm("row-gap", 2);
    around = element.mm("around", 1.5);
    keep = element.yes("keep", false);
    Style style = outer.read(element);
    element.done();
    for (Element child = blocks.markup().child(element);
        child != null;
        child = blocks.markup().child(element)) {
      if (!child.name().equals("field")) {
        throw child.notHere(element, "field");
      }
      fields.add(new Field(blocks.markup(), child, style));
    }
  }

  static Fields read(Blocks blocks, Element element, Style style) {
    return new Fields(blocks, element, style);
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

  /** Walks the rows; returns the height. */
  private double walk(double width, Visitor visitor) {
    double x = 0;
    double y = 0;
    double row = 0;
    for (Field field : fields) {
      double wide = field.width(width);
      if (x > 0 && x + wide > width + 0.1) {
        x = 0;
        y += row + rowGap;
        row = 0;
      }
      visitor.visit(field, x, y, wide);
      row = Math.max(row, field.height());
      x += wide + gap;
    }
    return y + row;
  }

  private interface Visitor {
    void visit(Field field, double x, double y, double width);
  }

  @Override
  public double height(double width) {
    return walk(width, (field, x, y, wide) -> {});
  }

  @Override
  public void paint(Side side, double left, double top, double width) {
    walk(width, (field, x, y, wide) -> field.paint(side, left + x, top + y, wide));
  }
}
