package jarwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts that just do or just do not make a batch. */
class BatchBordersTest {
  /**
   * AIB 539 (2015) p. 2-19: a bushel of 48 lb of peaches gives 16 to 24 quarts, so a quart may take
   * as little as 2 lb.
   */
  private static Plans peaches(String weight) {
    return Plans.of(
        "product: peaches-halved-or-sliced; pack: raw; jar: quart; produce: " + weight,
        Plans.BIG_POT);
  }

  @Test
  void whatMayFillOneJarIsABatch() {
    Batch one = peaches("2 lb").batch();
    assertEquals(1, one.jars());
    assertEquals(new JarRange(0, 0, 1), one.expected());
    assertFalse(one.expected().isExact());
    assertTrue(JarRange.exactly(7).isExact());
    assertTrue(peaches("1.9 lb").refusals().get(0).contains("does not fill one quart jar"));
  }

  @Test
  void aBatchHashesByItsName() {
    Batch batch = peaches("2 lb").batch();
    assertEquals(peaches("2 lb").batch(), batch);
    assertEquals(Plans.LOT.hashCode(), batch.hashCode());
  }

  @Test
  void twoThousandJarsAreABatchAndOneMoreIsAMistake() {
    assertEquals(2_000, peaches("4000 lb").batch().jars());
    assertTrue(peaches("4002 lb").refusals().get(0).contains("makes more than 2000 jars"));
  }

  /** 222-1/2 times 9 pints are 2,002: no more jars are made ready than a batch may have. */
  @Test
  void aFormulaMakesNoMoreJarsReadyThanABatchMayHave() {
    Batch salsa = Plans.of("product: chile-salsa-ii; jar: pint; jars: 2000", Plans.BIG_POT).batch();
    assertEquals(2_000, salsa.jars());
    assertEquals("222-1/2", salsa.formula().orElseThrow().times().orElseThrow().toString());
    assertEquals(new JarRange(1_557, 1_780, 2_000), salsa.expected());
  }

  /** AIB 539 (2015) Guide 2 prints the pie fillings for one quart and for seven. */
  @ParameterizedTest
  @CsvSource({"1, 1 quart, 1", "3, 1 quart, 3", "7, 7 quarts, 1", "14, 7 quarts, 2"})
  void theFormulaThatLeavesLeastOverIsTaken(int jars, String yield, String times) {
    FormulaMultiple formula =
        Plans.of("product: apple-pie-filling; pack: hot; jar: quart; jars: " + jars, Plans.BIG_POT)
            .batch()
            .formula()
            .orElseThrow();
    assertEquals(yield, formula.formula().yield());
    assertEquals(times, formula.times().orElseThrow().toString());
  }

  @Test
  void aLoadMayBeOfOneJarAndNotOfNone() {
    Batch batch = peaches("14 lb").batch();
    assertEquals(7, batch.jars());
    assertEquals(List.of(6, 1), BatchRecord.of(batch, List.of(6, 1), List.of()).jars().loads());
    List<Integer> none = List.of(7, 0);
    assertThrows(IllegalArgumentException.class, () -> BatchRecord.of(batch, none, List.of()));
  }
}
