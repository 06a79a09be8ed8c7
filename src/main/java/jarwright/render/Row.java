package jarwright.render;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** One row of a table. */
final class Row implements Block {

  private record Cell(Stack body, int column, int span, boolean head, Tone tint, String valign) {}

  private final Table table;
  private final Element at;
  private final boolean head;
  private final double above;
  private final double least;
  private final double line;
  private final Tone tint;
  private final List<Cell> cells = new ArrayList<>();
  private boolean keep;
  private double[] tallFor;

  Row(Table table, Blocks blocks, Element element, boolean head, double above) {
    this.table = table;
    this.at = element;
    this.head = head;
    this.above = above;
    least = element.mm("h", 0);
    line = element.weight("line", head ? Math.max(1, table.line()) : table.line());
    keep = element.yes("keep", head);
    Shop shop = table.style().shop();
    tint = shop.tone(element, "tint", null);
    Style style = (head ? table.style().bolder() : table.style()).read(element);
    element.done();
    int column = 0;
    for (Element child = blocks.markup().child(element);
        child != null;
        child = blocks.markup().child(element)) {
      if (!child.name().equals("cell")) {
        throw child.notHere(element, "cell");
      }
      Cell cell = cell(blocks, child, style, column);
      column += cell.span();
      cells.add(cell);
    }
    if (column != table.columns()) {
      throw element.fault(
          "this <" + element + "> fills " + column + " columns; its table has " + table.columns());
    }
  }

  private Cell cell(Blocks blocks, Element element, Style rowStyle, int column) {
    int span = element.whole("span", 1, 1, Math.max(1, table.columns() - column));
    boolean heads = element.yes("head", head);
    Tone own = table.style().shop().tone(element, "tint", null);
    String valign = element.choice("valign", "top", "top", "middle", "bottom");
    Style style = rowStyle.aligned(table.align(column)).read(element);
    element.done();
    Stack stack = blocks.stack(element, style, false);
    return new Cell(stack, column, span, heads, own, valign);
  }

  /** Keeps this row with the next one. */
  void keep() {
    keep = true;
  }

  @Override
  public double before() {
    return above;
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
  public Block repeated() {
    return head ? null : table.repeated();
  }

  private static double wide(Cell cell, double[] widths) {
    double wide = 0;
    for (int i = cell.column(); i < cell.column() + cell.span(); i++) {
      wide += widths[i];
    }
    return wide;
  }

  @Override
  public double height(double width) {
    if (tallFor == null || tallFor[0] != width) {
      double[] widths = table.widths(width);
      double tall = least;
      for (Cell cell : cells) {
        double inner = wide(cell, widths) - 2 * table.pad();
        tall = Math.max(tall, cell.body().height(inner) + 2 * table.pad());
      }
      tallFor = new double[] {width, tall + line};
    }
    return tallFor[1];
  }

  @Override
  public void paint(Side side, double x, double top, double width) {
    double[] widths = table.widths(width);
    double height = height(width);
    side.tags()
        .inside(
            table.tag(),
            () ->
                side.tags()
                    .inside(
                        "TR",
                        () -> {
                          side.artifact(() -> furniture(side.pen(), x, top, widths, height));
                          double left = x;
                          for (Cell cell : cells) {
                            words(side, cell, left, top, wide(cell, widths), height);
                            left += wide(cell, widths);
                          }
                        }));
  }

  private void words(Side side, Cell cell, double left, double top, double wide, double height) {
    double pad = table.pad();
    double inner = wide - 2 * pad;
    double slack = height - line - 2 * pad - cell.body().height(inner);
    double down =
        switch (cell.valign()) {
          case "middle" -> slack / 2;
          case "bottom" -> slack;
          default -> 0;
        };
    Runnable paint = () -> cell.body().paint(side, left + pad, top + pad + down, inner);
    String role = cell.head() ? "TH" : "TD";
    Consumer<Tag> dress =
        tag -> {
          if (cell.head()) {
            tag.scope(head ? "Column" : "Row");
          }
          tag.span(cell.span());
        };
    if (cell.body().isPlainWords()) {
      side.tags().content(role, dress, side.content(), paint);
    } else {
      side.tags().inside(role, dress, paint);
    }
  }

  private void furniture(Pen pen, double x, double top, double[] widths, double height) {
    Tone ink = table.style().tone();
    double left = x;
    double whole = 0;
    for (double width : widths) {
      whole += width;
    }
    if (tint != null) {
      pen.fillRect(tint, x, top, whole, height);
    }
    for (Cell cell : cells) {
      double wide = wide(cell, widths);
      if (cell.tint() != null) {
        pen.fillRect(cell.tint(), left, top, wide, height);
      }
      if (table.grid() && cell.column() > 0) {
        pen.straight(ink, 0.5, 0, left, top, left, top + height);
      }
      left += wide;
    }
    if (line > 0) {
      double y = top + height - line / 2;
      pen.straight(ink, line, 0, x, y, x + whole, y);
    }
  }
}
