package jarwright.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Rows for other programs, as a table or as a list of objects.
 *
 * @param numbers the columns whose filled cells are whole numbers
 * @param rows each with a cell for each column; an empty one says that nothing is known
 */
record Listing(List<String> columns, Set<String> numbers, List<List<String>> rows) {

  /**
   * Comma-separated, a header line first.
   *
   * @param cell what makes of a text a cell
   */
  String csv(UnaryOperator<String> cell) throws IOException {
    StringWriter out = new StringWriter();
    CSVFormat format = CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();
    try (CSVPrinter printer = new CSVPrinter(out, format)) {
      printer.printRecord(columns);
      for (List<String> row : rows) {
        printer.printRecord(row.stream().map(cell).toList());
      }
    }
    return out.toString();
  }

  /** Objects with the columns' names; what is empty is left out. */
  String json() throws IOException {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      write(json);
    }
    return out.append('\n').toString();
  }

  /** The list of objects as a value of a larger text. */
  void write(JsonGenerator json) throws IOException {
    json.writeStartArray();
    for (List<String> row : rows) {
      json.writeStartObject();
      for (int i = 0; i < row.size(); i++) {
        if (!row.get(i).isEmpty()) {
          write(json, columns.get(i), row.get(i));
        }
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void write(JsonGenerator json, String column, String text) throws IOException {
    if (numbers.contains(column)) {
      json.writeNumberField(column, Long.parseLong(text));
    } else {
      json.writeStringField(column, text);
    }
  }
}
