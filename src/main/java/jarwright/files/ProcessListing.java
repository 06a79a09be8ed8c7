package jarwright.files;

import jarwright.process.TableRow;
import jarwright.process.TestedProcess;
import jarwright.quantity.Altitude;
import jarwright.quantity.GaugePressure;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Writes rows of the process tables for other programs, in the tables' own columns. */
public final class ProcessListing {
  private static final List<String> COLUMNS =
      List.of(
          "product_id",
          "method",
          "pack",
          "jar",
          "alt_min_ft",
          "alt_max_ft",
          "outcome",
          "minutes",
          "psi",
          "source");
  private static final Set<String> NUMBERS = Set.of("alt_min_ft", "alt_max_ft", "minutes", "psi");

  private ProcessListing() {}

  /** Comma-separated, a header line first; an open end and a missing figure are empty. */
  public static String csv(List<TableRow> rows) throws IOException {
    return listing(rows).csv(cell -> cell);
  }

  /**
   * A list of objects with the same names; what is empty is left out.
   *
   * @param altitude a kitchen's, whose bands are marked with {@code own_band}
   */
  public static String json(List<TableRow> rows, Optional<Altitude> altitude) throws IOException {
    return listing(rows).json();
  }

  private static Listing listing(List<TableRow> rows) {
    return new Listing(COLUMNS, NUMBERS, rows.stream().map(ProcessListing::cells).toList());
  }

  private static List<String> cells(TableRow row) {
    String highest =
        row.band().toFeet().isPresent() ? String.valueOf(row.band().toFeet().getAsInt()) : "";
    return List.of(
        row.productId(),
        row.method().id(),
        row.pack().id(),
        row.jar().id(),
        String.valueOf(row.band().fromFeet()),
        highest,
        row.process().isPresent() ? "process" : "not-recommended",
        row.process().map(p -> String.valueOf(p.minutes())).orElse(""),
        row.process()
            .flatMap(TestedProcess::pressure)
            .map(GaugePressure::inPsi)
            .map(String::valueOf)
            .orElse(""),
        row.source().place());
  }
}
