package jarwright.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CirclePackingTest {
  private static final double ROUNDED_UP = 1e-6;

  /** Closed forms: Graham 1968 (5), Pirl 1969 (8, 9, 18), Melissen 1994 (11), Fodor 2003 (13). */
  @Test
  void standsAtThePublishedClosedForms() {
    assertRatio(3, 1 + 2 / Math.sqrt(3));
    assertRatio(4, 1 + Math.sqrt(2));
    assertRatio(5, 1 + Math.sqrt(2 * (1 + 1 / Math.sqrt(5))));
    assertRatio(6, 3);
    assertRatio(7, 3);
    assertRatio(8, 1 + 1 / Math.sin(Math.PI / 7));
    assertRatio(9, 1 + Math.sqrt(2 * (2 + Math.sqrt(2))));
    assertRatio(11, 1 + 1 / Math.sin(Math.PI / 9));
    assertRatio(13, 2 + Math.sqrt(5));
    double root = Math.sqrt(1 + 2 / Math.sqrt(5));
    assertRatio(15, 1 + Math.sqrt(6 + 2 / Math.sqrt(5) + 4 * root));
    assertRatio(18, 1 + Math.sqrt(2) + Math.sqrt(6));
    assertRatio(19, 1 + Math.sqrt(2) + Math.sqrt(6));
  }

  /** Best known ratios without a closed form, as published to three places; 10 by OEIS A281115. */
  @ParameterizedTest
  @CsvSource({"10, 3.81302563", "12, 4.029", "14, 4.328", "16, 4.615", "17, 4.792", "20, 5.122"})
  void standsAtThePublishedFigures(int circles, double printed) {
    CirclePacking packing = Published.BOOK.packing();
    assertTrue(packing.most(printed + 0.001, 1) >= circles);
    assertTrue(packing.most(printed - 0.0001, 1) < circles);
  }

  /** The witness shows circles that do stand inside at the ratio in the table. */
  @Test
  void soManyCirclesDoFit() {
    CirclePacking packing = Published.BOOK.packing();
    List<Map<String, String>> all = Table.rows("circle-witness.csv");
    for (int n = 1; n <= 20; n++) {
      String count = String.valueOf(n);
      List<double[]> centres =
          all.stream()
              .filter(r -> r.get("circles").equals(count))
              .map(r -> new double[] {Table.number(r, "x"), Table.number(r, "y")})
              .toList();
      assertEquals(n, centres.size());
      double outer = 0;
      for (int i = 0; i < n; i++) {
        double[] a = centres.get(i);
        outer = Math.max(outer, Math.hypot(a[0], a[1]) + 1);
        for (int j = 0; j < i; j++) {
          double[] b = centres.get(j);
          assertTrue(Math.hypot(a[0] - b[0], a[1] - b[1]) > 2 - 1e-8, n + " overlap");
        }
      }
      assertTrue(packing.most(outer + 2 * ROUNDED_UP, 1) >= n, n + " in " + outer);
    }
  }

  @Test
  void sevenNeedThreeTimesTheirWidthAndNineMore() {
    CirclePacking packing = Published.BOOK.packing();
    assertEquals(7, packing.most(300, 100));
    assertEquals(5, packing.most(299, 100));
    assertEquals(8, packing.most(361.2, 100));
    assertEquals(9, packing.most(361.32, 100));
    assertEquals(0, packing.most(99, 100));
    assertEquals(20, packing.most(10_000, 100));
  }

  @Test
  void refusesAListThatFalls() {
    assertThrows(IllegalArgumentException.class, () -> new CirclePacking(List.of(1.0, 2.0, 1.9)));
    assertThrows(IllegalArgumentException.class, () -> new CirclePacking(List.of()));
  }

  private static void assertRatio(int circles, double ratio) {
    CirclePacking packing = Published.BOOK.packing();
    assertTrue(packing.most(ratio + ROUNDED_UP, 1) >= circles, circles + " circles");
    assertTrue(packing.most(ratio - 1e-5, 1) < circles, circles + " circles");
  }
}
