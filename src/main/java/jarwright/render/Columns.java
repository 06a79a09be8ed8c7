package jarwright.render;

import java.util.ArrayList;
import java.util.List;

/** Stacks side by side, as high as the highest. */
final class Columns implements Block {
  private final Element at;
  private final Widths widths;
  private final double gap;
  private final double around;
  private final double line;
  private final boolean keep;
  private final String valign;
  private final Tone ink;
  private final List<Stack> stacks = new ArrayList<>();

  private Columns(Blocks blocks, Element element, Style style) {
    at = element;
    gap = element.mm("gap", 5);
    widths = new Widths(element, "widths", gap);
    around = element.mm("around", 1);
    line = element.weight("line", 0);
    keep = element.yes("keep", false);
    valign = element.choice("valign", "top", "top", "middle", "bottom");
    ink = style.tone();
    element.done();
    for (Element column = blocks.markup().child(element);
        column != null;
        column = blocks.markup().child(element)) {
      if (!column.name().equals("column")) {
        throw column.notHere(element, "column");
      }
      Style inner = style.read(column);
      column.done();
      stacks.add(blocks.stack(column, inner, false));
    }
    if (stacks.size() != widths.count()) {
      throw element.fault(
          "<columns> names " + widths.count() + " widths for " + stacks.size() + " columns");
    }
  }

  static Columns read(Blocks blocks, Element element, Style style) {
    return new Columns(blocks, element, style);
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
    double[] each = widths.within(width);
    double height = 0;
    for (int i = 0; i < each.length; i++) {
      height = Math.max(height, stacks.get(i).height(each[i]));
    }
    return height;
  }

  @Override
  public void paint(Side side, double x, double top, double width) {
    double[] each = widths.within(width);
    double height = height(width);
    double left = x;
    for (int i = 0; i < each.length; i++) {
      if (i > 0 && line > 0) {
        double middle = left - gap / 2;
        side.artifact(() -> side.pen().straight(ink, line, 0, middle, top, middle, top + height));
      }
      double slack = height - stacks.get(i).height(each[i]);
      double down = valign.equals("middle") ? slack / 2 : valign.equals("bottom") ? slack : 0;
      stacks.get(i).paint(side, left, top + down, each[i]);
      left += each[i] + gap;
    }
  }
}
