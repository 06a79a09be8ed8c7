package jarwright.pantry;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Turns reports of canner loads into ledger entries. A jar gets its verdict once it has been seen
 * cooled, or at once where it was not processed as tested; until then it cools.
 */
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
   * Judges reports. What was recorded before, word for word, adds nothing: a day's file can be
   * handed in again, with more filled in.
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
    JarNumbers jars = jars(report, lot.get());
    Optional<LoadRun> run = run(report, lot.get());
    new ReportChecks(report, lot.get(), jars, run, now, problems).check();
    for (int jar : jars.plus(report.unfilled()).stream().toArray()) {
      if (!told.add(report.lot().jar(jar))) {
        problem(report, "jar " + report.lot().jar(jar) + " is listed twice", "keep one of them");
      }
    }
    if (problems.count() == before) {
      record(report, lot.get(), jars, run);
    }
  }

  private static JarNumbers jars(LoadReport report, Lot lot) {
    if (report.isOfUnfilled()) {
      return JarNumbers.NONE;
    }
    return report.jars().orElseGet(() -> lot.inLoad(report.load()).minus(report.unfilled()));
  }

  /** How the load was processed, as it was told before or is told now; empty where nobody did. */
  private static Optional<LoadRun> run(LoadReport report, Lot lot) {
    Required required = lot.planned().orElseThrow().required();
    return lot.load(report.load())
        .or(() -> report.seen().map(s -> new LoadRun(report.load(), required, s, report.note())));
  }

  private void record(LoadReport report, Lot lot, JarNumbers jars, Optional<LoadRun> run) {
    JarNumbers unfilled = report.unfilled().in(lot.open());
    if (!unfilled.isEmpty()) {
      entries.add(Entry.of(now, lot.code(), unfilled, JarStep.unfilled(), by));
    }
    if (run.isEmpty()) {
      return;
    }
    if (!lot.loads().contains(run.get())) {
      entries.add(Entry.of(now, lot.code(), jars, run.get(), by));
    }
    Map<Outcome, List<Integer>> fresh = new LinkedHashMap<>();
    for (int number : jars.in(lot.open()).stream().toArray()) {
      outcome(report, run.get(), number)
          .ifPresent(o -> fresh.computeIfAbsent(o, x -> new ArrayList<>()).add(number));
    }
    fresh.forEach(
        (outcome, numbers) ->
            entries.add(Entry.of(now, lot.code(), JarNumbers.of(numbers), outcome, by)));
    fresh.forEach((outcome, numbers) -> spoiled(lot.code(), outcome, JarNumbers.of(numbers)));
  }

  private Optional<Outcome> outcome(LoadReport report, LoadRun recorded, int number) {
    LoadRun run = report.on(recorded);
    Optional<Seen> seen = report.look().map(l -> l.of(number, run.seen().cloudy()));
    Optional<Judged> judged = judge.judge(run, number, seen, report.chilled(number), now);
    judged.ifPresent(j -> verdicts.put(report.lot().jar(number), j));
    boolean newlyCloudy = recorded.seen().cloudy() == Ticked.BLANK && seen.isPresent();
    return judged.map(
        j ->
            new Outcome(
                report.load(),
                seen.map(s -> Ticked.of(s.sealed())).orElse(Ticked.BLANK),
                seen.map(Seen::lost),
                newlyCloudy ? run.seen().cloudy() : Ticked.BLANK,
                report.toldNow(recorded, number),
                report.noteOn(number),
                j.verdict(),
                j.because().stream().map(VerdictRule::id).toList()));
  }

  /**
   * Signs of spoilage concern the whole lot. A jar that leaks since it did not seal concerns none
   * but itself.
   */
  private void spoiled(LotCode lot, Outcome outcome, JarNumbers jars) {
    Set<Sign> signs = EnumSet.noneOf(Sign.class);
    outcome.otherwise().forEach(o -> o.sign().ifPresent(signs::add));
    if (outcome.sealed() != Ticked.YES) {
      signs.remove(Sign.LEAKS);
    }
    if (!signs.isEmpty()) {
      entries.add(Entry.of(now, lot, jars, new Spoiled(signs, "", ""), by));
    }
  }

  private void problem(LoadReport report, String what, String remedy) {
    problems.add(report.where(), what, remedy);
  }
}
