package jarwright.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The rows of label-sheets.csv as they stand, for checks that trust no code of ours. */
public final class LabelSheetTable {
  private LabelSheetTable() {}

  /** Every row. */
  public static List<CSVRecord> rows() {
    try (InputStream in = LabelStock.class.getResourceAsStream("label-sheets.csv");
        CSVParser parser =
            CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A number of a row. */
  public static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** A row as a stock. */
  public static LabelStock stock(CSVRecord row) {
    return new LabelStock(
        row.get("layout_id"),
        new PaperSize(row.get("sheet"), number(row, "sheet_w_mm"), number(row, "sheet_h_mm")),
        LabelShape.parse(row.get("shape")),
        (int) number(row, "cols"),
        (int) number(row, "rows"),
        number(row, "label_w_mm"),
        number(row, "label_h_mm"),
        number(row, "margin_left_mm"),
        number(row, "margin_top_mm"),
        number(row, "pitch_x_mm"),
        number(row, "pitch_y_mm"));
  }
}
