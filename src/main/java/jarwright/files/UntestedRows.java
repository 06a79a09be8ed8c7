package jarwright.files;

import jarwright.ask.Untested;
import jarwright.page.Language;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.Source;
import java.io.IOException;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Reads refusals.csv: what has no tested process, and what to do instead. */
public final class UntestedRows {
  static final String FILE = "refusals.csv";
  static final List<String> COLUMNS =
      List.of("key", "kind", "words", "what", "why", "instead", "tested", "source");
  static final List<String> TRANSLATED = List.of("key", "words", "what", "why", "instead");

  private UntestedRows() {}

  /**
   * Every untested food, way and jar that the program knows.
   *
   * @throws Refused with every fault of the tables
   */
  public static List<Untested> read() throws IOException, Refused {
    Map<String, String> translations = new LinkedHashMap<>();
    for (String language : Language.tags()) {
      if (!Language.isOfTables(language)) {
        translations.put(language, ProcessTables.resource(file(language)));
      }
    }
    return read(ProcessTables.resource(FILE), translations);
  }

  static String file(String language) {
    return "refusals_" + language + ".csv";
  }

  /**
   * @param translations the same in other languages, by their tags
   */
  static List<Untested> read(String text, Map<String, String> translations) throws Refused {
    Problems faults = new Problems();
    TableText table = new TableText(FILE, text, COLUMNS, faults);
    Map<String, Map<String, Untested.Told>> told = new LinkedHashMap<>();
    take(table, Language.ENGLISH.tag(), told);
    Set<String> keys = Set.copyOf(told.keySet());
    for (Map.Entry<String, String> one : translations.entrySet()) {
      TableText other = new TableText(file(one.getKey()), one.getValue(), TRANSLATED, faults);
      take(other, one.getKey(), told);
      for (TableText.Row row : other.rows()) {
        if (!keys.contains(row.get("key"))) {
          other.fault(row, "a key that " + FILE + " does not have", "a key from there");
        }
      }
    }
    List<Untested> rows = table.read(row -> row(row, told));
    faults.refuse();
    return rows;
  }

  private static void take(
      TableText table, String language, Map<String, Map<String, Untested.Told>> told) {
    Set<String> seen = new HashSet<>();
    table.read(
        row -> {
          Untested.Told one =
              new Untested.Told(words(row), row.get("what"), row.get("why"), row.get("instead"));
          Map<String, Untested.Told> own =
              told.computeIfAbsent(row.get("key"), k -> new LinkedHashMap<>());
          if (own.put(language, one) != null) {
            throw new IllegalArgumentException("the same key twice");
          }
          return one;
        });
    for (TableText.Row row : table.rows()) {
      for (String word : words(row)) {
        if (!seen.add(word)) {
          table.fault(row, "\"" + word + "\" twice", "every word once");
        }
      }
    }
  }

  private static Untested row(TableText.Row row, Map<String, Map<String, Untested.Told>> told) {
    for (String word : words(row)) {
      if (!word.matches("[\\p{Ll}0-9%./]+( [\\p{Ll}0-9%./]+)*+")) {
        throw new IllegalArgumentException("\"" + word + "\" is not small words with spaces");
      }
    }
    Untested.Kind kind =
        row.word(
            "kind",
            word ->
                Stream.of(Untested.Kind.values())
                    .filter(k -> k.name().toLowerCase(Locale.ROOT).equals(word))
                    .findFirst(),
            List.of("food", "way", "jar"));
    return new Untested(
        row.get("key"),
        kind,
        told.getOrDefault(row.get("key"), Map.of()),
        row.get("tested").isEmpty() ? List.of() : List.of(row.get("tested").split("\\|", -1)),
        new Source(row.get("source")));
  }

  private static List<String> words(TableText.Row row) {
    return List.of(row.get("words").replace('-', ' ').split("\\|", -1));
  }
}
