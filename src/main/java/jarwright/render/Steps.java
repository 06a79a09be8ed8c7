package jarwright.render;

import java.util.function.Consumer;

/** Reads a list of steps; each goes on as a block of its own, so pages may break between them. */
final class Steps {
  private Steps() {}

  static void read(Blocks blocks, Element element, Style outer, Consumer<Block> sink) {
    double box = element.mm("box", 0);
    boolean numbered = element.yes("numbered", false);
    int number = element.whole("from", 1, 0, 999);
    boolean spine = element.yes("spine", true);
    double gap = element.mm("gap", 2.2);
    double around = element.mm("around", 2);
    Style style = outer.read(element);
    Step.Look look = new Step.Look(box, numbered, spine, gap);
    element.done();
    Tags.Later list = new Tags.Later("L", made -> made.numbering(numbered ? "Decimal" : "None"));
    Step waiting = null;
    for (Element child = blocks.markup().child(element);
        child != null;
        child = blocks.markup().child(element)) {
      if (!child.name().equals("step")) {
        throw child.notHere(element, "step");
      }
      if (waiting != null) {
        sink.accept(waiting);
      }
      double above = waiting == null ? around : 0;
      waiting = new Step(blocks, child, style, look, list, number++, above);
    }
    if (waiting != null) {
      waiting.endWith(around);
      sink.accept(waiting);
    }
  }
}
