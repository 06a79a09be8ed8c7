package jarwright.batch;

import static jarwright.batch.Plans.BIG_POT;
import static jarwright.batch.Plans.DIAL_POT;
import static jarwright.batch.Plans.WEIGHT_POT;
import static jarwright.batch.Plans.canner;
import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.plan.Canner;
import jarwright.process.Method;
import jarwright.process.TableRow;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan may leave out, and which of several tested times and pressures is taken. */
class CannerChoiceTest {
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          product: beans-snap-italian; jar: pint; pack: raw; canner: dial pot | dial pot, raw, 20 min at 11 psi
          product: beans-snap-italian; jar: pint; pack: raw; method: weighted-gauge | weight pot, raw, 20 min at 10 psi
          product: sauerkraut; jar: pint; pack: hot             | big pot, hot, 10 min
          product: apple-butter; jar: pint                      | big pot, hot, 5 min
          product: apple-butter; jar: pint; altitude: 420 m     | big pot, hot, 10 min
          product: applesauce; jar: quart; canner: dial pot     | dial pot, hot, 10 min at 6 psi
          product: applesauce; jar: quart; canner: weight pot   | weight pot, hot, 10 min at 5 psi
          product: soups; jar: pint; altitude: 9,000 ft         | weight pot, hot, 60 min at 15 psi
          """)
  void whatIsLeftOutIsFoundWhereOnlyOneFits(String plan, String choice) {
    assertEquals(choice, choice(Plans.of(plan, BIG_POT, DIAL_POT, WEIGHT_POT)));
  }

  /**
   * Every pressure canner holds 10 psi; a lower pressure is taken where nothing else is offered.
   */
  @ParameterizedTest(name = "{0}: {1}, of {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          method: dial-gauge                         | 10 min at 11 psi | 15 min at 6 psi, 10 min at 11 psi
          method: dial-gauge; pressure: 6 psi        | 15 min at 6 psi  | 15 min at 6 psi, 10 min at 11 psi
          method: dial-gauge; altitude: 5,400 ft     | 10 min at 13 psi | 15 min at 8 psi, 10 min at 13 psi
          method: weighted-gauge                     | 10 min at 10 psi | 15 min at 5 psi, 10 min at 10 psi, 1 min at 15 psi
          method: weighted-gauge; pressure: 15 psi   | 1 min at 15 psi  | 15 min at 5 psi, 10 min at 10 psi, 1 min at 15 psi
          method: weighted-gauge; altitude: 420 m    | 15 min at 10 psi | 15 min at 10 psi, 10 min at 15 psi
          """)
  void ofSeveralPairsTheUsualPressureIsTakenUnlessOneIsNamed(
      String keys, String taken, String offered) {
    Batch batch =
        Plans.of(
                "product: tomatoes-whole-in-water; pack: raw; jar: pint; acid: citric acid; "
                    + keys,
                BIG_POT,
                DIAL_POT,
                WEIGHT_POT)
            .batch();
    assertEquals(taken, pair(batch.row()));
    assertEquals(
        offered,
        batch.offered().stream().map(CannerChoiceTest::pair).collect(Collectors.joining(", ")));
  }

  @ParameterizedTest(name = "weights {0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          5 psi              | 15 min at 5 psi
          10 psi             | 10 min at 10 psi
          15 psi             | 1 min at 15 psi
          5 psi, 15 psi      | 1 min at 15 psi
          15 psi, 10 psi     | 10 min at 10 psi
          """)
  void onlyAPressureThatHerWeightsHoldIsTaken(String weights, String taken) {
    Canner weight = canner("weights", Method.WEIGHTED_GAUGE, weights.split(", "));
    assertEquals(
        taken,
        pair(
            Plans.of(
                    "product: tomatoes-whole-in-water; pack: raw; jar: pint; acid: citric acid",
                    weight)
                .batch()
                .row()));
  }

  @Test
  void aNamedPressureThatHerWeightsDoNotHoldIsRefused() {
    Canner ten = canner("ten", Method.WEIGHTED_GAUGE, "10 psi");
    assertEquals(
        List.of(
            "pressure: 15 psi is not a tested pressure here. tested: 5 psi for 15 min, 10 psi for"
                + " 10 min, 15 psi for 1 min"),
        Plans.of(
                "product: tomatoes-whole-in-water; pack: raw; jar: pint; acid: citric acid;"
                    + " pressure: 15 psi",
                ten)
            .refusals());
  }

  @Test
  void twoPotsOfOneKindAreTwoCanners() {
    Canner other = canner("small pot", Method.BOILING_WATER);
    String plan = "product: applesauce; jar: pint";
    assertEquals(1, Plans.of(plan, BIG_POT, other).refusals().size());
    assertEquals(
        "small pot, hot, 15 min", choice(Plans.of(plan + "; canner: small pot", BIG_POT, other)));
  }

  @Test
  void aSizeThatTheGuideDoesNotListSaysWhoseTimeItTakes() {
    Batch batch = Plans.of("product: applesauce; jar: half-pint", BIG_POT).batch();
    assertEquals("Optional[pint]", batch.printedFor().toString());
    assertEquals("half-pint", batch.jar().toString());
    assertEquals(15, batch.process().minutes());
  }

  private static String choice(Plans plan) {
    Batch batch = plan.batch();
    return batch.canner().name() + ", " + batch.pack() + ", " + pair(batch.row());
  }

  private static String pair(TableRow row) {
    return row.process().orElseThrow().minutes()
        + " min"
        + row.process().orElseThrow().pressure().map(p -> " at " + p).orElse("");
  }
}
