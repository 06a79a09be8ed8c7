package jarwright.files;

import jarwright.pantry.Departures;
import jarwright.pantry.LoadReport;
import jarwright.pantry.Pantry;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What happened on a canning day, keyed in cell by cell with the columns of a day's file. */
public final class KeyedOutcome {
  private static final List<String> WORDS = List.of("all", "?");

  private KeyedOutcome() {}

  /**
   * Reads rows, each with its filled columns.
   *
   * @param where what they were keyed into, for messages, as {@code seal 260824A-T}
   * @param pantry tells what each lot's process asks for
   * @param zone of the kitchen's clock
   * @throws Refused with every problem in them
   */
  public static List<LoadReport> read(
      String where, List<Map<String, String>> rows, Pantry pantry, ZoneId zone) throws Refused {
    List<Written> written = new ArrayList<>();
    rows.forEach(row -> written.add(row(where, row)));
    return OutcomeReader.read(new Written.Items(Place.wholeFile(where), written), pantry, zone);
  }

  private static Written.Keys row(String where, Map<String, String> cells) {
    String load = cells.getOrDefault("load", "");
    Place place = Place.wholeFile(load.isEmpty() ? where : where + ", load " + load);
    Map<String, Written.Entry> entries = new LinkedHashMap<>();
    cells.forEach(
        (column, text) ->
            entries.put(
                column, new Written.Entry(place, new Written.Text(place, text.strip(), false))));
    return new Written.Keys(place, entries);
  }

  /**
   * What is wrong with a single cell; empty where it can be read.
   *
   * @param column one of {@link OutcomeReader#COLUMNS}
   */
  public static Optional<Problem> fault(String column, String text) {
    Problems problems = new Problems();
    Written.Keys row = row(column, Map.of(column, text));
    Fields fields = new Fields(row, "a row", OutcomeReader.COLUMNS, Map.of(), problems);
    RecordWords words = new RecordWords(fields);
    switch (column) {
      case "start", "last-start", "end" -> words.time(column);
      case "kept", "cloudy", "acid-in-every-jar", "vented", "gauge-tested" -> words.ticked(column);
      case "unsealed", "some-lost", "half-lost", "jars", "in-refrigerator", "in-freezer" ->
          words.jars(column);
      case "unfilled", "acid-missing" -> allOrJars(fields, words, column);
      case "otherwise" -> words.read(column, Departures::parse, LoadRows.OTHERWISE_REMEDY);
      case "since" -> words.localMoment(column);
      case "lowest-psi" -> words.pressure(column);
      case "restarts" -> fields.count(column, 0, LoadRows.MOST_RESTARTS);
      case "date" -> ClockWord.date(fields, column);
      default -> fields.text(column);
    }
    return problems.list().stream().findFirst();
  }

  private static void allOrJars(Fields fields, RecordWords words, String column) {
    boolean word = fields.plainWord(column).filter(w -> WORDS.contains(w)).isPresent();
    if (!word) {
      words.jars(column);
    }
  }
}
