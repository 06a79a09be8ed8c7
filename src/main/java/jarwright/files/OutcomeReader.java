package jarwright.files;

import jarwright.lot.LotCode;
import jarwright.pantry.LoadReport;
import jarwright.pantry.Pantry;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads what happened on a canning day, as CSV with the fields of the checklist. Two shapes may be
 * mixed: one row for each load, which lists the numbers of its jars that did not seal or lost
 * liquid; and rows for single jars. A load may be told of when it has been processed, and its jars
 * once they have cooled, in the same rows filled in further or in rows of their own.
 *
 * <p>Columns: {@code lot}; {@code load} (1 where left out); {@code jars} in the load (else those
 * planned); {@code date} (else the day of packing); {@code start}, {@code last-start} and {@code
 * end} of the clock; {@code kept} (boil or pressure, from the last start on); {@code lowest-psi};
 * {@code restarts}; {@code cloudy} (the canner's water); {@code acid-in-every-jar}, or {@code
 * acid-missing} (jar numbers, none or all); {@code vented}; {@code gauge-tested} (the dial, within
 * a year); {@code otherwise} (words of {@link jarwright.pantry.Otherwise}, each with the jars it is
 * said of); {@code unsealed}, {@code some-lost}, {@code half-lost} (jar numbers, or none); {@code
 * in-refrigerator}, {@code in-freezer} (jars put away before they were told of, {@code since}
 * when); {@code unfilled} (jar numbers, none or all); {@code note}; and for a single jar {@code
 * jar}, {@code sealed}, {@code liquid}. A lot left out is that of the row above. A question mark
 * says that nobody is sure.
 */
public final class OutcomeReader {
  /** All columns, in the order in which a sheet shows them. */
  public static final List<String> COLUMNS =
      List.of(
          "lot",
          "load",
          "jars",
          "date",
          "start",
          "last-start",
          "end",
          "kept",
          "lowest-psi",
          "restarts",
          "cloudy",
          "acid-in-every-jar",
          "acid-missing",
          "vented",
          "gauge-tested",
          "otherwise",
          "unsealed",
          "some-lost",
          "half-lost",
          "in-refrigerator",
          "in-freezer",
          "since",
          "unfilled",
          "jar",
          "sealed",
          "liquid",
          "note");

  static final int MOST_LOADS = 99;

  private final Pantry pantry;
  private final ZoneId zone;
  private final Problems problems = new Problems();
  private final Map<Key, LoadRows> loads = new LinkedHashMap<>();

  /** A load by its lot and number. */
  record Key(LotCode lot, int load) {}

  private OutcomeReader(Pantry pantry, ZoneId zone) {
    this.pantry = pantry;
    this.zone = zone;
  }

  /**
   * Reads a day's file.
   *
   * @param pantry tells what each lot's process asks for
   * @param zone of the kitchen's clock
   * @throws Refused with every problem in it
   * @throws IOException where it cannot be read
   */
  public static List<LoadReport> read(Path file, Pantry pantry, ZoneId zone)
      throws IOException, Refused {
    OutcomeReader reader = new OutcomeReader(pantry, zone);
    return reader.reports(CsvTree.read(TextFile.read(file), COLUMNS, Map.of(), reader.problems));
  }

  /** Reads rows that have the columns of a day's file, wherever they come from. */
  static List<LoadReport> read(Written.Items rows, Pantry pantry, ZoneId zone) throws Refused {
    return new OutcomeReader(pantry, zone).reports(rows);
  }

  private List<LoadReport> reports(Written.Items rows) throws Refused {
    Optional<Key> above = Optional.empty();
    for (Written row : rows.items()) {
      if (problems.isFull()) {
        break;
      }
      Fields fields = new Fields((Written.Keys) row, "a row", COLUMNS, Map.of(), problems);
      Optional<Key> key = key(fields, above);
      key.ifPresent(k -> loads.computeIfAbsent(k, x -> new LoadRows(k, problems)).add(fields));
      above = key;
    }
    List<LoadReport> reports = new ArrayList<>();
    loads.forEach((key, load) -> load.report(pantry.lot(key.lot()), zone).ifPresent(reports::add));
    if (loads.isEmpty() && problems.isEmpty()) {
      problems.add(rows.place(), "there is no row below the header", "write a row for each load");
    }
    problems.refuse();
    return reports;
  }

  private Optional<Key> key(Fields fields, Optional<Key> above) {
    RecordWords words = new RecordWords(fields);
    Optional<LotCode> inJar = words.lotOfJar("jar");
    Optional<LotCode> lot = fields.has("lot") ? words.lot("lot") : inJar;
    if (lot.isPresent() && inJar.isPresent() && !lot.equals(inJar)) {
      fields.problem("jar", "the jar is not of lot " + lot.get(), "copy it from the label");
    }
    boolean silent = !fields.has("lot") && inJar.isEmpty();
    if (silent && above.isPresent()) {
      lot = above.map(Key::lot);
    } else if (silent) {
      fields.require("lot", "write the lot as on the label");
    }
    boolean same = fields.has("jar") && above.isPresent() && above.map(Key::lot).equals(lot);
    int usual = same ? above.get().load() : 1;
    int load = fields.has("load") ? fields.count("load", 1, MOST_LOADS).orElse(0) : usual;
    return load == 0 ? Optional.empty() : lot.map(l -> new Key(l, load));
  }
}
