package jarwright.page;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class LabelStockProperties {

  @Property
  void whateverStockIsAcceptedItsLabelsLieOnTheSheetAndApart(
      @ForAll @IntRange(min = 1, max = 6) int columns,
      @ForAll @IntRange(min = 1, max = 12) int rows,
      @ForAll @DoubleRange(min = 5, max = 120) double w,
      @ForAll @DoubleRange(min = 5, max = 120) double h,
      @ForAll @DoubleRange(min = 0, max = 30) double margin,
      @ForAll @DoubleRange(min = 0, max = 150) double pitchX,
      @ForAll @DoubleRange(min = 0, max = 150) double pitchY) {
    LabelStock stock;
    try {
      stock =
          new LabelStock(
              "any",
              PaperSize.A4,
              LabelShape.RECT,
              columns,
              rows,
              w,
              h,
              margin,
              margin,
              pitchX,
              pitchY);
    } catch (IllegalArgumentException e) {
      return;
    }
    for (int i = 0; i < stock.labelsPerSheet(); i++) {
      LabelStock.Position one = stock.position(i);
      assertTrue(one.x() >= 0 && one.x() + w <= 210.06);
      assertTrue(one.y() >= 0 && one.y() + h <= 297.06);
      for (int j = 0; j < i; j++) {
        LabelStock.Position other = stock.position(j);
        boolean apart =
            Math.abs(one.x() - other.x()) >= w - 0.06 || Math.abs(one.y() - other.y()) >= h - 0.06;
        assertTrue(apart, () -> "labels lie on each other");
      }
    }
  }
}
