package jarwright.render;

import java.util.ArrayList;
import java.util.List;

/**
 * Sections that say the same, each more closely set than the one before. Drawn is the first that
 * takes few enough sides; if none does, the first of those that take the fewest.
 */
final class Fit {
  private Fit() {}

  /** Reads a {@code fit} element to its end and draws one of its sections. */
  static void print(Pages pages, Markup markup, Element element, Style style) {
    int enough = element.whole("sides", 2, 1, 99);
    element.done();
    List<Section> sections = new ArrayList<>();
    for (Element child = markup.child(element); child != null; child = markup.child(element)) {
      if (!child.name().equals("section")) {
        throw child.notHere(element, "section");
      }
      sections.add(Section.read(pages, markup, child, style));
    }
    if (sections.isEmpty()) {
      throw element.fault("a <fit> needs at least one <section>");
    }
    choose(sections, enough).draw();
  }

  private static Section choose(List<Section> sections, int enough) {
    Section best = sections.get(0);
    int fewest = best.sides();
    for (int i = 1; i < sections.size() && fewest > enough; i++) {
      int sides = sections.get(i).sides();
      if (sides < fewest) {
        best = sections.get(i);
        fewest = sides;
      }
    }
    return best;
  }
}
