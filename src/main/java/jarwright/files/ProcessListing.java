package jarwright.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import jarwright.process.TableRow;
import jarwright.process.TestedProcess;
import jarwright.quantity.GaugePressure;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

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
  private static final List<String> NUMBERS = List.of("alt_min_ft", "alt_max_ft", "minutes", "psi");

  private ProcessListing() {}

  /** Comma-separated, a header line first; an open end and a missing figure are empty. */
  public static String csv(List<TableRow> rows) throws IOException {
    StringWriter out = new StringWriter();
    CSVFormat format = CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();
    try (CSVPrinter printer = new CSVPrinter(out, format)) {
      printer.printRecord(COLUMNS);
      for (TableRow row : rows) {
        printer.printRecord(cells(row));
      }
    }
    return out.toString();
  }

  /** A list of objects with the same names; what is empty is left out. */
  public static String json(List<TableRow> rows) throws IOException {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      json.writeStartArray();
      for (TableRow row : rows) {
        write(json, cells(row));
      }
      json.writeEndArray();
    }
    return out.append('\n').toString();
  }

  private static void write(JsonGenerator json, List<String> cells) throws IOException {
    json.writeStartObject();
    for (int i = 0; i < cells.size(); i++) {
      if (cells.get(i).isEmpty()) {
        continue;
      }
      if (NUMBERS.contains(COLUMNS.get(i))) {
        json.writeNumberField(COLUMNS.get(i), Integer.parseInt(cells.get(i)));
      } else {
        json.writeStringField(COLUMNS.get(i), cells.get(i));
      }
    }
    json.writeEndObject();
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
