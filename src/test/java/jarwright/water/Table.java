package jarwright.water;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Published and separately computed tables that the tests check against; see SOURCES.txt. */
final class Table {
  private Table() {}

  /** Rows by column; no cell holds a comma. */
  static List<Map<String, String>> rows(String file) {
    try (InputStream in = Table.class.getResourceAsStream(file)) {
      String[] lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\r?\n");
      String[] columns = lines[0].split(",", -1);
      List<Map<String, String>> rows = new ArrayList<>();
      for (int i = 1; i < lines.length; i++) {
        String[] cells = lines[i].split(",", -1);
        Map<String, String> row = new LinkedHashMap<>();
        for (int c = 0; c < columns.length; c++) {
          row.put(columns[c], cells[c]);
        }
        rows.add(row);
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }

  static boolean has(Map<String, String> row, String column) {
    return !row.get(column).isEmpty();
  }
}
