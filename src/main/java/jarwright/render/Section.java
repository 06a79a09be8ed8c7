package jarwright.render;

import com.lowagie.text.pdf.PdfTemplate;
import java.util.ArrayList;
import java.util.List;

/**
 * A run of sides with the same head and foot, its pages numbered from 1. Heads and feet hold the
 * count of pages, so they are drawn on forms that are filled when the section ends.
 */
final class Section implements Flow.Frames {
  private final Pages pages;
  private final Blocks blocks;
  private final boolean turned;
  private final boolean newSheet;
  private final double top;
  private final double right;
  private final double bottom;
  private final double left;
  private final double binding;
  private final int columns;
  private final double gap;
  private final Style style;
  private final List<PdfTemplate> forms = new ArrayList<>();
  private final List<Double> edges = new ArrayList<>();
  private List<Canvas.Item> ground = List.of();
  private Stack header;
  private Stack footer;
  private Side side;
  private int column;

  private Section(Pages pages, Markup markup, Element element, Style outer) {
    this.pages = pages;
    this.blocks = new Blocks(markup);
    double margin = element.number("margin", 12);
    top = element.mm("top", margin);
    right = element.mm("right", margin);
    bottom = element.mm("bottom", margin);
    left = element.mm("left", margin);
    binding = element.mm("binding", 0);
    turned = element.yes("turned", false);
    newSheet = element.choice("starts", "side", "side", "sheet").equals("sheet");
    columns = element.whole("columns", 1, 1, 6);
    gap = element.mm("gap", 6);
    style = outer.read(element);
    element.done();
  }

  /** Reads a {@code section} element to its end and draws its sides. */
  static void print(Pages pages, Markup markup, Element element, Style style) {
    new Section(pages, markup, element, style).print(element);
  }

  private void print(Element element) {
    boolean body = false;
    Markup markup = blocks.markup();
    for (Element child = markup.child(element); child != null; child = markup.child(element)) {
      switch (child.name()) {
        case "ground" -> {
          if (body || !ground.isEmpty()) {
            throw child.fault("a <section> has one <ground>, before the <body>");
          }
          Style inner = style.read(child);
          child.done();
          ground = new Canvas(markup, new QrCodes()).read(child, inner.aligned("left"));
        }
        case "header" -> header = running(child, body || header != null);
        case "footer" -> footer = running(child, body || footer != null);
        case "body" -> {
          if (body) {
            throw child.fault("a <section> has one <body>");
          }
          body = true;
          Style inner = style.read(child);
          child.done();
          Flow flow = new Flow(this);
          blocks.read(child, inner, flow);
          flow.finish();
        }
        default -> throw child.notHere(element, "ground", "header", "footer", "body");
      }
    }
    if (!body) {
      throw element.fault("a <section> needs a <body>");
    }
    fillForms();
  }

  private Stack running(Element element, boolean tooLate) {
    if (tooLate) {
      throw element.fault("<" + element + "> stands once, before the <body>");
    }
    Style small = style.sized(Math.max(6, style.size() * 0.8)).read(element);
    element.done();
    return blocks.stack(element, small, false);
  }

  @Override
  public Flow.Frame next() {
    if (side == null || column + 1 >= columns) {
      return newSide(side == null && newSheet);
    }
    column++;
    return frame();
  }

  @Override
  public Flow.Frame newSide(boolean sheet) {
    if (sheet && pages.count() % 2 == 1) {
      pages.begin(turned);
      if (side != null) {
        addForm();
      }
    }
    side = pages.begin(turned);
    column = 0;
    addForm();
    return frame();
  }

  private Flow.Frame frame() {
    double wide = wide();
    double each = (wide - gap * (columns - 1)) / columns;
    double above = header == null ? 0 : header.height(wide) + Units.pt(3);
    double below = footer == null ? 0 : footer.height(wide) + Units.pt(3);
    double x = edge() + column * (each + gap);
    return new Flow.Frame(side, x, top + above, each, side.height() - bottom - below);
  }

  private double wide() {
    return pages.width(turned) - left - right - binding;
  }

  /** Where the column begins: fronts are bound at the left, backs at the right. */
  private double edge() {
    return pages.count() % 2 == 1 ? left + binding : left;
  }

  private void addForm() {
    if (header != null || footer != null || !ground.isEmpty()) {
      forms.add(pages.addForm(turned));
      edges.add(edge());
    }
  }

  private void fillForms() {
    double wide = wide();
    for (int i = 0; i < forms.size(); i++) {
      double edge = edges.get(i);
      Side form = pages.onForm(forms.get(i), turned, new PageCount(i + 1, forms.size()));
      form.tags()
          .untagged(
              () -> {
                ground.forEach(item -> item.paint(form, edge, top));
                if (header != null) {
                  header.paint(form, edge, top, wide);
                }
                if (footer != null) {
                  double y = form.height() - bottom - footer.height(wide);
                  footer.paint(form, edge, y, wide);
                }
              });
    }
  }
}
