package jarwright.cli;

import jarwright.pantry.Departures;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.Lot;
import jarwright.pantry.Otherwise;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;

/**
 * What happened, as options of a command line. They have the names of a day file's columns. Those
 * before the first {@code --load} hold for every load, those after one for it alone.
 */
final class SealOptions {
  private static final String LOAD = "load";
  private static final String SEALED = "sealed";
  private static final String NOTE = "note";
  private static final String ACID = "acid-in-every-jar";
  private static final String ACID_SHORT = "acid";
  private static final String OTHERWISE = "otherwise";
  private static final String UNFILLED = "unfilled";
  private static final String ALL = "all";
  private static final String NONE = "none";
  private static final List<String> LOSSES = List.of("unsealed", "some-lost", "half-lost");
  private static final Pattern OF_A_JAR = Pattern.compile("(\\d{1,5})\\s*=(.*)");
  private static final String TIME = "TIME";
  private static final String BOX = "yes|no|?";
  private static final String JARS = "JARS";

  private static final List<Option> OPTIONS =
      List.of(
          option(LOAD, "N", "options after this are for load N"),
          option("date", "DATE", "the day, if not that of packing"),
          option("start", TIME, "when the timer was started, as 10:05; ? if not known"),
          option("last-start", TIME, "when the time was started over the last time"),
          option("end", TIME, "when the time was up"),
          option("kept", BOX, "did boil or pressure hold from the last start on?"),
          option("restarts", "N", "how many times the time was started over"),
          option("lowest-psi", "PSI", "lowest pressure seen"),
          option("vented", BOX, "was the pressure canner vented for its full time?"),
          option(ACID, BOX, "did every jar get its acid?"),
          option(ACID_SHORT, BOX, "the same"),
          option("acid-missing", JARS, "jars without acid, none, or all"),
          option("gauge-tested", BOX, "was the dial gauge tested within a year before?"),
          option("cloudy", BOX, "was the canner's water cloudy afterward?"),
          option(
              OTHERWISE,
              "WORDS",
              "what rarely differs from the sheet, as larger-jar 3: "
                  + String.join(
                      ", ", Arrays.stream(Otherwise.values()).map(Otherwise::word).toList())),
          option("jars", JARS, "in the load, if not those planned"),
          option(UNFILLED, JARS, "planned and never filled; or all"),
          option(SEALED, ALL, "cooled: all jars not named below are sealed and lost no liquid"),
          option("unsealed", JARS, "not sealed, as 3,5..7, or none"),
          option("some-lost", JARS, "lost less than half of the liquid"),
          option("half-lost", JARS, "lost half of the liquid or more"),
          option("in-refrigerator", JARS, "put into the refrigerator before they were told of"),
          option("in-freezer", JARS, "put into the freezer before they were told of"),
          option("since", TIME, "when they were put there, as 2026-08-25 08:30"),
          option(NOTE, "TEXT", "on the load; on jar 3 as 3=TEXT"));

  private static final List<String> NAMES = OPTIONS.stream().map(Option::getLongOpt).toList();

  /** What only somebody who tells how one load was processed says. */
  private static final Set<String> OF_ONE_LOAD =
      Set.of(
          "date",
          "start",
          "last-start",
          "end",
          "kept",
          "restarts",
          "lowest-psi",
          "vented",
          ACID,
          "acid-missing",
          "gauge-tested",
          "jars");

  private static final Set<String> JAR_LISTS =
      Set.of("unsealed", "some-lost", "half-lost", "in-refrigerator", "in-freezer", UNFILLED);

  private SealOptions() {}

  private static Option option(String name, String value, String what) {
    return CommonOptions.withValue(null, name, value, what);
  }

  static void addTo(Options options) {
    OPTIONS.forEach(options::addOption);
  }

  static boolean areIn(Call call) {
    return NAMES.stream().anyMatch(call::has);
  }

  /**
   * Rows of a day's file.
   *
   * @throws Usage where the options contradict each other or do not say which load is meant
   */
  static List<Map<String, String>> rows(Call call, Lot lot) throws Usage {
    Map<String, String> common = new LinkedHashMap<>(Map.of("lot", lot.code().toString()));
    List<Map<String, String>> loads = new ArrayList<>();
    List<Map<String, String>> jars = new ArrayList<>();
    for (Option option : call.line().getOptions()) {
      String name = option.getLongOpt().equals(ACID_SHORT) ? ACID : option.getLongOpt();
      String value = option.getValue();
      if (name.equals(LOAD)) {
        loads.add(new LinkedHashMap<>(Map.of(LOAD, value)));
      } else if (NAMES.contains(name)) {
        Map<String, String> cells = loads.isEmpty() ? common : loads.get(loads.size() - 1);
        Matcher ofJar = OF_A_JAR.matcher(value);
        if (name.equals(NOTE) && ofJar.matches()) {
          jars.add(noteOnJar(common, cells, ofJar));
        } else if (cells.put(name, value) != null) {
          throw new Usage("--" + name + " is given twice for one load; keep one");
        }
      }
    }
    if (loads.isEmpty()) {
      loads.addAll(meant(lot, common));
    }
    List<Map<String, String>> rows = new ArrayList<>();
    for (Map<String, String> own : loads) {
      Map<String, String> row = new LinkedHashMap<>(common);
      row.putAll(own);
      rows.add(filled(row));
    }
    jars.forEach(j -> j.putIfAbsent(LOAD, loadOf(lot, j.get("jar"))));
    rows.addAll(jars);
    return rows;
  }

