package jarwright.pantry;

import jarwright.problem.Problems;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;

/** Checks that a report of a load makes sense with its lot, its clock and itself. */
final class ReportChecks {
  /** No tested process comes near it: a longer one is a slip in the times. */
  private static final Duration LONGEST = Duration.ofHours(12);

  private final LoadReport report;
  private final Lot lot;
  private final JarNumbers jars;
  private final OffsetDateTime now;
  private final Problems problems;

  ReportChecks(LoadReport report, Lot lot, JarNumbers jars, OffsetDateTime now, Problems problems) {
    this.report = report;
    this.lot = lot;
    this.jars = jars;
    this.now = now;
    this.problems = problems;
  }

  void check() {
    times();
    jars();
    recordedBefore();
  }

  private void problem(String what, String remedy) {
    problems.add(report.where(), what, remedy);
  }

  private void times() {
    Observed seen = report.seen();
    Optional<OffsetDateTime> start = seen.start();
    Optional<OffsetDateTime> end = seen.end();
    seen.countedFrom()
        .filter(now::isBefore)
        .ifPresent(t -> problem(t + " has not come yet", "check the times and the day"));
    if (seen.restarts() == 0 && seen.lastStart().isPresent()) {
      problem("a last start is given, but no restart", "write how often the clock was restarted");
    }
    inOrder("last start", start, seen.lastStart());
    inOrder("end", seen.fullRunFrom().or(() -> start), end);
    boolean long12 =
        start.isPresent()
            && end.isPresent()
            && Duration.between(start.get(), end.get()).compareTo(LONGEST) > 0;
    if (long12) {
      problem(
          "from " + start.get() + " to " + end.get() + " is more than 12 hours",
          "check the times; after midnight the next day is meant");
    }
  }

  private void inOrder(
      String name, Optional<OffsetDateTime> first, Optional<OffsetDateTime> second) {
    if (first.isPresent() && second.isPresent() && second.get().isBefore(first.get())) {
      problem(
          "the " + name + " " + second.get() + " lies before the start " + first.get(),
          "check the times");
    }
  }

  private void jars() {
    if (jars.isEmpty()) {
      problem(
          "load " + report.load() + " is not planned for lot " + lot.code(),
          "write which jars were in it");
    }
    JarNumbers planned = JarNumbers.of(lot.byNumber().keySet());
    within("the jars", jars.plus(report.unfilled()), planned, "the lot");
    within("unfilled", report.unfilled(), planned.minus(jars), "the jars not in the load");
    within("unsealed", report.unsealed(), jars, "load " + report.load());
    within("some lost", report.someLost(), jars, "load " + report.load());
    within("half lost", report.halfLost(), jars, "load " + report.load());
    within("the notes", JarNumbers.of(report.notes().keySet()), jars, "load " + report.load());
    JarNumbers both = report.someLost().in(report.halfLost());
    if (!both.isEmpty()) {
      problem("jars " + both + " are said to have lost some and half", "keep the one that holds");
    }
  }

  private void within(String name, JarNumbers part, JarNumbers whole, String of) {
    JarNumbers strange = part.minus(whole);
    if (!strange.isEmpty()) {
      String known = whole.isEmpty() ? "none" : whole.toString();
      problem(name + ": " + strange + " are not of " + of, "there are: " + known);
    }
  }

  private void recordedBefore() {
    Optional<LoadRun> before = lot.load(report.load());
    Planned planned = lot.planned().orElseThrow();
    LoadRun run = new LoadRun(report.load(), planned.required(), report.seen(), report.note());
    if (before.isPresent() && !before.get().equals(run)) {
      problem(
          "load " + report.load() + " of lot " + lot.code() + " is recorded already, otherwise",
          "undo what is recorded, or leave it out");
      return;
    }
    for (int number : jars.stream().toArray()) {
      lot.jar(number).filter(this::isDifferent).ifPresent(this::tellDifferent);
    }
  }

  private boolean isDifferent(Jar jar) {
    if (jar.isOpen()) {
      return false;
    }
    int number = jar.id().number();
    return jar.outcome()
        .filter(o -> o.load() == report.load())
        .filter(o -> o.sealed() != report.unsealed().contains(number))
        .filter(o -> o.lost() == report.lost(number))
        .isEmpty();
  }

  private void tellDifferent(Jar jar) {
    problem(
        "jar " + jar.id() + " is " + jar.standing().kind().text() + " already, told otherwise",
        "undo what is recorded, or leave it out");
  }
}
