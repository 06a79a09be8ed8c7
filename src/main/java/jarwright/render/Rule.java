package jarwright.render;

/** A straight line across the column, or with no weight just room. */
record Rule(
    Element at, double weight, double dash, double tall, Tone tone, double around, boolean keep)
    implements Block {

  static Rule line(Markup markup, Element element, Style style) {
    double weight = element.weight("line", 0.75);
    Rule made =
        new Rule(
            element,
            weight,
            element.mm("dash", 0),
            weight,
            style.shop().tone(element, "ink", style.tone()),
            element.mm("around", 1.5),
            element.yes("keep", false));
    element.done();
    markup.end(element);
    return made;
  }

  static Rule space(Markup markup, Element element) {
    double tall = element.mm("h");
    boolean keep = element.yes("keep", false);
    element.done();
    markup.end(element);
    return new Rule(element, 0, 0, tall, Tone.BLACK, 0, keep);
  }

  @Override
  public double before() {
    return around;
  }

  @Override
  public double after() {
    return around;
  }

  @Override
  public boolean keepsWithNext() {
    return keep;
  }

  @Override
  public double height(double width) {
    return tall;
  }

  @Override
  public void paint(Side side, double x, double top, double width) {
    if (weight > 0) {
      double y = top + weight / 2;
      side.artifact(() -> side.pen().straight(tone, weight, dash, x, y, x + width, y));
    }
  }
}
