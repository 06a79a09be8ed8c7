package jarwright.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.PlannedBatch;
import jarwright.page.PaperSize;
import jarwright.page.Wording;
import jarwright.process.AcidKind;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.quantity.Units;
import jarwright.render.WordBundle;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a reader of Spanish could take for another amount or another food on a checklist. */
class SpanishSheetTest {
  private static final Wording WORDS = WordBundle.load("es");

  /** A US volume without its litres beside it; jars' sizes stand as names in sentences. */
  private static final Pattern BARE_QUARTS =
      Pattern.compile("\\d\\s+cuartos?+(?! de galón \\()|\\d\\s+qt(?!\\)|\\s+\\d)");

  private static final Pattern THOUSANDS = Pattern.compile("\\d[.,]\\d{3}(?!\\d)");

  private static String printed(PlannedBatch batch) {
    return String.join(
        " ",
        Printed.sides(
            Printed.pdf(PaperSize.LETTER, false, List.of(Printed.view(batch, WORDS)), WORDS)));
  }

  private static PlannedBatch fish(Units units) {
    return PlannedBatch.of("fish-in-quart-jars", Method.DIAL_GAUGE, Pack.RAW, JarSize.QUART)
        .shownIn(units)
        .at("7350 ft");
  }

  @ParameterizedTest
  @EnumSource(names = {"US", "BOTH"})
  void threeQuartsOfWaterCannotBeReadAsThreeQuarters(Units units) {
    String sheet = printed(fish(units));
    // AIB 539 (2015) p. 5-12: "Add 3 quarts of water to the pressure canner"; NIST: 2.84 L
    assertTrue(sheet.contains("Verter 3 cuartos de galón (2.85 L) de agua"), sheet);
    assertFalse(BARE_QUARTS.matcher(sheet).find(), sheet);
  }

  @Test
  void waterInLitresAloneForAMetricHousehold() {
    assertTrue(printed(fish(Units.METRIC)).contains("Verter 2.85 L de agua"));
  }

  @Test
  void anAltitudeCannotBeReadAsThree() {
    String sheet = printed(fish(Units.BOTH));
    assertTrue(sheet.contains("6001 a 8000 pies"), sheet);
    assertTrue(sheet.contains("7350 pies"), sheet);
    assertFalse(THOUSANDS.matcher(sheet).find(), sheet);
  }

  @Test
  void theAcidOfTomatoesIsLemonJuiceInFullWordsAndMillilitres() {
    String sheet =
        printed(
            PlannedBatch.of(
                    "tomatoes-whole-in-water", Method.BOILING_WATER, Pack.HOT, JarSize.QUART)
                .shownIn(Units.US)
                .acid(AcidKind.BOTTLED_LEMON_JUICE));
    // AIB 539 (2015) Guide 3: two tablespoons of bottled lemon juice per quart; 29.6 mL
    assertTrue(sheet.contains("Poner primero jugo de limón amarillo embotellado"), sheet);
    assertTrue(sheet.contains("2 cda 30 mL"), sheet);
    assertTrue(sheet.contains("ni fresco ni de lima"), sheet);
  }

  @Test
  void aSheetWithMetricUnitsAloneNamesNoUsVolume() {
    String sheet =
        printed(
            PlannedBatch.of(
                    "tomato-salsa-paste-tomatoes", Method.BOILING_WATER, Pack.HOT, JarSize.PINT)
                .shownIn(Units.METRIC));
    assertFalse(sheet.contains("cucharad") || sheet.contains("tazas"), sheet);
    assertTrue(sheet.contains("jugo de limón embotellado, amarillo (lemon) o verde (lime)"), sheet);
  }

  @Test
  void noAmountOfAnyTextHasThreeDecimals() {
    Map<String, PlannedBatch> all = AllBatches.named();
    int at = 0;
    for (PlannedBatch batch : all.values()) {
      if (at++ % 16 == 0) {
        String sheet = printed(batch);
        assertFalse(THOUSANDS.matcher(sheet).find(), sheet);
      }
    }
    assertEquals(all.size(), at);
  }
}
