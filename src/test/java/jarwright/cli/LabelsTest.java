package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.LedgerFile;
import jarwright.lot.LotCode;
import jarwright.pantry.Entry;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.Spoiled;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Labels again, and the stocks that they are printed on. */
class LabelsTest {
  private static final String PLUMS = Household.PLUMS;
  private static final String TOMATOES = Household.TOMATOES;
  private static final String STOCK =
      """
      - id: cellar-roll
        paper: letter
        shape: rect
        columns: 2
        rows: 4
        label-width: 90 mm
        label-height: 60 mm
        margin-left: 10 mm
        margin-top: 10 mm
        pitch-across: 95 mm
        pitch-down: 62 mm
      """;

  @TempDir Path folder;
  private Household house;

  @BeforeEach
  void makeTheKit() throws Exception {
    house = Household.withKit(folder);
  }

  private int run(String line) {
    return house.run(line.split(" "));
  }

  private void sealTomatoes(String more) {
    String line =
        "seal " + TOMATOES + " --start 00:30 --end 01:15 --kept yes --acid yes --cloudy no";
    assertEquals(0, run(line + " --sealed all" + more), house.told());
  }

  @Test
  void theFrozenRecordGivesTheKitsOwnLabels() throws Exception {
    assertEquals(0, run("labels 260824A-T 260824B-R 260824C-P -o again.pdf"), house.told());
    assertTrue(house.told().contains("32 labels on letter-30up"), house.told());
    assertArrayEquals(
        Files.readAllBytes(house.file("print/plan/labels.pdf")),
        Files.readAllBytes(house.file("again.pdf")));
  }

  /** NCHFP as given by Nebraska Extension: half or more lost, use within 2 to 3 days. */
  @Test
  void aJarThatMustNotBeShelvedGetsARefrigeratorLabelAndALostOneNone() throws Exception {
    sealTomatoes(" --half-lost 8 --unsealed 9");
    assertEquals(0, run("toss 260824B-R/01 --why broken"), house.told());
    assertEquals(0, run("labels 260824B-R --sealed -o jars.pdf"), house.told());
    assertTrue(house.told().contains("8 labels on letter-30up, 2 for the refrigerator"));
    assertTrue(house.told().contains("no label for 260824B-R/01"), house.told());
    assertEquals(0, run("labels 260824B-R/08 -o cold.pdf"), house.told());
    String cold = house.pdf("cold.pdf");
    assertTrue(cold.contains("260824B-R/08"), cold);
    assertTrue(cold.contains("2 days") && cold.contains("2026-08-26"), cold);
    assertFalse(cold.contains("2027"), cold);

    for (String command : List.of("scan 260824B-R/08", "scan cold.pdf", "take 260824B-R/08")) {
      assertEquals(0, run(command), house.told());
      assertFalse(house.shown().contains("2027"), house.shown());
      assertFalse(house.shown().contains("!"), "the label is the jar's own: " + house.shown());
    }
  }

  @Test
  void aFailedOrDoubtfulJarNeverGetsAShelfLabel() throws Exception {
    String line = "seal " + PLUMS + " --load 1 --start 12:00 --end 12:29 --kept yes --cloudy no";
    assertEquals(0, run(line), house.told());
    house.at("2026-08-24T15:00:00-05:00");
    assertEquals(1, run("labels 260824A-T/1..7 -o failed.pdf"));
    assertTrue(house.told().contains("260824A-T/01..07: none of these jars gets a label"));
    assertFalse(Files.exists(house.file("failed.pdf")));
    assertEquals(0, run("labels 260824A-T -o rest.pdf"), house.told());
    assertTrue(house.told().contains("no label for 260824A-T/01..07"), house.told());
    assertEquals(1, run("labels 260824A-T --sealed -o none.pdf"));
  }

  @Test
  void aKitMadeAgainPrintsNoLabelForWhatCameOutUnfit() throws Exception {
    sealTomatoes(" --half-lost 8 --unsealed 9");
    assertEquals(0, run("kit plan.yaml -o again"), house.told());
    String labels = house.pdf("again/labels.pdf");
    assertTrue(labels.contains("260824B-R/07") && labels.contains("260824A-T/14"), labels);
    assertFalse(labels.contains("260824B-R/08") || labels.contains("260824B-R/09"), labels);
  }

  @Test
  void aJarInDoubtGetsNoLabel() throws Exception {
    sealTomatoes("");
    Entry spoiled =
        Entry.of(
            OffsetDateTime.parse("2026-08-24T13:31:00-05:00"),
            LotCode.parse(TOMATOES),
            JarNumbers.of(4),
            new Spoiled("lid bulged"),
            "");
    LedgerFile.in(house.file("pantry")).append(List.of(spoiled));
    assertEquals(1, run("labels 260824B-R"));
    assertTrue(house.told().contains("260824B-R/01..09: none of these jars gets a label"));
  }

