package jarwright.files;

import jarwright.lot.LotCode;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Answers about a lot's loads that are not in the ledger yet: a small file with the columns of a
 * day's file in the household's folder, which goes when all of them are recorded.
 */
public final class UnfinishedSeal {
  private static final String FOLDER = "unfinished";
  private static final String LOAD = "load";

  private final Path folder;
  private final String name;

  public UnfinishedSeal(Path household, LotCode lot) {
    this.folder = household.resolve(FOLDER);
    this.name = "seal-" + lot + ".csv";
  }

  /**
   * What has been answered about a load, by column; nothing where it was not begun.
   *
   * @throws Refused where the file was damaged
   */
  public Map<String, String> of(int load) throws IOException, Refused {
    return all().getOrDefault(load, Map.of());
  }

  /** Writes the answers about a load in the place of those before. */
  public void keep(int load, Map<String, String> cells) throws IOException, Refused {
    Map<Integer, Map<String, String>> all = all();
    all.put(load, cells);
    write(all);
  }

  /** Forgets a load, and the file with the last. */
  public void drop(int load) throws IOException, Refused {
    Map<Integer, Map<String, String>> all = all();
    if (all.remove(load) != null) {
      write(all);
    }
  }

  private void write(Map<Integer, Map<String, String>> all) throws IOException {
    if (all.isEmpty()) {
      Files.deleteIfExists(folder.resolve(name));
      return;
    }
    List<List<String>> rows =
        all.values().stream()
            .map(c -> OutcomeReader.COLUMNS.stream().map(k -> c.getOrDefault(k, "")).toList())
            .toList();
    Listing listing = new Listing(OutcomeReader.COLUMNS, Set.of(), rows);
    byte[] text = listing.csv(Cell::out).getBytes(StandardCharsets.UTF_8);
    new OutputFolder(folder).write(Map.of(name, text));
  }

  private Map<Integer, Map<String, String>> all() throws IOException, Refused {
    Map<Integer, Map<String, String>> all = new TreeMap<>();
    Path file = folder.resolve(name);
    if (!Files.exists(file)) {
      return all;
    }
    Problems problems = new Problems();
    Written.Items rows =
        CsvTree.read(TextFile.read(file), OutcomeReader.COLUMNS, Map.of(), problems);
    for (Written row : rows.items()) {
      Fields fields =
          new Fields((Written.Keys) row, "a row", OutcomeReader.COLUMNS, Map.of(), problems);
      RecordWords words = new RecordWords(fields);
      Map<String, String> cells = new LinkedHashMap<>();
      OutcomeReader.COLUMNS.forEach(k -> words.text(k).ifPresent(t -> cells.put(k, t)));
      fields.require(LOAD, "delete the file: its answers are not in the ledger");
      fields.count(LOAD, 1, OutcomeReader.MOST_LOADS).ifPresent(n -> all.put(n, cells));
    }
    problems.refuse();
    return all;
  }
}
