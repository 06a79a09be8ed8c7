package jarwright.render;

import static jarwright.page.LabelSheetTable.number;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import jarwright.page.LabelSheetTable;
import jarwright.page.LabelStock;
import jarwright.page.TemplateFault;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Labels lie where their stock says, read back from the PDF by another library. */
class LabelGeometryTest {
  private static final double TENTH = 0.1;

  private static final String TEMPLATE =
      """
      <sheet>
        <labels shape="${stock.shape}" columns="${stock.columns}" rows="${stock.rows}"
            w="${stock.w}" h="${stock.h}" left="${stock.left}" top="${stock.top}"
            pitch-x="${stock["pitch-x"]}" pitch-y="${stock["pitch-y"]}" ${more}>
          <#list 1..labels as i>
          <label><rect x="0" y="0" w="${stock.w}" h="${stock.h}" fill="15%"/></label>
          </#list>
        </labels>
      </sheet>
      """;

  static Stream<CSVRecord> everyStock() {
    return LabelSheetTable.rows().stream();
  }

  private static byte[] print(LabelStock stock, int count, String more) {
    Map<String, Object> view = Map.of("stock", stock.view(), "labels", count);
    return Prints.pdf(TEMPLATE.replace("${more}", more), view, stock.paper());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("everyStock")
  void everyLabelOfEveryStockIsInItsPlace(CSVRecord row) {
    LabelStock stock = LabelSheetTable.stock(row);
    int count = (int) number(row, "count");
    List<Rectangles.Box> boxes = Rectangles.of(print(stock, count, ""), 0).filled();
    assertEquals(count, boxes.size());
    int cols = (int) number(row, "cols");
    for (int i = 0; i < count; i++) {
      double x = number(row, "margin_left_mm") + i % cols * number(row, "pitch_x_mm");
      int down = i / cols;
      double y = number(row, "margin_top_mm") + down * number(row, "pitch_y_mm");
      assertEquals(x, boxes.get(i).x(), TENTH, row.get(0) + " label " + i);
      assertEquals(y, boxes.get(i).y(), TENTH, row.get(0) + " label " + i);
      assertEquals(number(row, "label_w_mm"), boxes.get(i).w(), TENTH);
      assertEquals(number(row, "label_h_mm"), boxes.get(i).h(), TENTH);
    }
  }

  private static LabelStock thirty() {
    return LabelSheetTable.stock(LabelSheetTable.rows().get(0));
  }

  @Test
  void aPartUsedSheetIsBegunAtItsFirstFreeLabelAndTheNextOneInFull() {
    byte[] pdf = print(thirty(), 30, "start=\"29\"");
    List<Rectangles.Box> first = Rectangles.of(pdf, 0).filled();
    List<Rectangles.Box> second = Rectangles.of(pdf, 1).filled();
    assertEquals(2, first.size());
    assertEquals(4.7625 + 69.85, first.get(0).x(), TENTH);
    assertEquals(12.7 + 9 * 25.4, first.get(0).y(), TENTH);
    assertEquals(28, second.size());
    assertEquals(12.7, second.get(0).y(), TENTH);
  }

  @Test
  void thePrintersCorrectionMovesAndScalesTheWholeSheet() {
    byte[] pdf = print(thirty(), 30, "right=\"1.5\" down=\"-0.5\" scale=\"1.01\"");
    Rectangles.Box last = Rectangles.of(pdf, 0).filled().get(29);
    assertEquals((4.7625 + 2 * 69.85) * 1.01 + 1.5, last.x(), 0.01);
    assertEquals((12.7 + 9 * 25.4) * 1.01 - 0.5, last.y(), 0.01);
    assertEquals(66.675 * 1.01, last.w(), 0.01);
  }

  @Test
  void stockThatDoesNotFitThePaperIsToldWithItsPlace() {
    LabelStock stock = thirty();
    Map<String, Object> view = Map.of("stock", stock.view(), "labels", 1);
    String template = TEMPLATE.replace("${more}", "").replace("${stock.left}", "20");
    var e = assertThrows(TemplateFault.class, () -> Prints.pdf(template, view, stock.paper()));
    assertEquals(
        "t.ftl:2: label stock labels: labels reach 226.38 mm across; the sheet is 215.90 mm wide",
        e.getMessage());
    var start = assertThrows(TemplateFault.class, () -> print(stock, 1, "start=\"31\""));
    assertEquals(
        "t.ftl:2: <labels start=\"31\">: it must be a whole number from 1 to 30",
        start.getMessage());
  }

  @Test
  void thePaperIsThatOfTheStock() {
    LabelStock stock = LabelSheetTable.stock(LabelSheetTable.rows().get(4));
    try (var document = Prints.read(print(stock, 1, ""))) {
      assertEquals(210, Units.mm(document.getPage(0).getMediaBox().getWidth()), 0.01);
      assertEquals(297, Units.mm(document.getPage(0).getMediaBox().getHeight()), 0.01);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
