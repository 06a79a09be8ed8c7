package jarwright.render;

import com.lowagie.text.pdf.PdfTemplate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

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
  private final List<Block> waiting = new ArrayList<>();
  private final Running header = new Running();
  private final Running footer = new Running();
  private List<Canvas.Item> ground = List.of();
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

  /** Reads a {@code section} element to its end and draws its sides as it reads. */
  static void print(Pages pages, Markup markup, Element element, Style style) {
    Section section = new Section(pages, markup, element, style);
    Flow flow = new Flow(section);
    section.read(element, flow);
    section.finish(flow);
  }

  /** Reads a {@code section} element to its end, to be measured and drawn later. */
  static Section read(Pages pages, Markup markup, Element element, Style style) {
    Section section = new Section(pages, markup, element, style);
    section.read(element, section.waiting::add);
    return section;
  }

  /** How many sides it would take. */
  int sides() {
    Trial trial = new Trial();
    Flow flow = new Flow(trial);
    waiting.forEach(flow);
    flow.finish();
    return trial.sides;
  }

  void draw() {
    Flow flow = new Flow(this);
    waiting.forEach(flow);
    finish(flow);
  }

  private void finish(Flow flow) {
    flow.finish();
    fillForms();
  }

  private void read(Element element, Consumer<Block> sink) {
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
        case "header" -> header.read(blocks, child, style, body);
        case "footer" -> footer.read(blocks, child, style, body);
        case "body" -> {
          if (body) {
            throw child.fault("a <section> has one <body>");
          }
          body = true;
          Style inner = style.read(child);
          child.done();
          blocks.read(child, inner, sink);
        }
        default -> throw child.notHere(element, "ground", "header", "footer", "body");
      }
    }
    if (!body) {
      throw element.fault("a <section> needs a <body>");
    }
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
    return frame(Optional.of(side), Math.max(1, forms.size()), edge(), column);
  }

  private Flow.Frame frame(Optional<Side> on, int page, double edge, int at) {
    double wide = wide();
    double each = (wide - gap * (columns - 1)) / columns;
    double above = top + header.room(page, wide);
    double below = bottom + footer.room(page, wide);
    double x = edge + at * (each + gap);
    return new Flow.Frame(on, x, above, each, pages.height(turned) - below);
  }

  private double wide() {
    return pages.width(turned) - left - right - binding;
  }

  /** Where the column begins: fronts are bound at the left, backs at the right. */
  private double edge() {
    return pages.count() % 2 == 1 ? left + binding : left;
  }

  private void addForm() {
    if (!header.isEmpty() || !footer.isEmpty() || !ground.isEmpty()) {
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
                header.paint(form, edge, top, wide);
                double foot = footer.height(form.count().page(), wide);
                footer.paint(form, edge, form.height() - bottom - foot, wide);
              });
    }
  }

  /** The frames without sides to draw on. */
  private final class Trial implements Flow.Frames {
    private int sides;
    private int at;

    @Override
    public Flow.Frame next() {
      if (sides == 0 || at + 1 >= columns) {
        return newSide(false);
      }
      at++;
      return frame(Optional.empty(), sides, left, at);
    }

    @Override
    public Flow.Frame newSide(boolean sheet) {
      // a break to a new sheet leaves a back empty, which counts
      sides += sheet && sides % 2 == 1 ? 2 : 1;
      at = 0;
      return frame(Optional.empty(), sides, left, at);
    }
  }
}
