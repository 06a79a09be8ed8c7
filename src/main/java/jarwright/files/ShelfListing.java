package jarwright.files;

import jarwright.pantry.StockLine;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * What is on the shelves, for other programs and for a stock-take: a row for each lot at each
 * place, with two columns to fill in that {@link CountReader} reads back.
 */
public final class ShelfListing {
  static final String COUNTED = "counted";
  static final String FOUND = "found";

  /**
   * Where the jars are ({@code shelf}), what they are, how urgent, and their numbers; then to fill
   * in how many were counted and, if not all, which were found.
   */
  static final List<String> COLUMNS =
      List.of(
          "shelf", "lot", "product", "size", "packed", "use-by", "state", "process", "jars",
          "number", COUNTED, FOUND);

  private static final Set<String> NUMBERS = Set.of("number");

  private ShelfListing() {}

  /** A table, by place, with empty columns to fill in. */
  public static String csv(List<StockLine> lines) throws IOException {
    List<StockLine> byPlace = lines.stream().sorted(Comparator.comparing(StockLine::spot)).toList();
    return listing(byPlace).csv(Cell::out);
  }

  /** A list of objects, first to use first. */
  public static String json(List<StockLine> lines) throws IOException {
    return listing(lines).json();
  }

  private static Listing listing(List<StockLine> lines) {
    return new Listing(COLUMNS, NUMBERS, lines.stream().map(ShelfListing::cells).toList());
  }

  private static List<String> cells(StockLine line) {
    return List.of(
        line.spot().name(),
        line.lot().toString(),
        line.facts().shownName(),
        line.facts().jar(),
        line.facts().packed().map(LocalDate::toString).orElse(""),
        line.deadline().map(LocalDate::toString).orElse(""),
        line.word().word(),
        ProcessWord.of(line.origin()),
        line.jars().toString(),
        String.valueOf(line.jars().size()),
        "",
        "");
  }
}
