package jarwright.files;

import jarwright.process.AltitudeBand;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.Source;
import jarwright.process.TableRow;
import jarwright.process.TestedProcess;
import jarwright.quantity.GaugePressure;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/** Reads the rows of process-times.csv, each for itself. */
final class ProcessRows {
  static final List<String> COLUMNS =
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
          "source",
          "second_source",
          "note");
  static final String PROCESS = "process";
  static final String NOT_RECOMMENDED = "not-recommended";
  private static final Pattern SOURCE =
      Pattern.compile("AIB 539 \\(2015\\) (p\\. [1-7]-[1-9]\\d?|Guide [2-7])");

  private ProcessRows() {}

  static TableRow row(TableText.Row row) {
    Method method = row.word("method", Method::named, Method.ids());
    return new TableRow(
        row.get("product_id"),
        method,
        row.word("pack", Pack::named, List.of("raw", "hot", "raw-or-hot")),
        row.word("jar", JarSize::named, JarSize.ids()),
        band(row),
        process(row, method),
        source(row),
        row.get("note"));
  }

  private static AltitudeBand band(TableText.Row row) {
    OptionalInt to =
        row.get("alt_max_ft").isEmpty()
            ? OptionalInt.empty()
            : OptionalInt.of(row.number("alt_max_ft"));
    return new AltitudeBand(row.number("alt_min_ft"), to);
  }

  private static Optional<TestedProcess> process(TableText.Row row, Method method) {
    String outcome = row.get("outcome");
    if (outcome.equals(NOT_RECOMMENDED)) {
      if (!row.get("minutes").isEmpty() || !row.get("psi").isEmpty()) {
        throw new IllegalArgumentException("a closed setting has neither minutes nor psi");
      }
      return Optional.empty();
    }
    if (!outcome.equals(PROCESS)) {
      throw new IllegalArgumentException(
          "outcome \"" + outcome + "\" is neither " + PROCESS + " nor " + NOT_RECOMMENDED);
    }
    if (method.isPressure() == row.get("psi").isEmpty()) {
      throw new IllegalArgumentException("psi belongs to pressure canners, and to each of them");
    }
    Optional<GaugePressure> pressure =
        method.isPressure() ? Optional.of(GaugePressure.psi(row.number("psi"))) : Optional.empty();
    return Optional.of(new TestedProcess(row.number("minutes"), pressure));
  }

  private static Source source(TableText.Row row) {
    String place = row.get("source");
    if (!SOURCE.matcher(place).matches()) {
      throw new IllegalArgumentException(
          "source \"" + place + "\" is not like \"AIB 539 (2015) p. 3-10\"");
    }
    String checked = row.get("second_source");
    if (!checked.equals("yes") && !checked.equals("no")) {
      throw new IllegalArgumentException("second_source is yes or no, not \"" + checked + "\"");
    }
    return new Source(place);
  }
}
