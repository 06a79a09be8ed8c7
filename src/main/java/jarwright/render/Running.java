package jarwright.render;

/** The header or the footer of a section, repeated on its sides; the first may have its own. */
final class Running {
  private Stack first;
  private Stack others;
  private double gap;

  /**
   * Reads a {@code header} or {@code footer} element to its end.
   *
   * @param tooLate whether the body has been read
   */
  void read(Blocks blocks, Element element, Style outer, boolean tooLate) {
    String on = element.choice("on", "all", "all", "first", "others");
    gap = element.mm("gap", 3);
    Style style = outer.sized(Math.max(Element.LEAST_SIZE, outer.size() * 0.8)).read(element);
    element.done();
    boolean again =
        (!on.equals("others") && first != null) || (!on.equals("first") && others != null);
    if (tooLate || again) {
      throw element.fault("<" + element + "> stands once for a side, before the <body>");
    }
    Stack read = blocks.stack(element, style, false);
    first = on.equals("others") ? first : read;
    others = on.equals("first") ? others : read;
  }

  boolean isEmpty() {
    return first == null && others == null;
  }

  /** The stack of a side, counted from 1; null if it has none. */
  private Stack on(int page) {
    return page == 1 ? first : others;
  }

  /** Its own height on a side, counted from 1. */
  double height(int page, double width) {
    return on(page) == null ? 0 : on(page).height(width);
  }

  /** The room that it takes from the body of a side, counted from 1. */
  double room(int page, double width) {
    return on(page) == null ? 0 : height(page, width) + gap;
  }

  void paint(Side form, double x, double top, double width) {
    if (on(form.count().page()) != null) {
      on(form.count().page()).paint(form, x, top, width);
    }
  }
}
