package jarwright.render;

import jarwright.page.DoesNotFit;
import java.util.List;

/** A canvas of fixed size in a column, with words that say what it shows. */
final class Drawing implements Block {
  private final Element at;
  private final double wide;
  private final double tall;
  private final double around;
  private final boolean keep;
  private final String alt;
  private final String align;
  private final List<Canvas.Item> items;

  private Drawing(Markup markup, Element element, Style outer) {
    at = element;
    wide = element.mm("w");
    tall = element.mm("h");
    around = element.mm("around", 1.5);
    keep = element.yes("keep", false);
    alt = element.text("alt");
    Style style = outer.read(element);
    align = style.align();
    element.done();
    items = new Canvas(markup, new QrCodes()).read(element, style.aligned("left"));
  }

  static Drawing read(Markup markup, Element element, Style style) {
    return new Drawing(markup, element, style);
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
    if (wide > width + 0.1) {
      throw new DoesNotFit(at.where(), Units.mm(wide), Units.mm(width));
    }
    return tall;
  }

  @Override
  public void paint(Side side, double x, double top, double width) {
    double slack = width - wide;
    double left = align.equals("center") ? x + slack / 2 : align.equals("right") ? x + slack : x;
    Runnable paint = () -> items.forEach(item -> item.paint(side, left, top));
    if (alt.isEmpty()) {
      side.artifact(paint);
    } else {
      side.tags().figure(alt, () -> side.bounds(left, top, wide, tall), side.content(), paint);
    }
  }
}
