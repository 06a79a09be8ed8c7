package jarwright.pantry;

import jarwright.problem.Problems;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Checks that a report of a load makes sense with its lot, its clock and itself. */
final class ReportChecks {
  private final LoadReport report;
  private final Lot lot;
  private final JarNumbers jars;
  private final Optional<LoadRun> run;
  private final OffsetDateTime now;
  private final Problems problems;

  /**
   * @param run how the load was processed, as was recorded or is told; empty where nobody did
   */
  ReportChecks(
      LoadReport report,
      Lot lot,
      JarNumbers jars,
      Optional<LoadRun> run,
      OffsetDateTime now,
      Problems problems) {
    this.report = report;
    this.lot = lot;
    this.jars = jars;
    this.run = run;
    this.now = now;
    this.problems = problems;
  }

  void check() {
    report.seen().ifPresent(this::times);
    jars();
    if (run.isPresent()) {
      otherwise(run.get().required());
      cooled(run.get());
      putAway(run.get());
      notes(run.get());
      recordedBefore(run.get());
    } else if (!report.isOfUnfilled()) {
      problem(
          "nothing tells how load " + report.load() + " of lot " + lot.code() + " was processed",
          "tell its start, end and so on with it, or before");
    }
  }

  private void problem(String what, String remedy) {
    problems.add(report.where(), what, remedy);
  }

  private void times(Observed seen) {
    Optional<OffsetDateTime> start = seen.start();
    Optional<OffsetDateTime> end = seen.end();
    seen.countedFrom()
        .filter(now::isBefore)
        .ifPresent(t -> problem(t + " has not come yet", "check the times and the day"));
    if (seen.restarts() == 0 && seen.lastStart().isPresent()) {
      problem("a last start is given, but no restart", "write how often the time was started over");
    }
    LocalDate packed = lot.code().packed();
    Stream.of(start, seen.lastStart(), end)
        .flatMap(Optional::stream)
        .map(OffsetDateTime::toLocalDate)
        .filter(packed::isAfter)
        .findFirst()
        .ifPresent(
            day ->
                problem(
                    day + " lies before the packing day " + packed + " of the lot",
                    "check the day; a batch canned on another day gets its own kit and lot"));
    inOrder("last start", start, seen.lastStart());
    inOrder("end", seen.fullRunFrom().or(() -> start), end);
    boolean long12 =
        start.isPresent()
            && end.isPresent()
            && Duration.between(start.get(), end.get()).compareTo(LoadClock.LONGEST) > 0;
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
    if (jars.isEmpty() && !report.isOfUnfilled()) {
      boolean empty = !report.unfilled().isEmpty();
      problem(
          empty
              ? "no jar of load " + report.load() + " was filled, and yet something is told of it"
              : "load " + report.load() + " is not planned for lot " + lot.code(),
          empty ? "leave the rest out" : "write which jars were in it");
    }
    JarNumbers known = JarNumbers.of(lot.byNumber().keySet());
    within("the jars", jars.plus(report.unfilled()), known, "the lot");
    within("unfilled", report.unfilled(), known.minus(jars), "the jars not in the load");
    report.seen().ifPresent(s -> within("acid missing", s.acidMissing(), jars, load()));
    report.look().ifPresent(this::look);
    report.putAway().ifPresent(k -> within("kept cold", k.all(), jars, load()));
    within("the notes", JarNumbers.of(report.notes().keySet()), jars, load());
  }

  private void look(Look look) {
    within("unsealed", look.unsealed(), jars, load());
    within("some lost", look.someLost(), jars, load());
    within("half lost", look.halfLost(), jars, load());
    JarNumbers both = look.someLost().in(look.halfLost());
    if (!both.isEmpty()) {
      problem("jars " + both + " are said to have lost some and half", "keep the one that holds");
    }
  }

  private String load() {
    return "load " + report.load();
  }

  private void within(String name, JarNumbers part, JarNumbers whole, String of) {
    JarNumbers strange = part.minus(whole);
    if (!strange.isEmpty()) {
      String known = whole.isEmpty() ? "none" : whole.toString();
      problem(name + ": " + strange + " are not of " + of, "there are: " + known);
    }
  }

