package jarwright.day;

import jarwright.process.Cooling;

/** Lifting out and cooling, alike for all canners: AIB 539 (2015) Guide 1. */
final class OutSteps {
  private OutSteps() {}

  static void addTo(SectionBuilder steps, StepWords words) {
    steps.act("out.lift");
    steps.act("out.apart");
    steps.act("out.leave");
    steps.await("out.cool", words.hours(Cooling.LEAST, Cooling.MOST));
  }
}
