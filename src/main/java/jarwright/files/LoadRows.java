package jarwright.files;

import jarwright.pantry.AcidNeed;
import jarwright.pantry.Departures;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.LoadClock;
import jarwright.pantry.LoadReport;
import jarwright.pantry.LoadRun;
import jarwright.pantry.Look;
import jarwright.pantry.Lot;
import jarwright.pantry.Observed;
import jarwright.pantry.Planned;
import jarwright.pantry.PutAway;
import jarwright.pantry.Required;
import jarwright.pantry.Ticked;
import jarwright.problem.Problems;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The rows of a day's file that tell of one load: how it was processed, how its jars came out, or
 * both.
 */
final class LoadRows {
  /** What only somebody who tells how the load was processed writes. */
  private static final List<String> PROCESS =
      List.of(
          "start",
          "last-start",
          "end",
          "kept",
          "lowest-psi",
          "restarts",
          "acid-in-every-jar",
          "acid-missing",
          "vented",
          "gauge-tested");

  /** What is known once the jars have cooled. */
  private static final List<String> LISTS = List.of("unsealed", "some-lost", "half-lost");

  private static final List<String> AWAY = List.of("in-refrigerator", "in-freezer");
  private static final String CLOUDY = "cloudy";
  private static final String OTHERWISE = "otherwise";
  private static final String UNFILLED = "unfilled";
  private static final String ALL = "all";

  /** What can be told of a load that nobody has processed, or of one that was recorded before. */
  private static final List<String> ALONE = List.of(AWAY.get(0), AWAY.get(1), OTHERWISE, UNFILLED);

  static final int MOST_RESTARTS = 20;
  private static final String OR_UNSURE = ", or ? if you are not sure";
  static final String OTHERWISE_REMEDY =
      "write none, or words with the jars they are said of, as: larger-jar 3, bulges 5";

  private final OutcomeReader.Key key;
  private final Problems problems;
  private final List<Fields> ofLoad = new ArrayList<>();
  private final List<Fields> ofJars = new ArrayList<>();

  LoadRows(OutcomeReader.Key key, Problems problems) {
    this.key = key;
    this.problems = problems;
  }

  void add(Fields row) {
    boolean tellsOfLoad =
        !row.has("jar")
            || has(row, PROCESS)
            || has(row, LISTS)
            || has(row, AWAY)
            || has(row, List.of(CLOUDY, OTHERWISE, UNFILLED));
    if (tellsOfLoad) {
      ofLoad.add(row);
    }
    if (row.has("jar")) {
      ofJars.add(row);
    }
  }

  private static boolean has(Fields row, List<String> columns) {
    return columns.stream().anyMatch(row::has);
  }

  private String name() {
    return "load " + key.load() + " of lot " + key.lot();
  }

  /**
   * What the rows say together; empty where that is told as a problem.
   *
   * @param lot empty where it is not known, which is told later
   */
  Optional<LoadReport> report(Optional<Lot> lot, ZoneId zone) {
    int before = problems.count();
    ofLoad.stream()
        .skip(1)
        .forEach(
            f -> problems.add(f.place(), name() + " is told of twice", "keep one of the rows"));
    Fields load = ofLoad.isEmpty() ? ofJars.get(0) : ofLoad.get(0);
    RecordWords words = new RecordWords(load);
    Optional<LoadRun> recorded = lot.flatMap(l -> l.load(key.load()));
    Departures otherwise =
        words.read(OTHERWISE, Departures::parse, OTHERWISE_REMEDY).orElse(Departures.NONE);
    Departures signs = otherwise.signs(true);
    Departures departures = otherwise.signs(false);
    boolean looks =
        has(load, LISTS)
            || !signs.isEmpty()
            || ofJars.stream().anyMatch(r -> r.has("sealed") || r.has("liquid"));
    boolean processes = has(load, PROCESS) || (recorded.isEmpty() && !looks && !has(load, ALONE));
    looks = looks || (load.has(CLOUDY) && !processes);
    if (looks && !processes && lot.isPresent() && recorded.isEmpty()) {
      problems.add(
          load.place(),
          "nothing tells how " + name() + " was processed",
          "add its start, end and so on");
      return Optional.empty();
    }
    Optional<Required> required = lot.flatMap(Lot::planned).map(Planned::required);
    Optional<Observed> seen =
        processes ? Optional.of(seen(load, words, required, departures, zone)) : Optional.empty();
    JarRows jars = looks ? looked(load, words) : JarRows.untold(words.jars("jars"), ofJars);
    if (looks && cloudy(seen, recorded) == Ticked.BLANK) {
      load.require(CLOUDY, "look at the canner's water; write yes, no" + OR_UNSURE);
    }
    Optional<Look> look =
        looks
            ? Optional.of(
                new Look(
                    jars.unsealed(), jars.someLost(), jars.halfLost(), signs, words.ticked(CLOUDY)))
            : Optional.empty();
    LoadReport report =
        new LoadReport(
            load.place(),
            key.lot(),
            key.load(),
            jars.inLoad(),
            seen,
            look,
            processes ? Departures.NONE : departures,
            putAway(load, words, seen.or(() -> recorded.map(LoadRun::seen)), zone),
            unfilled(load, words, lot),
            jars.notes(),
            load.has("jar") ? "" : load.text("note").orElse(""));
    return problems.count() > before ? Optional.empty() : Optional.of(report);
  }

