package jarwright.render;

import java.util.ArrayList;
import java.util.List;

/** A row of big figures with unit and caption, as on an instrument. */
final class Readings implements Block {
  private static final double PAD = Units.pt(2.2);

  private record Reading(Element at, Stack words, double share) {}

  private final Element at;
  private final double around;
  private final boolean keep;
  private final double line;
  private final Tone tint;
  private final Tone ink;
  private final List<Reading> readings = new ArrayList<>();

  private Readings(Markup markup, Element element, Style outer) {
    at = element;
    around = element.mm("around", 2.5);
    keep = element.yes("keep", false);
    line = element.weight("line", 1.2);
    tint = outer.shop().tone(element, "tint", null);
    double figure = element.size("figure", outer.size() * 2.2);
    Style style = outer.read(element);
    ink = style.tone();
    element.done();
    for (Element child = markup.child(element); child != null; child = markup.child(element)) {
      if (!child.name().equals("reading")) {
        throw child.notHere(element, "reading");
      }
      readings.add(reading(markup, child, style, figure));
    }
    if (readings.isEmpty()) {
      throw element.fault("<readings> needs at least one <reading>");
    }
  }

  static Readings read(Markup markup, Element element, Style style) {
    return new Readings(markup, element, style);
  }

  private static Reading reading(Markup markup, Element element, Style outer, double size) {
    String value = element.text("value");
    String unit = element.text("unit", "");
    String caption = element.text("caption");
    double share = element.number("share", 1);
    double figure = element.size("figure", size);
    Style style = outer.read(element);
    element.done();
    markup.end(element);
    Style big = new Style(style.shop(), true, figure, 1.05, style.tone(), style.align(), false);
    List<Piece> pieces =
        new ArrayList<>(Fractions.set(value, big, style.shop().typeface().figures(), 1));
    if (!unit.isEmpty()) {
      Style small = style.bolder().sized(Math.max(style.size(), figure * 0.45));
      pieces.add(Piece.Words.of("\u00A0" + unit, small, 1));
    }
    Style under = style.sized(Math.max(6, style.size() * 0.82));
    Paragraph.Role plain = Paragraph.Role.PLAIN;
    List<Block> blocks =
        List.of(
            new Paragraph(element, pieces, big, Paragraph.Room.NONE, plain),
            new Paragraph(
                element,
                List.of(Piece.Words.of(caption, under, 0)),
                under,
                Paragraph.Room.NONE,
                plain));
    return new Reading(element, new Stack(element, blocks, false), share);
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

  private double wide(int i, double width) {
    double shares = readings.stream().mapToDouble(Reading::share).sum();
    return width * readings.get(i).share() / shares;
  }

  @Override
  public double height(double width) {
    double height = 0;
    for (int i = 0; i < readings.size(); i++) {
      height = Math.max(height, readings.get(i).words().height(wide(i, width) - 2 * PAD));
    }
    return height + 2 * PAD;
  }

  @Override
  public void paint(Side side, double x, double top, double width) {
    double height = height(width);
    Pen pen = side.pen();
    side.artifact(
        () -> {
          if (tint != null) {
            pen.fillRect(tint, x, top, width, height);
          }
          if (line > 0) {
            pen.strokeRect(ink, line, x, top, width, height);
          }
        });
    double left = x;
    for (int i = 0; i < readings.size(); i++) {
      double wide = wide(i, width);
      if (i > 0 && line > 0) {
        double at = left;
        side.artifact(() -> pen.straight(ink, line / 2 + 0.25, 0, at, top, at, top + height));
      }
      readings.get(i).words().paint(side, left + PAD, top + PAD, wide - 2 * PAD);
      left += wide;
    }
  }
}
