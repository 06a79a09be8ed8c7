package jarwright.render;

import java.util.List;

/** Blocks on a tint, in a frame, or both. */
final class Panel implements Block {
  private final Element at;
  private final Tone tint;
  private final Tone ink;
  private final double line;
  private final double radius;
  private final double pad;
  private final double around;
  private final boolean keep;
  private final Stack inside;

  private Panel(Blocks blocks, Element element, Style outer) {
    Shop shop = outer.shop();
    at = element;
    tint = shop.tone(element, "tint", null);
    line = element.weight("line", tint == null ? 1 : 0);
    radius = element.mm("radius", 0);
    pad = element.mm("pad", 3);
    around = element.mm("around", 3);
    keep = element.yes("keep", false);
    Style style = outer.read(element);
    ink = shop.tone(element, "frame", style.tone());
    element.done();
    inside = blocks.stack(element, style, false);
  }

  static Panel read(Blocks blocks, Element element, Style style) {
    return new Panel(blocks, element, style);
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

  private double inset() {
    return pad + line;
  }

  @Override
  public double height(double width) {
    return inside.height(width - 2 * inset()) + 2 * inset();
  }

  @Override
  public void paint(Side side, double x, double top, double width) {
    double height = height(width);
    double half = line / 2;
    side.artifact(
        () ->
            side.pen()
                .paint(
                    tint,
                    ink,
                    line,
                    0,
                    () ->
                        side.pen()
                            .rectPath(x + half, top + half, width - line, height - line, radius)));
    inside.paint(side, x + inset(), top + inset(), width - 2 * inset());
  }

  @Override
  public List<Block> split(double width, double room) {
    return List.of();
  }
}