  @Test
  void plannedJarsAreLabelledUnlessOnlySealedOnesAreWanted() throws Exception {
    assertEquals(0, run("labels 260824A-T/3"), house.told());
    assertTrue(house.pdf("print/labels-260824A-T.pdf").contains("260824A-T/03"));
    assertEquals(1, run("labels 260824A-T/3 --sealed"));
  }

  @Test
  void partUsedSheetsCopiesStockAndLanguageAreAsAsked() throws Exception {
    assertEquals(
        0,
        run(
            "labels 260824A-T/1,2 --start 5 --copies 2 --stock a4-21up --language es --cut -o"
                + " es.pdf"),
        house.told());
    assertTrue(house.told().contains("4 labels on a4-21up; the last sheet is free from label 9"));
    assertTrue(house.pdf("es.pdf").contains("Ciruelas"), house.pdf("es.pdf"));
  }

  @Test
  void theHouseholdsOwnStockAndItsPrintersCorrectionAreUsed() throws Exception {
    house.write("pantry/label-stock.yaml", STOCK);
    assertEquals(0, run("labels 260824A-T/1 --stock cellar-roll -o true.pdf"), house.told());
    String kitchen = Files.readString(house.file("pantry/kitchen.yaml"));
    house.write(
        "pantry/kitchen.yaml",
        kitchen + "label-stock: cellar-roll\nsheet-offset-right: 2 mm\nsheet-offset-down: -1 mm\n");
    assertEquals(0, run("labels 260824A-T/1 -o moved.pdf"), house.told());
    assertTrue(house.told().contains("1 label on cellar-roll"), house.told());
    float[] before = Ink.firstLetter(house.file("true.pdf"));
    float[] after = Ink.firstLetter(house.file("moved.pdf"));
    // 72 pt make 25.4 mm.
    assertEquals(2 * 72 / 25.4, after[0] - before[0], 0.05);
    assertEquals(-1 * 72 / 25.4, after[1] - before[1], 0.05);
    assertEquals(0, run("kit plan.yaml -o kit"), house.told());
    assertArrayEquals(
        after, Ink.firstLetter(house.file("kit/labels.pdf")), 0.05f, "the kit's labels as well");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 | labels | labels needs lots",
        "2 | labels plums | labels needs lots",
        "1 | labels 260824A-X | mistyped",
        "1 | labels 260824A-T/15 | the lot has no such jar",
        "1 | labels 260824A-T --start 31 | start at 1 to 30",
        "2 | labels 260824A-T --start 0 | count from 1, not 0",
        "2 | labels 260824A-T --start two | takes a whole number, not two",
        "2 | labels 260824A-T --copies 100 | copies of a label are 1 to 99",
        "1 | labels 260824A-T --stock a4-22up | did you mean a4-",
        "2 | labels 260824A-T --language fr | known: en, es",
        "3 | labels 260824A-T -o pantry | a folder is in the way",
        "1 | stock a4-22up | did you mean a4-",
        "2 | stock --format xml | known: text, csv, json",
        "2 | stock a4-21up letter-30up | stock takes one name",
      })
  void refusesAndWritesNothing(int exit, String line, String message) throws Exception {
    List<String> before = house.ledger();
    assertEquals(exit, run(line.strip()), house.told());
    assertTrue(house.told().contains(message), house.told());
    assertEquals("", house.shown());
    assertEquals(before, house.ledger());
    assertFalse(Files.exists(house.file("print/labels-260824A-T.pdf")));
  }

  @Test
  void aMissingRecordIsNamed() throws Exception {
    Files.delete(house.file("pantry/batches/260824A-T.yaml"));
    assertEquals(1, run("labels 260824A-T"));
    assertTrue(house.told().contains("the lot's record is missing"), house.told());
  }

  @Test
  void listsTheStocksByGeometry() throws Exception {
    house.write("pantry/label-stock.yaml", STOCK);
    assertEquals(0, run("stock"), house.told());
    assertTrue(house.shown().contains("a4-21up a4 rounded-rect 3 × 7 = 21 63.5 × 38.1"));
    assertTrue(house.shown().contains("cellar-roll letter"), house.shown());
    assertEquals(0, run("stock cellar-roll --format csv"), house.told());
    assertTrue(
        house.shown().endsWith("cellar-roll,letter,215.9,279.4,rect,2,4,8,90,60,10,10,95,62 "),
        house.shown());
    assertEquals(0, run("stock cellar-roll --format json"), house.told());
    assertTrue(house.shown().contains("\"label_w_mm\" : 90,"), house.shown());
  }

  @Test
  void printsTheAlignmentPageWithTheCorrectionInForce() throws Exception {
    assertEquals(0, run("stock a4-21up --test align.pdf"), house.told());
    assertTrue(house.pdf("align.pdf").contains("a4-21up"), house.pdf("align.pdf"));
    assertEquals(0, run("stock --test usual.pdf --language es"), house.told());
    assertTrue(house.told().contains("letter-30up"), house.told());
  }
}
