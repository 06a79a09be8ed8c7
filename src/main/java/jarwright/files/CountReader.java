package jarwright.files;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import jarwright.pantry.Counted;
import jarwright.pantry.Jar;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.Spot;
import jarwright.pantry.StockTake;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Reads a stock-take as a spreadsheet saves it: the table that {@link ShelfListing} gives, filled
 * in, or one written by hand.
 *
 * <p>Columns: {@code lot}; {@code shelf} where the jars were seen (left out: it is not said, so no
 * move is told); {@code jars} that were looked for there (left out: all that the ledger has there);
 * {@code counted}, how many there were, and {@code found}, which ones: numbers, {@code all} or
 * {@code none}, needed where not all that were looked for were there. A row with neither was not
 * counted, and nothing is missed for it. A row with a {@code jar} alone, as a scanner gives it,
 * says that this jar was seen. Jars without a lot have their {@code product} and {@code counted}.
 * Other columns of the table are passed over.
 */
public final class CountReader {
  /** All columns. */
  public static final List<String> COLUMNS = columns();

  private static final int MOST = 99_999;

  private final Pantry pantry;
  private final Problems problems = new Problems();
  private final List<Counted> rows = new ArrayList<>();
  private final Map<String, Integer> strangers = new TreeMap<>();
  private final Map<JarId, Integer> seen = new HashMap<>();
  private int leftOut;

  private CountReader(Pantry pantry) {
    this.pantry = pantry;
  }

  private static List<String> columns() {
    List<String> columns = new ArrayList<>(ShelfListing.COLUMNS);
    columns.add("jar");
    return List.copyOf(columns);
  }

  /**
   * Reads a file.
   *
   * @throws Refused with every problem in it: mistyped lots, jars counted twice, and the like
   */
  public static StockTake read(Path file, Pantry pantry) throws IOException, Refused {
    return new CountReader(pantry).stockTake(TextFile.read(file));
  }

  private StockTake stockTake(TextFile file) throws Refused {
    for (Written row : CsvTree.read(file, COLUMNS, Map.of(), problems).items()) {
      row(new Fields((Written.Keys) row, "a row", COLUMNS, Map.of(), problems));
    }
    if (rows.isEmpty() && strangers.isEmpty() && problems.isEmpty()) {
      problems.add(
          file.at(1, 1),
          "nothing is counted in any row",
          "write into the column counted how many jars stand there, 0 if none");
    }
    problems.refuse();
    return new StockTake(rows, strangers, leftOut);
  }

  private void row(Fields fields) {
    if (fields.has("jar")) {
      scanned(fields);
      return;
    }
    if (!fields.has(ShelfListing.COUNTED) && !fields.has(ShelfListing.FOUND)) {
      leftOut++;
      return;
    }
    RecordWords words = new RecordWords(fields);
    Optional<LotCode> lot = words.lot("lot");
    if (lot.isPresent()) {
      counted(fields, words, lot.get());
    } else if (!fields.has("lot")) {
      stranger(fields, words);
    }
  }

  private void scanned(Fields fields) {
    RecordWords words = new RecordWords(fields);
    Optional<JarId> jar = words.read("jar", JarId::parse, "copy it from the label");
    jar.ifPresent(j -> add(fields, words, j.lot(), JarNumbers.NONE, JarNumbers.of(j.number())));
  }

  private void stranger(Fields fields, RecordWords words) {
    Optional<String> product = words.text("product");
    OptionalInt counted = fields.count(ShelfListing.COUNTED, 0, MOST);
    if (product.isEmpty() || counted.isEmpty()) {
      fields.require(
          "lot",
          "write the lot as on the label, or product and counted for jars from" + " elsewhere");
    } else if (counted.getAsInt() > 0) {
      strangers.merge(product.get(), counted.getAsInt(), Integer::sum);
    }
  }

  private void counted(Fields fields, RecordWords words, LotCode lot) {
    JarNumbers listed =
        fields.has("jars") ? words.jars("jars").orElse(JarNumbers.NONE) : there(lot, words);
    OptionalInt counted = fields.count(ShelfListing.COUNTED, 0, MOST);
    if (fields.has(ShelfListing.FOUND)) {
      Optional<JarNumbers> found =
          words.text(ShelfListing.FOUND).filter(t -> t.equalsIgnoreCase("all")).isPresent()
              ? Optional.of(listed)
              : words.jars(ShelfListing.FOUND);
      found.ifPresent(f -> agreed(fields, words, lot, listed, f, counted));
    } else if (counted.isEmpty()) {
      return;
    } else if (counted.getAsInt() == 0) {
      add(fields, words, lot, listed, JarNumbers.NONE);
    } else if (counted.getAsInt() == listed.size()) {
      add(fields, words, lot, listed, listed);
    } else if (pantry.lot(lot).isEmpty()) {
      strangers.merge("lot " + lot, counted.getAsInt(), Integer::sum);
    } else {
      fields.problem(
          ShelfListing.COUNTED,
          counted.getAsInt()
              + " jars were counted where "
              + listed.size()
              + " were looked for ("
              + (listed.isEmpty() ? "none" : listed)
              + ")",
          "write into the column found which ones were there, like 1..4, 7");
    }
  }

  private void agreed(
      Fields fields,
      RecordWords words,
      LotCode lot,
      JarNumbers listed,
      JarNumbers found,
      OptionalInt counted) {
    if (counted.isPresent() && counted.getAsInt() != found.size()) {
      fields.problem(
          ShelfListing.COUNTED,
          counted.getAsInt() + " jars were counted, but " + found.size() + " are named as found",
          "make the two agree, or leave counted empty");
    } else {
      add(fields, words, lot, listed, found);
    }
  }

  /** What the ledger has of the lot at the row's place. */
  private JarNumbers there(LotCode lot, RecordWords words) {
    Optional<String> place = words.text("shelf");
    return JarNumbers.of(
        pantry.lot(lot).stream()
            .map(Lot::jars)
            .flatMap(Collection::stream)
            .filter(j -> j.standing().isHere() && isAt(j, place))
            .map(j -> j.id().number())
            .toList());
  }

  private static boolean isAt(Jar jar, Optional<String> place) {
    return place.map(Spot.of(jar.standing())::isCalled).orElse(true);
  }

  private void add(
      Fields fields, RecordWords words, LotCode lot, JarNumbers listed, JarNumbers found) {
    int line = fields.place().line();
    for (int number : found.stream().toArray()) {
      Integer before = seen.putIfAbsent(lot.jar(number), line);
      if (before != null) {
        fields.problem(
            fields.has("jar") ? "jar" : "lot",
            "jar " + lot.jar(number) + " is counted in line " + before + " already",
            "leave it where it was seen");
        return;
      }
    }
    rows.add(new Counted(lot, words.text("shelf"), listed, found));
  }
}
