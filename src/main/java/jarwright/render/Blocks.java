package jarwright.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Reads what may stand in a column: blocks, and words that make a paragraph of their own. */
final class Blocks {
  private static final Set<String> NAMES =
      Set.of(
          "heading",
          "para",
          "steps",
          "fields",
          "marks",
          "caution",
          "readings",
          "panel",
          "columns",
          "group",
          "space",
          "rule",
          "break",
          "table",
          "drawing");

  private final Markup markup;

  Blocks(Markup markup) {
    this.markup = markup;
  }

  Markup markup() {
    return markup;
  }

  static boolean holds(String name) {
    return NAMES.contains(name);
  }

  /** Everything in {@code parent}, as one block that is not divided. */
  Stack stack(Element parent, Style style, boolean keep) {
    List<Block> blocks = new ArrayList<>();
    read(parent, style, blocks::add);
    return new Stack(parent, blocks, keep);
  }

  /** Hands each block in {@code parent} to {@code sink} as soon as it is read. */
  void read(Element parent, Style style, Consumer<Block> sink) {
    Inline inline = new Inline(markup);
    for (Object next = markup.next(); next != null; next = markup.next()) {
      if (next instanceof String words) {
        inline.add(words, style);
      } else if (Inline.holds(((Element) next).name())) {
        inline.add((Element) next, style);
      } else {
        inline = flush(inline, parent, style, sink);
        block((Element) next, parent, style, sink);
      }
    }
    flush(inline, parent, style, sink);
  }

  private Inline flush(Inline inline, Element parent, Style style, Consumer<Block> sink) {
    if (inline.isEmpty()) {
      return inline;
    }
    sink.accept(
        new Paragraph(parent, inline.pieces(), style, Paragraph.Room.NONE, Paragraph.Role.PLAIN));
    return new Inline(markup);
  }

  private void block(Element element, Element parent, Style style, Consumer<Block> sink) {
    switch (element.name()) {
      case "heading" -> sink.accept(heading(element, style));
      case "para" -> sink.accept(para(element, style));
      case "steps" -> Steps.read(this, element, style, sink);
      case "table" -> Table.read(this, element, style, sink);
      case "fields" -> sink.accept(Fields.read(this, element, style));
      case "marks" -> sink.accept(Marks.read(markup, element, style));
      case "caution" -> sink.accept(Caution.read(this, element, style));
      case "readings" -> sink.accept(Readings.read(markup, element, style));
      case "panel" -> sink.accept(Panel.read(this, element, style));
      case "columns" -> sink.accept(Columns.read(this, element, style));
      case "group" -> sink.accept(group(element, style));
      case "space" -> sink.accept(Rule.space(markup, element));
      case "rule" -> sink.accept(Rule.line(markup, element, style));
      case "break" -> sink.accept(Break.read(markup, element));
      case "drawing" -> sink.accept(Drawing.read(markup, element, style));
      default ->
          throw element.fault(
              "<"
                  + element
                  + "> may not stand in <"
                  + parent
                  + ">; there may be "
                  + String.join(", ", NAMES.stream().sorted().toList())
                  + ", and among words "
                  + Inline.names());
    }
  }

  private Block group(Element element, Style outer) {
    boolean keep = element.yes("keep", false);
    Style style = outer.read(element);
    element.done();
    return stack(element, style, keep);
  }

  private Block para(Element element, Style outer) {
    double before = element.mm("before", 0.8);
    double after = element.mm("after", 0.8);
    boolean keep = element.yes("keep", false);
    Style style = outer.read(element);
    element.done();
    return new Paragraph(
        element,
        Inline.read(markup, element, style),
        style,
        new Paragraph.Room(before, after, keep),
        Paragraph.Role.PLAIN);
  }

  private Block heading(Element element, Style outer) {
    int level = element.whole("level", 1, 1, 3);
    double scale = level == 1 ? 1.8 : level == 2 ? 1.35 : 1.1;
    double before = element.mm("before", level == 1 ? 0 : 5 - level);
    double after = element.mm("after", level == 1 ? 2.5 : 1.2);
    String bookmark = element.text("bookmark", "");
    Style set =
        new Style(
            outer.shop(),
            true,
            outer.size() * scale,
            1.15,
            outer.tone(),
            outer.align(),
            outer.hyphenate());
    Style style = set.read(element);
    element.done();
    return new Paragraph(
        element,
        Inline.read(markup, element, style),
        style,
        new Paragraph.Room(before, after, true),
        new Paragraph.Role("H" + level, level, bookmark));
  }
}
