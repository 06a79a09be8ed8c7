package jarwright.pantry;

import jarwright.lot.JarId;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Turns reports of canner loads into ledger entries with a verdict on each jar. */
public final class Sealing {
  private final Judge judge;
  private final Pantry pantry;
  private final OffsetDateTime now;
  private final String by;
  private final Problems problems = new Problems();
  private final List<Entry> entries = new ArrayList<>();
  private final SortedMap<JarId, Judged> verdicts = new TreeMap<>();
  private final Set<JarId> told = new HashSet<>();

  private Sealing(Judge judge, Pantry pantry, OffsetDateTime now, String by) {
    this.judge = judge;
    this.pantry = pantry;
    this.now = now;
    this.by = by;
  }

  /**
   * Judges reports. One that was recorded before, word for word, adds nothing: a day's file can be
   * handed in again.
   *
   * @param now when it is recorded
   * @throws Refused with all that is wrong in the reports
   */
  public static Sealed of(
      List<LoadReport> reports, Pantry pantry, Judge judge, OffsetDateTime now, String by)
      throws Refused {
    Sealing sealing = new Sealing(judge, pantry, now, by);
    reports.forEach(sealing::add);
    sealing.problems.refuse();
    return new Sealed(sealing.entries, sealing.verdicts);
  }

  private void add(LoadReport report) {
    Optional<Lot> lot = pantry.lot(report.lot());
    if (lot.isEmpty() || lot.get().planned().isEmpty()) {
      problem(
          report,
          "lot " + report.lot() + (lot.isEmpty() ? " is not in the ledger" : " was not made here"),
          "make its kit first; shelf shows the lots there are");
      return;
    }
    if (lot.get().cancelled().isPresent()) {
      problem(
          report,
          "lot "
              + report.lot()
              + " was cancelled on "
              + lot.get().cancelled().get().when().toLocalDate(),
          "if it was made after all, take that back first: jarwright undo");
      return;
    }
    int before = problems.count();
    Planned planned = lot.get().planned().get();
    JarNumbers jars =
        report.jars().orElseGet(() -> planned.inLoad(report.load()).minus(report.unfilled()));
    new ReportChecks(report, lot.get(), jars, now, problems).check();
    for (int jar : jars.plus(report.unfilled()).stream().toArray()) {
      if (!told.add(report.lot().jar(jar))) {
        problem(report, "jar " + report.lot().jar(jar) + " is told of twice", "tell it once");
      }
    }
    if (problems.count() == before) {
      record(report, lot.get(), planned.required(), jars);
    }
  }

  private void record(LoadReport report, Lot lot, Required required, JarNumbers jars) {
    LoadRun run = new LoadRun(report.load(), required, report.seen(), report.note());
    Map<Outcome, List<Integer>> fresh = new LinkedHashMap<>();
    JarNumbers open = lot.open();
    for (int number : jars.in(open).stream().toArray()) {
      Outcome outcome = outcome(report, required, number);
      fresh.computeIfAbsent(outcome, o -> new ArrayList<>()).add(number);
    }
    JarNumbers unfilled = report.unfilled().in(open);
    if (!unfilled.isEmpty()) {
      entries.add(Entry.of(now, lot.code(), unfilled, JarStep.unfilled(), by));
    }
    if (!lot.loads().contains(run)) {
      entries.add(Entry.of(now, lot.code(), jars, run, by));
    }
    fresh.forEach(
        (outcome, numbers) ->
            entries.add(Entry.of(now, lot.code(), JarNumbers.of(numbers), outcome, by)));
  }

  private Outcome outcome(LoadReport report, Required required, int number) {
    boolean sealed = !report.unsealed().contains(number);
    Liquid lost = report.lost(number);
    Judged judged = judge.judge(required, report.seen(), sealed, lost, report.anyLow(), now);
    verdicts.put(report.lot().jar(number), judged);
    return new Outcome(
        report.load(),
        sealed,
        lost,
        report.notes().getOrDefault(number, ""),
        judged.verdict(),
        judged.because().stream().map(VerdictRule::id).toList());
  }

  private void problem(LoadReport report, String what, String remedy) {
    problems.add(report.where(), what, remedy);
  }
}
