package jarwright.render;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import jarwright.page.TemplateFault;
import java.util.List;
import java.util.Map;

/**
 * Part of a canvas that is one picture with words of its own for readers who cannot see it, or mere
 * ornament. Pictures of one name are alike: they are read and drawn once, and shown wherever they
 * stand, which keeps a thousand labels small.
 *
 * @param x left edge on the canvas around it, in pt
 * @param y upper edge
 * @param alt what it shows; empty for ornament
 * @param drawn what is on it
 */
record Picture(double x, double y, String alt, Drawn drawn) implements Canvas.Item {

  /** The content, placed from its own upper left corner. */
  static final class Drawn {
    private final double w;
    private final double h;
    private final boolean shared;
    private final List<Canvas.Item> items;
    private PdfTemplate form;

    Drawn(double w, double h, boolean shared, List<Canvas.Item> items) {
      this.w = w;
      this.h = h;
      this.shared = shared;
      this.items = items;
    }

    void paint(Side side, double left, double top) {
      if (!shared) {
        items.forEach(item -> item.paint(side, left, top));
        return;
      }
      PdfContentByte to = side.content();
      if (form == null) {
        form = to.createTemplate((float) w, (float) h);
        Pen pen = new Pen(form, h);
        Side own = new Side(pen, side.tags(), side.count(), side.bookmarks(), h);
        side.tags().untagged(() -> items.forEach(item -> item.paint(own, 0, 0)));
      }
      to.addTemplate(form, (float) left, (float) (side.height() - top - h));
    }
  }

  /**
   * Reads a {@code picture} element to its end.
   *
   * @param named the pictures of the canvas that have a name; gets this one
   */
  static Picture read(Canvas canvas, Map<String, Drawn> named, Element element, Style style) {
    double x = element.mm("x");
    double y = element.mm("y");
    String alt = element.text("alt");
    String name = element.text("name", "");
    double w = element.mm("w");
    double h = element.mm("h");
    Style own = style.read(element);
    element.done();
    Drawn before = name.isEmpty() ? null : named.get(name);
    List<Canvas.Item> items = canvas.read(element, own);
    if (before == null) {
      Drawn drawn = new Drawn(w, h, !name.isEmpty(), items);
      named.put(name, drawn);
      return new Picture(x, y, alt, drawn);
    }
    if (!items.isEmpty()) {
      throw again(element, name);
    }
    return new Picture(x, y, alt, before);
  }

  private static TemplateFault again(Element element, String name) {
    return element.fault(
        "a picture named \"" + name + "\" stands before; this one must be empty to repeat it");
  }

  @Override
  public void paint(Side side, double left, double top) {
    Runnable paint = () -> drawn.paint(side, left + x, top + y);
    if (alt.isEmpty()) {
      side.artifact(paint);
    } else {
      side.tags()
          .figure(
              alt, () -> side.bounds(left + x, top + y, drawn.w, drawn.h), side.content(), paint);
    }
  }
}