  private void otherwise(Required required) {
    Departures said =
        report
            .seen()
            .map(Observed::otherwise)
            .orElse(Departures.NONE)
            .plus(report.otherwise())
            .plus(report.look().map(Look::signs).orElse(Departures.NONE));
    within("otherwise", said.named(), jars, load());
    for (Otherwise what : said.jars().keySet()) {
      if (!what.isPossible(required)) {
        problem(
            "\"" + what.word() + "\" cannot be said of this canner",
            required.pressure().isPresent()
                ? "it is for boiling water"
                : "it is for pressure canners");
      }
    }
  }

  /** A seal that is tested before its jar has cooled tells nothing. */
  private void cooled(LoadRun processed) {
    boolean open = !jars.in(lot.open()).isEmpty();
    boolean ended = processed.seen().countedFrom().filter(now::isBefore).isEmpty();
    processed
        .lookFrom()
        .filter(t -> report.look().isPresent() && open && ended && now.isBefore(t))
        .ifPresent(
            t ->
                problem(
                    "the jars of load "
                        + report.load()
                        + " of lot "
                        + lot.code()
                        + " are still cooling: their seals can be told from "
                        + Shown.minute(t)
                        + " on",
                    "leave seals and losses out for now; how the load was processed can be told"
                        + " without them"));
  }

  private void putAway(LoadRun processed) {
    if (report.putAway().isEmpty()) {
      return;
    }
    PutAway away = report.putAway().get();
    JarNumbers both = away.refrigerator().in(away.freezer());
    if (!both.isEmpty()) {
      problem("jars " + both + " are in the refrigerator and in the freezer", "keep one of them");
    }
    if (now.isBefore(away.since())) {
      problem(away.since() + " has not come yet", "check when the jars were put away");
    }
    processed
        .seen()
        .countedFrom()
        .filter(away.since()::isBefore)
        .ifPresent(
            t ->
                problem(
                    "jars cannot be put away at " + away.since() + ", before the end " + t,
                    "check when the jars were put away"));
  }

  private void notes(LoadRun processed) {
    for (int jar : report.notes().keySet()) {
      if (report.look().isEmpty() && report.on(processed).against(jar).isEmpty()) {
        problem(
            "the note on jar " + lot.code().jar(jar) + " comes before its seal is told",
            "note it on the load, or on the jar when its seal is told");
      }
    }
  }

  private void recordedBefore(LoadRun processed) {
    Optional<LoadRun> told =
        report.seen().map(s -> new LoadRun(report.load(), processed.required(), s, report.note()));
    boolean otherwise =
        lot.load(report.load()).isPresent() && told.filter(t -> !t.tellsOn(processed)).isPresent();
    if (otherwise) {
      problem(
          "load " + report.load() + " of lot " + lot.code() + " is recorded already, otherwise",
          "undo what is recorded, or leave it out");
      return;
    }
    for (int number : jars.stream().toArray()) {
      lot.jar(number).filter(j -> isDifferent(j, processed)).ifPresent(this::tellDifferent);
    }
  }

  /** What is told of a jar is in its outcome, or was not looked at since its load had failed. */
  private boolean isDifferent(Jar jar, LoadRun processed) {
    if (jar.isOpen()) {
      return false;
    }
    Optional<Outcome> outcome = jar.outcome().filter(o -> o.load() == report.load());
    return outcome.isEmpty() || !tells(outcome.get(), jar.id().number(), processed);
  }

  private boolean tells(Outcome outcome, int number, LoadRun processed) {
    if (outcome.sealed() == Ticked.BLANK) {
      return true;
    }
    Set<Otherwise> more = EnumSet.noneOf(Otherwise.class);
    more.addAll(report.toldNow(processed, number));
    if (report.look().isEmpty()) {
      return outcome.otherwise().containsAll(more);
    }
    Seen seen = report.look().get().of(number, report.on(processed).seen().cloudy());
    boolean sameWater =
        processed.seen().cloudy() != Ticked.BLANK || outcome.cloudy() == seen.cloudy();
    return outcome.sealed() == Ticked.of(seen.sealed())
        && outcome.lost().equals(Optional.of(seen.lost()))
        && outcome.otherwise().equals(more)
        && sameWater;
  }

  private void tellDifferent(Jar jar) {
    problem(
        "jar " + jar.id() + " is " + jar.standing().kind().text() + " already, told otherwise",
        "undo what is recorded, or leave it out");
  }
}
