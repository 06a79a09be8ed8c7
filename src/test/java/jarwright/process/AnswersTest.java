package jarwright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.quantity.Altitude;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnswersTest {
  @ParameterizedTest(name = "{0}, {1}, {2}, {3} at {4}: {5}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          plums-halved-or-whole    | boiling-water  | raw | quart     | 420 m     | 30 min
          beans-snap-italian       | boiling-water  | raw | quart     | 420 m     | not covered: METHOD
          applesauce               | boiling-water  | raw | quart     | 420 m     | not covered: PACK
          plums-halved-or-whole    | boiling-water  | raw | half-gallon | 420 m   | not covered: JAR
          beans-snap-italian       | dial-gauge     | raw | quart     | 8,000 ft  | 25 min at 14 psi
          beans-snap-italian       | dial-gauge     | raw | quart     | 8,000.1 ft | not covered: ALTITUDE
          beans-snap-italian       | weighted-gauge | raw | quart     | 12,000 ft | 25 min at 15 psi
          pickled-horseradish-sauce | boiling-water | raw | half-pint | 0 ft      | not recommended
          refrigerated-grape-spread | boiling-water | hot | half-pint | 9,000 ft  | not recommended
          """)
  void sayWhatThePrintedRowSaysOrWhatIsMissing(
      String product, String method, String pack, String jar, String altitude, String answer) {
    assertEquals(answer, Book.say(Book.ask(product, method, pack, jar, altitude)));
  }

  /** A kitchen between two bands belongs to the higher one. */
  @ParameterizedTest(name = "tomatoes in water, raw pints at {0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          -100 ft    | 40 min
          0 m        | 40 min
          999.9 ft   | 40 min
          1,000 ft   | 40 min
          304.8 m    | 40 min
          304.81 m   | 45 min
          1,000.5 ft | 45 min
          1,001 ft   | 45 min
          914.4 m    | 45 min
          914.41 m   | 50 min
          3,000.01 ft | 50 min
          6,000 ft   | 50 min
          1828.8 m   | 50 min
          1829 m     | 55 min
          6,001 ft   | 55 min
          12,000 ft  | 55 min
          """)
  void altitudeCountsUpToTheNextWholeFoot(String altitude, String answer) {
    assertEquals(
        answer,
        Book.say(Book.ask("tomatoes-whole-in-water", "boiling-water", "raw", "pint", altitude)));
  }

  /** A closed option is left out where others stay open; it closes the setting only alone. */
  @Test
  void anOptionThatIsNotRecommendedIsNotOffered() {
    Answer answer =
        Book.ask("tomatoes-whole-in-water", "weighted-gauge", "raw", "quart", "1,001 ft");
    assertEquals(
        List.of(Optional.of(15), Optional.of(10)),
        answer.fold(
            found ->
                found.rows().stream().map(r -> r.process().map(TestedProcess::minutes)).toList(),
            closed -> List.of(),
            gap -> List.of()));
  }

  @Test
  void aRefusalTellsEveryRowThatHoldsAtTheAltitude() {
    Answer answer = Book.ask("beans-snap-italian", "dial-gauge", "raw", "quart", "9,000 ft");
    List<String> tested =
        answer.fold(
            found -> List.of(),
            closed -> List.of(),
            gap ->
                gap.tested().stream()
                    .map(r -> r.method() + " " + r.pack() + " " + r.jar() + " " + Book.say(r))
                    .toList());
    assertEquals(
        List.of(
            "weighted-gauge raw-or-hot pint 20 min at 15 psi",
            "weighted-gauge raw-or-hot quart 25 min at 15 psi"),
        tested);
  }

  @Test
  void aClosedSettingTellsItsRowAndThatNothingElseIsTested() {
    Answer answer =
        Book.ask("pickled-horseradish-sauce", "boiling-water", "raw", "half-pint", "0 ft");
    assertEquals(
        "AIB 539 (2015) Guide 6 0",
        answer.fold(
            found -> "",
            closed -> closed.row().source() + " " + closed.tested().size(),
            gap -> ""));
  }

  @Test
  void theRowThatServesBothPacksIsNoPackToAskFor() {
    Product product = Book.product("asparagus");
    assertEquals(
        "food is packed raw or hot, not raw-or-hot",
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    new Setting(
                        product,
                        Method.DIAL_GAUGE,
                        Pack.RAW_OR_HOT,
                        JarSize.PINT,
                        Altitude.feet(0)))
            .getMessage());
  }

  @Test
  void aProductThatTheBookDoesNotHaveHasNoRows() {
    assertEquals(Optional.empty(), Book.get().product("pumpkin-puree"));
    assertEquals(List.of(), Book.get().rows("pumpkin-puree"));
    assertEquals(List.of(), Book.get().formulas("pumpkin-puree"));
  }

  /** Low-acid food in boiling water can grow botulism toxin: 21 CFR 114.3 draws the line at 4.6. */
  @Test
  void noVegetableMeatOrFishHasABoilingWaterProcess() {
    List<String> found =
        Book.get().products().stream()
            .filter(p -> p.guide() == 4 || p.guide() == 5)
            .filter(AnswersTest::hasBoilingWater)
            .map(Product::id)
            .toList();
    assertEquals(List.of(), found);
    assertEquals(
        36, Book.get().products().stream().filter(p -> p.guide() == 4 || p.guide() == 5).count());
  }

  /** What is boiled is fruit, or has its acid by the jar, by its formula or by its ferment. */
  @Test
  void whateverIsBoiledIsFruitOrHasItsAcid() {
    List<String> plain =
        Book.get().products().stream()
            .filter(p -> p.acid() instanceof AcidRule.None && hasBoilingWater(p))
            .map(Product::category)
            .distinct()
            .toList();
    assertEquals(
        List.of(
            "fruit-juice",
            "fruit",
            "fruit-sauce",
            "fruit-syrup",
            "fruit-puree",
            "jelly-no-added-pectin",
            "jam-no-added-pectin"),
        plain);
    List<String> tomatoes =
        Book.get().products().stream()
            .filter(p -> p.guide() == 3 && hasBoilingWater(p))
            .filter(p -> p.acid() instanceof AcidRule.None)
            .map(Product::id)
            .toList();
    assertEquals(List.of(), tomatoes);
  }

  @Test
  void everyRowNamesItsPageOrGuide() {
    Stream<TableRow> rows =
        Book.get().products().stream().flatMap(p -> Book.get().rows(p.id()).stream());
    assertTrue(rows.allMatch(r -> r.source().toString().matches("AIB 539 \\(2015\\) .+")));
    assertThrows(IllegalArgumentException.class, () -> new Source(" "));
  }

  private static boolean hasBoilingWater(Product product) {
    return Book.get().rows(product.id()).stream().anyMatch(r -> r.method() == Method.BOILING_WATER);
  }
}
