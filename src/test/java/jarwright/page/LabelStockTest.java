package jarwright.page;

import static jarwright.page.LabelSheetTable.number;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class LabelStockTest {

  private static LabelStock thirty() {
    return LabelSheetTable.stock(LabelSheetTable.rows().get(0));
  }

  private static LabelStock stock(
      LabelShape shape, int columns, double w, double h, double left, double pitch) {
    return new LabelStock("mine", PaperSize.A4, shape, columns, 2, w, h, left, 10, pitch, 50);
  }

  @Test
  void everyRowOfTheTableIsAStockAndItsSumsAgree() {
    assertAll(
        LabelSheetTable.rows().stream()
            .map(
                row ->
                    () -> {
                      LabelStock stock = LabelSheetTable.stock(row);
                      assertEquals(number(row, "count"), stock.labelsPerSheet(), stock.id());
                      assertEquals(
                          number(row, "gap_x_mm"), stock.pitchX() - stock.labelWidth(), 0.002);
                      assertEquals(
                          number(row, "gap_y_mm"), stock.pitchY() - stock.labelHeight(), 0.002);
                    }));
  }

  @Test
  void labelsCountRowByRow() {
    assertEquals(new LabelStock.Position(4.7625, 12.7), thirty().position(0));
    assertEquals(new LabelStock.Position(4.7625 + 69.85, 12.7), thirty().position(1));
    assertEquals(new LabelStock.Position(4.7625, 12.7 + 25.4), thirty().position(3));
  }

  @Test
  void aPositionThatTheSheetHasNotIsRefused() {
    var e = assertThrows(IllegalArgumentException.class, () -> thirty().position(30));
    assertEquals("label 30 of stock letter-30up; it has 0 to 29", e.getMessage());
  }

  @Test
  void measuresThatCannotBeAreToldWithWhatCan() {
    assertRefused(
        "label stock mine: labels reach 220.00 mm across; the sheet is 210.00 mm wide",
        LabelShape.RECT,
        3,
        60,
        30,
        10,
        75);
    assertRefused(
        "label stock mine: pitch 50.00 mm across is less than the label width 60.00 mm",
        LabelShape.RECT,
        3,
        60,
        30,
        10,
        50);
    assertRefused(
        "label stock mine: is a circle of 40.00 mm by 30.00 mm; both must be equal",
        LabelShape.CIRCLE,
        2,
        40,
        30,
        10,
        50);
    assertRefused(
        "label stock mine: has 0 columns; 1 to 100 can be", LabelShape.RECT, 0, 60, 30, 10, 50);
    assertRefused(
        "label stock mine: left margin -1.00 mm; not below 0", LabelShape.RECT, 2, 60, 30, -1, 75);
    assertRefused(
        "label stock mine: label width NaN mm; at least 5 mm",
        LabelShape.RECT,
        2,
        Double.NaN,
        30,
        0,
        75);
  }

  private static void assertRefused(
      String message, LabelShape shape, int columns, double w, double h, double left, double p) {
    var e =
        assertThrows(IllegalArgumentException.class, () -> stock(shape, columns, w, h, left, p));
    assertEquals(message, e.getMessage());
  }

  @Test
  void anUnknownShapeNamesTheShapesThereAre() {
    var e = assertThrows(IllegalArgumentException.class, () -> LabelShape.parse("star"));
    assertEquals(
        "label shape \"star\"; there are rounded-rect, rect, circle, strip", e.getMessage());
  }

  @Test
  void theViewGivesTheAttributesOfTheMarkup() {
    assertEquals(
        "{id=letter-30up, shape=rounded-rect, columns=3, rows=10, w=66.675, h=25.4, left=4.7625,"
            + " top=12.7, pitch-x=69.85, pitch-y=25.4}",
        thirty().view().toString());
  }
}
