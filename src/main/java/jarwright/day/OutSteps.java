package jarwright.day;

import java.util.Map;

/** Lifting out and cooling, alike for all canners. */
final class OutSteps {
  private OutSteps() {}

  static void addTo(SectionBuilder steps) {
    steps.act("out.lift");
    steps.act("out.towel");
    steps.act("out.leave");
    steps.await("out.cool", Map.of(), steps.text("figure.cool", Map.of()));
  }
}
