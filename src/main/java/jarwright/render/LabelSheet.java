package jarwright.render;

import jarwright.page.LabelShape;
import jarwright.page.LabelStock;
import jarwright.page.Registration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Labels on the positions of their stock, each clipped to its shape. */
final class LabelSheet {
  private static final double CORNER = Units.pt(2);

  /** So many labels are read before the first is drawn: meanwhile their codes are encoded. */
  private static final int AHEAD = 60;

  private final Pages pages;
  private final Markup markup;
  private final Element at;
  private final LabelStock stock;
  private final Registration registration;
  private final Style style;
  private final double cut;
  private int place;
  private Side side;

  private LabelSheet(Pages pages, Markup markup, Element element, Style outer) {
    this.pages = pages;
    this.markup = markup;
    this.at = element;
    this.stock = stock(element);
    this.registration = registration(element);
    this.place = element.whole("start", 1, 1, stock.labelsPerSheet()) - 1;
    this.cut = element.weight("cut", 0);
    this.style = new Style(outer.shop(), false, 10, 1.15, Tone.BLACK, "left", true).read(element);
    element.done();
  }

  /** Reads a {@code labels} element to its end and draws its sheets. */
  static void print(Pages pages, Markup markup, Element element, Style style) {
    new LabelSheet(pages, markup, element, style).print();
  }

  private LabelStock stock(Element element) {
    try {
      return new LabelStock(
          element.text("id", "labels"),
          pages.paper(),
          LabelShape.parse(element.text("shape")),
          (int) element.number("columns"),
          (int) element.number("rows"),
          element.number("w"),
          element.number("h"),
          element.number("left"),
          element.number("top"),
          element.number("pitch-x"),
          element.number("pitch-y"));
    } catch (IllegalArgumentException e) {
      throw element.fault(e.getMessage());
    }
  }

  private static Registration registration(Element element) {
    try {
      return new Registration(
          element.number("right", 0), element.number("down", 0), element.number("scale", 1));
    } catch (IllegalArgumentException e) {
      throw element.fault(e.getMessage());
    }
  }

  private void print() {
    Canvas canvas = new Canvas(markup, new QrCodes());
    Deque<List<Canvas.Item>> read = new ArrayDeque<>();
    for (Element child = markup.child(at); child != null; child = markup.child(at)) {
      if (!child.name().equals("label")) {
        throw child.notHere(at, "label");
      }
      Style own = style.read(child);
      child.done();
      read.add(canvas.read(child, own));
      if (read.size() > AHEAD) {
        next(read.remove());
      }
    }
    read.forEach(this::next);
    if (side == null) {
      begin();
    }
    side.pen().restore();
  }

  private void next(List<Canvas.Item> label) {
    if (side == null) {
      begin();
    } else if (place == stock.labelsPerSheet()) {
      side.pen().restore();
      begin();
      place = 0;
    }
    label(stock.position(place++), label);
  }

  private void begin() {
    side = pages.begin(false);
    side.pen().save();
    side.pen()
        .transform(
            registration.scale(), Units.pt(registration.right()), Units.pt(registration.down()));
  }

  private void label(LabelStock.Position position, List<Canvas.Item> items) {
    double x = Units.pt(position.x());
    double y = Units.pt(position.y());
    Pen pen = side.pen();
    pen.save();
    pen.clip(() -> outline(pen, x, y));
    side.tags().inside("Sect", () -> items.forEach(item -> item.paint(side, x, y)));
    pen.restore();
    if (cut > 0) {
      side.artifact(() -> pen.paint(null, Tone.BLACK, cut, 0, () -> outline(pen, x, y)));
    }
  }

  private void outline(Pen pen, double x, double y) {
    double w = Units.pt(stock.labelWidth());
    double h = Units.pt(stock.labelHeight());
    switch (stock.shape()) {
      case CIRCLE -> pen.circlePath(x + w / 2, y + h / 2, w / 2);
      case ROUNDED_RECT -> pen.rectPath(x, y, w, h, CORNER);
      default -> pen.rectPath(x, y, w, h, 0);
    }
  }
}
