package jarwright.render;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Shapes and words placed by millimetres from an upper left corner: a drawing or a label. */
final class Canvas {
  private static final String NAMES = "rect, circle, line, polygon, arc, text, sign, qr, picture";

  /** One thing on the canvas. */
  interface Item {
    /** Draws it on a canvas whose upper left corner is at {@code x}, {@code top} (pt). */
    void paint(Side side, double x, double top);
  }

  private final Markup markup;
  private final QrCodes codes;
  private final Fits fits = new Fits();
  private final Map<String, PlacedText> texts = new HashMap<>();
  private final Map<String, Picture.Drawn> pictures = new HashMap<>();

  Canvas(Markup markup, QrCodes codes) {
    this.markup = markup;
    this.codes = codes;
  }

  /** Everything in {@code parent}, in the order in which it is drawn. */
  List<Item> read(Element parent, Style style) {
    List<Item> items = new ArrayList<>();
    for (Element child = markup.child(parent); child != null; child = markup.child(parent)) {
      items.add(item(parent, child, style));
    }
    return items;
  }

  private Item item(Element parent, Element element, Style style) {
    return switch (element.name()) {
      case "text" -> PlacedText.read(markup, fits, texts, element, style);
      case "qr" -> codes.read(markup, element);
      case "picture" -> Picture.read(this, pictures, element, style);
      case "rect", "circle", "line", "polygon", "arc", "sign" -> {
        Item shape = Shapes.read(element, style);
        markup.end(element);
        yield shape;
      }
      default -> throw element.notHere(parent, NAMES);
    };
  }
}