  private static Ticked cloudy(Optional<Observed> seen, Optional<LoadRun> recorded) {
    Ticked before = recorded.map(r -> r.seen().cloudy()).orElse(Ticked.BLANK);
    return before == Ticked.BLANK ? seen.map(Observed::cloudy).orElse(before) : before;
  }

  private Observed seen(
      Fields load,
      RecordWords words,
      Optional<Required> required,
      Departures otherwise,
      ZoneId zone) {
    LocalDate day = ClockWord.date(load, "date").orElse(key.lot().packed());
    load.require("start", "write the time, as 10:05" + OR_UNSURE);
    load.require("end", "write the time, as 10:45" + OR_UNSURE);
    load.require("kept", "write yes, no" + OR_UNSURE);
    Optional<AcidNeed> acid = required.map(Required::acid).filter(a -> a != AcidNeed.NONE);
    if (acid.isPresent() && !load.has("acid-missing")) {
      load.require("acid-in-every-jar", "write yes, no" + OR_UNSURE);
    }
    if (required.flatMap(Required::pressure).isPresent()) {
      load.require("vented", "write yes, no" + OR_UNSURE);
    }
    if (required.map(r -> r.asksForGaugeTest(day)).orElse(false)) {
      load.require(
          "gauge-tested",
          "was the dial gauge tested within a year before that day? write yes, no" + OR_UNSURE);
    }
    int restarts = load.count("restarts", 0, MOST_RESTARTS).orElse(0);
    if (restarts > 0) {
      load.require("last-start", "write when the time was started over the last time" + OR_UNSURE);
    }
    LoadClock clock =
        LoadClock.read(
            day, zone.getRules(), words.time("start"), words.time("last-start"), words.time("end"));
    clock
        .faults()
        .forEach(
            f ->
                load.problem(
                    f.which().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    f.what(),
                    f.remedy()));
    AcidCells cells = AcidCells.of(load, words);
    return new Observed(
        clock.start(),
        clock.lastStart(),
        clock.end(),
        words.ticked("kept"),
        words.pressure("lowest-psi"),
        restarts,
        words.ticked(CLOUDY),
        cells.acid(),
        cells.missing(),
        words.ticked("vented"),
        words.ticked("gauge-tested"),
        otherwise);
  }

  /** None, some, or all of those that the plan puts into the load. */
  private JarNumbers unfilled(Fields load, RecordWords words, Optional<Lot> lot) {
    if (load.plainWord(UNFILLED).filter(ALL::equals).isPresent()) {
      return lot.map(l -> l.inLoad(key.load())).orElse(JarNumbers.NONE);
    }
    return words.jars(UNFILLED).orElse(JarNumbers.NONE);
  }

  private Optional<PutAway> putAway(
      Fields load, RecordWords words, Optional<Observed> seen, ZoneId zone) {
    JarNumbers refrigerator = words.jars(AWAY.get(0)).orElse(JarNumbers.NONE);
    JarNumbers freezer = words.jars(AWAY.get(1)).orElse(JarNumbers.NONE);
    if (refrigerator.plus(freezer).isEmpty()) {
      return Optional.empty();
    }
    load.require("since", "write when they were put there, as 2026-08-25 08:30");
    Optional<OffsetDateTime> ended = seen.flatMap(Observed::countedFrom);
    return words
        .moment("since", ended, zone.getRules())
        .map(t -> new PutAway(refrigerator, freezer, t));
  }

  private JarRows looked(Fields load, RecordWords words) {
    boolean listed = has(load, LISTS) || ofJars.isEmpty();
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
