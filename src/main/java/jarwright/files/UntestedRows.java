package jarwright.files;

import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.Source;
import jarwright.process.Untested;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads refusals.csv: what has no tested process, and what to do instead. */
public final class UntestedRows {
  static final String FILE = "refusals.csv";
  static final List<String> COLUMNS =
      List.of("words", "what", "why", "instead", "tested", "source");

  private UntestedRows() {}

  /**
   * Every untested food and way that the program knows.
   *
   * @throws Refused with every fault of the table
   */
  public static List<Untested> read() throws IOException, Refused {
    return read(ProcessTables.resource(FILE));
  }

  static List<Untested> read(String text) throws Refused {
    Problems faults = new Problems();
    Set<String> seen = new HashSet<>();
    TableText table = new TableText(FILE, text, COLUMNS, faults);
    List<Untested> rows = table.read(UntestedRows::row);
    for (TableText.Row row : table.rows()) {
      for (String word : words(row)) {
        if (!seen.add(word)) {
          table.fault(row, "\"" + word + "\" twice", "every word once");
        }
      }
    }
    faults.refuse();
    return rows;
  }

  private static Untested row(TableText.Row row) {
    for (String word : words(row)) {
      if (!word.matches("[a-z0-9%]+( [a-z0-9%]+)*+")) {
        throw new IllegalArgumentException("\"" + word + "\" is not small words with spaces");
      }
    }
    return new Untested(
        words(row),
        row.get("what"),
        row.get("why"),
        row.get("instead"),
        row.get("tested").isEmpty() ? List.of() : List.of(row.get("tested").split("\\|", -1)),
        new Source(row.get("source")));
  }

  private static List<String> words(TableText.Row row) {
    return List.of(row.get("words").replace('-', ' ').split("\\|", -1));
  }
}
