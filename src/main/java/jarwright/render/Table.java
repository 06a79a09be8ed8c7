package jarwright.render;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * What the rows of one table share. The rows go on one by one as they are read, so a table of any
 * length needs the room of a few rows only.
 */
final class Table {
  private final Element at;
  private final Widths widths;
  private final List<String> aligns;
  private final double pad;
  private final double line;
  private final boolean grid;
  private final double around;
  private final Style style;
  private final Tags.Later tag = new Tags.Later("Table", made -> {});
  private final List<Block> heads = new ArrayList<>();
  private Stack head;

  private Table(Element element, Style outer) {
    at = element;
    widths = new Widths(element, "columns", 0);
    aligns = element.list("align-columns");
    pad = element.mm("pad", 1.1);
    line = element.weight("line", 0.6);
    grid = element.yes("grid", false);
    around = element.mm("around", 2);
    style = outer.read(element);
    element.done();
    if (widths.count() == 0) {
      throw element.fault("<table> needs the attribute \"columns\"");
    }
    for (String align : aligns) {
      if (!List.of("left", "center", "right").contains(align)) {
        throw element.bad("align-columns", align, "left, center or right for each column");
      }
    }
  }

  static void read(Blocks blocks, Element element, Style style, Consumer<Block> sink) {
    new Table(element, style).rows(blocks, sink);
  }

  private void rows(Blocks blocks, Consumer<Block> sink) {
    boolean first = true;
    for (Element child = blocks.markup().child(at);
        child != null;
        child = blocks.markup().child(at)) {
      switch (child.name()) {
        case "head" -> {
          if (!first) {
            throw child.fault("<head> stands before all rows");
          }
          heads.add(new Row(this, blocks, child, true, heads.isEmpty() ? around : 0));
        }
        case "row", "group" -> {
          if (first) {
            heads.forEach(sink);
            head = heads.isEmpty() ? null : new Stack(at, heads, true);
          }
          double above = first && heads.isEmpty() ? around : 0;
          if (child.name().equals("row")) {
            sink.accept(new Row(this, blocks, child, false, above));
          } else {
            group(blocks, child, above, sink);
          }
          first = false;
        }
        default -> throw child.notHere(at, "head", "row", "group");
      }
    }
    if (first) {
      heads.forEach(sink);
    }
    sink.accept(new Rule(at, 0, 0, 0, Tone.BLACK, around, false));
  }

  /** Rows that stay on one side as long as they fit on one. */
  private void group(Blocks blocks, Element element, double above, Consumer<Block> sink) {
    element.done();
    Row waiting = null;
    for (Element child = blocks.markup().child(element);
        child != null;
        child = blocks.markup().child(element)) {
      if (!child.name().equals("row")) {
        throw child.notHere(element, "row");
      }
      if (waiting != null) {
        waiting.keep();
        sink.accept(waiting);
      }
      waiting = new Row(this, blocks, child, false, waiting == null ? above : 0);
    }
    if (waiting != null) {
      sink.accept(waiting);
    }
  }

  Element at() {
    return at;
  }

  double[] widths(double width) {
    return widths.within(width);
  }

  int columns() {
    return widths.count();
  }

  String align(int column) {
    return column < aligns.size() ? aligns.get(column) : style.align();
  }

  double pad() {
    return pad;
  }

  double line() {
    return line;
  }

  boolean grid() {
    return grid;
  }

  Style style() {
    return style;
  }

  Tags.Later tag() {
    return tag;
  }

  /** The head repeated on each further side; null if there is none. */
  Block repeated() {
    return head;
  }
}