  /**
   * The loads that are meant where none is named: the only one, or all that wait for what is told,
   * each with its own of the jars.
   */
  private static List<Map<String, String>> meant(Lot lot, Map<String, String> common) throws Usage {
    int planned = lot.planned().orElseThrow().loads().size();
    if (planned == 1) {
      return List.of(new LinkedHashMap<>(Map.of(LOAD, "1")));
    }
    if (common.keySet().stream().anyMatch(OF_ONE_LOAD::contains)) {
      throw new Usage(
          "lot "
              + lot.code()
              + " has "
              + planned
              + " loads; say before each one's times which it is: --load 1 … --load 2 …");
    }
    boolean unfilled = common.containsKey(UNFILLED) && !common.containsKey(SEALED);
    List<Integer> loads =
        IntStream.rangeClosed(1, planned).filter(n -> waits(lot, n, unfilled)).boxed().toList();
    List<Map<String, String>> rows = new ArrayList<>();
    for (int load : loads.isEmpty() ? List.of(1) : loads) {
      Map<String, String> row = new LinkedHashMap<>(Map.of(LOAD, String.valueOf(load)));
      UnaryOperator<JarNumbers> own = own(lot, loads, load);
      for (String list : JAR_LISTS) {
        part(common.get(list), t -> text(own.apply(JarNumbers.parse(t))))
            .ifPresent(t -> row.put(list, t));
      }
      part(common.get(OTHERWISE), t -> Departures.parse(t).ofJars(own).toString())
          .ifPresent(t -> row.put(OTHERWISE, t.isEmpty() ? NONE : t));
      if (!unfilled || !NONE.equals(row.get(UNFILLED))) {
        rows.add(row);
      }
    }
    return rows;
  }

  /** Whether a load waits to be told that it was not needed, or how its jars came out. */
  private static boolean waits(Lot lot, int load, boolean unfilled) {
    return unfilled
        ? lot.load(load).isEmpty() && !lot.inLoad(load).isEmpty()
        : !lot.cooling(load).isEmpty();
  }

  /** Which of some jars are told with a load; the first takes those that are of none. */
  private static UnaryOperator<JarNumbers> own(Lot lot, List<Integer> loads, int load) {
    if (!loads.isEmpty() && loads.get(0) != load) {
      return jars -> jars.in(lot.inLoad(load));
    }
    JarNumbers others =
        loads.stream()
            .filter(n -> n != load)
            .map(lot::inLoad)
            .reduce(JarNumbers.NONE, JarNumbers::plus);
    return jars -> jars.minus(others);
  }

  private static String text(JarNumbers jars) {
    return jars.isEmpty() ? NONE : jars.toString();
  }

  /** Part of what was typed; empty where it says all, or will be told as what cannot be read. */
  private static Optional<String> part(String typed, UnaryOperator<String> part) {
    try {
      return Optional.ofNullable(typed).map(part);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static Map<String, String> noteOnJar(
      Map<String, String> common, Map<String, String> cells, Matcher note) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("lot", common.get("lot"));
    if (cells.containsKey(LOAD)) {
      row.put(LOAD, cells.get(LOAD));
    }
    row.put("jar", note.group(1));
    row.put(NOTE, note.group(2));
    return row;
  }

  private static String loadOf(Lot lot, String jar) {
    int number = Integer.parseInt(jar);
    return IntStream.rangeClosed(1, lot.planned().orElseThrow().loads().size())
        .filter(n -> lot.inLoad(n).contains(number))
        .mapToObj(String::valueOf)
        .findFirst()
        .orElse("1");
  }

  /** Only where it was said that all others are sealed do the empty lists stand for none. */
  private static Map<String, String> filled(Map<String, String> row) throws Usage {
    String sealed = row.remove(SEALED);
    if (sealed == null) {
      return row;
    }
    if (!sealed.strip().equalsIgnoreCase(ALL)) {
      throw new Usage("--sealed takes all, not " + sealed + "; name the others with --unsealed");
    }
    LOSSES.forEach(l -> row.putIfAbsent(l, NONE));
    return row;
  }
}
