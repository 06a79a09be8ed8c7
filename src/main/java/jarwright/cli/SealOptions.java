package jarwright.cli;

import jarwright.pantry.Lot;
import jarwright.pantry.Planned;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
  private static final String ALL = "all";
  private static final String NONE = "none";
  private static final List<String> LOSSES = List.of("unsealed", "some-lost", "half-lost");
  private static final Pattern OF_A_JAR = Pattern.compile("(\\d{1,5})\\s*=(.*)");
  private static final String TIME = "TIME";
  private static final String BOX = "yes|no|?";
  private static final String JARS = "JARS";

  private static final List<Option> OPTIONS =
      List.of(
          CommonOptions.withValue(null, LOAD, "N", "what follows is of this load"),
          CommonOptions.withValue(null, "date", "DATE", "the day, if not that of packing"),
          CommonOptions.withValue(null, "start", TIME, "of the clock, as 10:05; ? if not known"),
          CommonOptions.withValue(null, "last-start", TIME, "of the clock after a restart"),
          CommonOptions.withValue(null, "end", TIME, "of the full time"),
          CommonOptions.withValue(
              null, "kept", BOX, "whether boil or pressure held from the last start on"),
          CommonOptions.withValue(null, "restarts", "N", "how often the time was begun again"),
          CommonOptions.withValue(null, "lowest-psi", "PSI", "lowest pressure seen"),
          CommonOptions.withValue(null, "vented", BOX, "the pressure canner, for its full time"),
          CommonOptions.withValue(null, "acid-in-every-jar", BOX, "where the process asks for it"),
          CommonOptions.withValue(null, "cloudy", BOX, "the canner's water afterwards"),
          CommonOptions.withValue(null, "jars", JARS, "in the load, if not those planned"),
          CommonOptions.withValue(null, "unfilled", JARS, "planned and never filled"),
          CommonOptions.withValue(
              null, SEALED, ALL, "all jars not named below are sealed and lost no liquid"),
          CommonOptions.withValue(null, "unsealed", JARS, "not sealed, as 3,5..7, or none"),
          CommonOptions.withValue(null, "some-lost", JARS, "lost less than half of the liquid"),
          CommonOptions.withValue(null, "half-lost", JARS, "lost half of the liquid or more"),
          CommonOptions.withValue(null, NOTE, "TEXT", "on the load; on jar 3 as 3=TEXT"));

  private static final List<String> NAMES = OPTIONS.stream().map(Option::getLongOpt).toList();

  private SealOptions() {}

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
  static List<Map<String, String>> rows(Call call, Lot lot, Planned planned) throws Usage {
    Map<String, String> common = new LinkedHashMap<>(Map.of("lot", lot.code().toString()));
    List<Map<String, String>> loads = new ArrayList<>();
    List<Map<String, String>> jars = new ArrayList<>();
    for (Option option : call.line().getOptions()) {
      String name = option.getLongOpt();
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
      if (planned.loads().size() > 1) {
        throw new Usage(
            "lot "
                + lot.code()
                + " has "
                + planned.loads().size()
                + " loads; say before each one's times which it is: --load 1 … --load 2 …");
      }
      loads.add(new LinkedHashMap<>(Map.of(LOAD, "1")));
    }
    List<Map<String, String>> rows = new ArrayList<>();
    for (Map<String, String> own : loads) {
      Map<String, String> row = new LinkedHashMap<>(common);
      row.putAll(own);
      rows.add(filled(row));
    }
    jars.forEach(j -> j.putIfAbsent(LOAD, "1"));
    rows.addAll(jars);
    return rows;
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
