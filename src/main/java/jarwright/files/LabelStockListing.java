package jarwright.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import jarwright.page.LabelStock;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes label stocks for other programs; every length in mm. */
public final class LabelStockListing {
  private LabelStockListing() {}

  /** Comma-separated, a header line first. */
  public static String csv(List<LabelStock> stocks) throws IOException {
    StringWriter out = new StringWriter();
    CSVFormat format = CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();
    try (CSVPrinter printer = new CSVPrinter(out, format)) {
      for (LabelStock stock : stocks) {
        Map<String, Object> cells = cells(stock);
        if (out.getBuffer().isEmpty()) {
          printer.printRecord(cells.keySet());
        }
        printer.printRecord(cells.values());
      }
    }
    return out.toString();
  }

  /** A list of objects with the same names. */
  public static String json(List<LabelStock> stocks) throws IOException {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.useDefaultPrettyPrinter();
      json.writeStartArray();
      for (LabelStock stock : stocks) {
        json.writeStartObject();
        for (Map.Entry<String, Object> cell : cells(stock).entrySet()) {
          json.writeFieldName(cell.getKey());
          if (cell.getValue() instanceof BigDecimal length) {
            json.writeNumber(length);
          } else if (cell.getValue() instanceof Integer count) {
            json.writeNumber(count);
          } else {
            json.writeString(cell.getValue().toString());
          }
        }
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    return out.append('\n').toString();
  }

  private static Map<String, Object> cells(LabelStock stock) {
    Map<String, Object> cells = new LinkedHashMap<>();
    cells.put("id", stock.id());
    cells.put("paper", stock.paper().name());
    cells.put("sheet_w_mm", mm(stock.paper().width()));
    cells.put("sheet_h_mm", mm(stock.paper().height()));
    cells.put("shape", stock.shape().word());
    cells.put("columns", stock.columns());
    cells.put("rows", stock.rows());
    cells.put("labels", stock.labelsPerSheet());
    cells.put("label_w_mm", mm(stock.labelWidth()));
    cells.put("label_h_mm", mm(stock.labelHeight()));
    cells.put("margin_left_mm", mm(stock.marginLeft()));
    cells.put("margin_top_mm", mm(stock.marginTop()));
    cells.put("pitch_x_mm", mm(stock.pitchX()));
    cells.put("pitch_y_mm", mm(stock.pitchY()));
    return cells;
  }

  private static BigDecimal mm(double length) {
    BigDecimal exact = BigDecimal.valueOf(length).setScale(3, RoundingMode.HALF_EVEN);
    BigDecimal plain = exact.stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }
}
