package jarwright.files;

import jarwright.pantry.JarNumbers;
import jarwright.pantry.LoadReport;
import jarwright.pantry.Observed;
import jarwright.pantry.Required;
import jarwright.pantry.Ticked;
import jarwright.problem.Problems;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rows of a day's file that tell of one load. */
final class LoadRows {
  private static final List<String> OF_THE_LOAD =
      List.of(
          "start",
          "last-start",
          "end",
          "kept",
          "lowest-psi",
          "restarts",
          "cloudy",
          "acid-in-every-jar",
          "vented",
          "unsealed",
          "some-lost",
          "half-lost",
          "unfilled");
  private static final List<String> LISTS = List.of("unsealed", "some-lost", "half-lost");
  static final int MOST_RESTARTS = 20;
  private static final String OR_NOBODY = ", or ? if nobody knows";

  private final OutcomeReader.Key key;
  private final Problems problems;
  private final List<Fields> ofLoad = new ArrayList<>();
  private final List<Fields> ofJars = new ArrayList<>();

  LoadRows(OutcomeReader.Key key, Problems problems) {
    this.key = key;
    this.problems = problems;
  }

  void add(Fields row) {
    boolean tellsOfLoad = OF_THE_LOAD.stream().anyMatch(row::has) || !row.has("jar");
    if (tellsOfLoad) {
      ofLoad.add(row);
    }
    if (row.has("jar")) {
      ofJars.add(row);
    }
  }

  private String name() {
    return "load " + key.load() + " of lot " + key.lot();
  }

  /**
   * What the rows say together; empty where that is told as a problem.
   *
   * @param required empty where the lot is not known, which is told later
   */
  Optional<LoadReport> report(Optional<Required> required, ZoneId zone) {
    int before = problems.count();
    if (ofLoad.isEmpty()) {
      problems.add(
          ofJars.get(0).place(),
          "nothing tells how " + name() + " was processed",
          "add a row with its start, end and so on");
      return Optional.empty();
    }
    Fields load = ofLoad.get(0);
    ofLoad.stream()
        .skip(1)
        .forEach(
            f -> problems.add(f.place(), name() + " is told of twice", "keep one of the rows"));
    RecordWords words = new RecordWords(load);
    Observed seen = seen(load, words, required, zone);
    JarRows jars = jars(load, words);
    JarNumbers unfilled = words.jars("unfilled").orElse(JarNumbers.NONE);
    String note = load.has("jar") ? "" : load.text("note").orElse("");
    return problems.count() > before
        ? Optional.empty()
        : Optional.of(
            new LoadReport(
                load.place(),
                key.lot(),
                key.load(),
                jars.inLoad(),
                seen,
                jars.unsealed(),
                jars.someLost(),
                jars.halfLost(),
                unfilled,
                jars.notes(),
                note));
  }

  private Observed seen(Fields load, RecordWords words, Optional<Required> required, ZoneId zone) {
    load.require("start", "write the time, as 10:05" + OR_NOBODY);
    load.require("end", "write the time, as 10:45" + OR_NOBODY);
    load.require("kept", "write yes, no" + OR_NOBODY);
    load.require("cloudy", "look at the canner's water; write yes, no" + OR_NOBODY);
    if (required.map(Required::acid).orElse(false)) {
      load.require("acid-in-every-jar", "write yes, no" + OR_NOBODY);
    }
    if (required.flatMap(Required::pressure).isPresent()) {
      load.require("vented", "write yes, no" + OR_NOBODY);
    }
    LocalDate day = ClockWord.date(load, "date").orElse(key.lot().packed());
    int restarts = load.count("restarts", 0, MOST_RESTARTS).orElse(0);
    if (restarts > 0) {
      load.require("last-start", "write when the clock was started the last time" + OR_NOBODY);
    }
    Optional<OffsetDateTime> start = words.time("start").map(t -> at(day, t, zone));
    Optional<OffsetDateTime> lastStart =
        words.time("last-start").map(t -> after(start, day, t, zone));
    Optional<OffsetDateTime> end =
        words.time("end").map(t -> after(lastStart.or(() -> start), day, t, zone));
    Ticked kept = words.ticked("kept");
    return new Observed(
        start,
        lastStart,
        end,
        kept,
        words.pressure("lowest-psi"),
        restarts,
        words.ticked("cloudy"),
        words.ticked("acid-in-every-jar"),
        words.ticked("vented"));
  }

  private static OffsetDateTime at(LocalDate day, LocalTime time, ZoneId zone) {
    return day.atTime(time).atZone(zone).toOffsetDateTime();
  }

  /** A time that is past midnight where it would else lie before what came first. */
  private static OffsetDateTime after(
      Optional<OffsetDateTime> first, LocalDate day, LocalTime time, ZoneId zone) {
    OffsetDateTime sameDay = at(first.map(OffsetDateTime::toLocalDate).orElse(day), time, zone);
    boolean nextDay = first.isPresent() && sameDay.isBefore(first.get());
    return nextDay ? at(first.get().toLocalDate().plusDays(1), time, zone) : sameDay;
  }

  private JarRows jars(Fields load, RecordWords words) {
    boolean listed = LISTS.stream().anyMatch(load::has) || ofJars.isEmpty();
    JarRows jars = listed ? JarRows.listed(load, words) : JarRows.oneByOne();
    JarNumbers told = JarNumbers.NONE;
    for (Fields row : ofJars) {
      JarNumbers here = new RecordWords(row).jars("jar").orElse(JarNumbers.NONE);
      if (!told.in(here).isEmpty()) {
        row.problem("jar", "jar " + told.in(here) + " has a row already", "keep one of them");
      }
      told = told.plus(here);
      jars = jars.with(row, here, listed);
    }
    JarNumbers without = listed ? JarNumbers.NONE : words.jars("jars").orElse(told).minus(told);
    if (!without.isEmpty()) {
      load.problem("jars", "jars " + without + " have no row", "tell of each, or list all");
    }
    return jars;
  }
}
