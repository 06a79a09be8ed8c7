package jarwright.cli;

import jarwright.day.DayPlan;
import jarwright.day.PlannedGap;
import jarwright.day.TaskKind;
import jarwright.pantry.Pantry;
import jarwright.pantry.RealGaps;
import java.util.ArrayList;
import java.util.List;

/** Offers what the household's own recorded days say against what a day is planned with. */
final class OwnMedians {
  /** Fewer say little. */
  private static final int ENOUGH = 3;

  /** Nearer than this is near enough for an estimate, in minutes. */
  private static final int NEAR = 3;

  private OwnMedians() {}

  /** A sentence for each kind of canner that has been slower or quicker than planned. */
  static List<String> offers(Pantry pantry, List<DayPlan> days) {
    List<String> offers = new ArrayList<>();
    for (boolean pressure : List.of(false, true)) {
      List<Integer> real = RealGaps.minutes(pantry, pressure);
      if (real.size() >= ENOUGH) {
        int median = RealGaps.median(real).orElseThrow();
        days.stream()
            .flatMap(d -> PlannedGap.of(d, pressure).stream())
            .findFirst()
            .filter(gap -> Math.abs(gap.minutes() - median) > NEAR)
            .ifPresent(gap -> offers.add(offer(gap, median, real.size())));
      }
    }
    return offers;
  }

  private static String offer(PlannedGap gap, int median, int count) {
    String canner = gap.pressure() ? "pressure canner" : "boiling water";
    String fact =
        "Your own days, "
            + canner
            + ": "
            + median
            + " min from the end of one clock to the start of the next (median of "
            + count
            + "); this plan reckons with "
            + gap.minutes()
            + ".";
    return gap.refillFor(median)
        .map(
            minutes ->
                fact
                    + " To plan with yours, write into kitchen.yaml under times:  - {task: "
                    + TaskKind.REFILL.id()
                    + ", minutes: "
                    + minutes
                    + "}")
        .orElse(fact);
  }
}
