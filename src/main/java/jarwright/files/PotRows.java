package jarwright.files;

import jarwright.ask.Pots;
import jarwright.ask.Untested;
import jarwright.page.Language;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads pots.csv: names of pots and machines that are no canners. */
public final class PotRows {
  static final String FILE = "pots.csv";
  static final List<String> COLUMNS = List.of("names", "language", "refusal", "source");

  private PotRows() {}

  /**
   * Why nothing can be canned in what a text names; empty where it names no such pot or machine.
   *
   * @throws Refused with every fault of the tables
   */
  public static Optional<Untested> unfit(String text) throws IOException, Refused {
    Optional<String> key = new Pots(read(ProcessTables.resource(FILE))).refusal(text);
    return key.isEmpty() ? Optional.empty() : Optional.of(refusal(key.get()));
  }

  private static Untested refusal(String key) throws IOException, Refused {
    return UntestedRows.read().stream()
        .filter(u -> u.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(FILE + " names no refusal: " + key));
  }

  static List<Pots.Named> read(String text) throws Refused {
    Problems faults = new Problems();
    TableText table = new TableText(FILE, text, COLUMNS, faults);
    List<Pots.Named> names = new ArrayList<>();
    table.read(row -> names.addAll(row(row)));
    faults.refuse();
    return names;
  }

  private static List<Pots.Named> row(TableText.Row row) {
    if (!Language.tags().contains(row.get("language")) || row.get("source").isBlank()) {
      throw new IllegalArgumentException("a name needs its language and its source");
    }
    Optional<String> refusal = Optional.of(row.get("refusal")).filter(k -> !k.isEmpty());
    return Stream.of(row.get("names").split("\\|", -1))
        .map(
            name -> {
              if (!name.matches("[a-z]+( [a-z]+)*+")) {
                throw new IllegalArgumentException("\"" + name + "\" is not small words");
              }
              return new Pots.Named(row.get("language"), name, refusal);
            })
        .toList();
  }
}
