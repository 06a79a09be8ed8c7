package jarwright.render;

/**
 * The end of a side.
 *
 * @param at its element
 * @param sheet whether the next side must be the front of a sheet
 */
record Break(Element at, boolean sheet) implements Block {

  static Break read(Markup markup, Element element) {
    Break made = new Break(element, element.choice("to", "side", "side", "sheet").equals("sheet"));
    element.done();
    markup.end(element);
    return made;
  }

  @Override
  public double height(double width) {
    return 0;
  }

  @Override
  public void paint(Side side, double x, double top, double width) {}
}
