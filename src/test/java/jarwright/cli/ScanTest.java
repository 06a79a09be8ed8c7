package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code scan}: a jar's record by its code. */
class ScanTest {
  @TempDir static Path folder;
  private static ServedHome home;

  @BeforeAll
  static void fill() throws Exception {
    home = ServedHome.open(folder, false);
    home.run("take", "260824A-T/02");
  }

  @AfterAll
  static void close() {
    home.close();
  }

  private static String refused(String... args) {
    return assertThrows(AssertionError.class, () -> home.run(args)).getMessage();
  }

  /** AIB 539 (2015) p. 2-22, band 1,001 to 3,000 ft. */
  @Test
  void aTypedCodeShowsTheJarsRecord() {
    String record = home.run("scan", "260824a-t/03");
    assertTrue(record.contains("OK TO USE BY AUGUST 24, 2027"), record);
    assertTrue(record.contains("30 min") && record.contains("AIB 539 (2015) p. 2-22"), record);
    assertTrue(home.run("scan", "260824A-T").contains("OK TO USE BY"), "a lot");
    assertTrue(
        home.run("scan", "LOT 260824A-T/03 USE BY 2027-08-24 PLUMS").contains("OK TO USE BY"),
        "all");
    assertTrue(
        home.run("scan", "HTTP://PANTRY.LAN:8080/260824A-T/03/USE-BY-2027-08-24")
            .contains("OK TO USE BY"),
        "an address");
  }

  @Test
  void whatTheLabelAndTheLedgerDoNotSayAlikeIsTold() {
    assertTrue(home.run("scan", "260824A-T/02").contains("and yet here it is"));
    String other = home.run("scan", "LOT 260824A-T/03 USE BY 2028-08-24");
    assertTrue(other.contains("the label says use by 2028-08-24"), other);
  }

  @Test
  void everyReasonIsShownWithItsSource() {
    for (String jar : List.of("02", "03", "05")) {
      String record = home.run("scan", "260824A-T/" + jar);
      assertFalse(record.contains("null") || record.contains(", ,"), record);
    }
    assertTrue(home.run("scan", "260824A-T/03").contains("canner. (AIB 539 (2015) Guide 1"));
  }

  @Test
  void aGiftStillShowsWhatItsCodeHolds() {
    String gift = home.run("scan", "LOT 250701A-C/07 USE BY 2026-07-01 PEACHES RAW PACK");
    assertTrue(gift.contains("NOT IN THIS LEDGER"), gift);
    assertTrue(gift.contains("packed 2025-07-01, use by 2026-07-01"), gift);
    assertTrue(gift.contains("peaches raw pack") && gift.contains("that date has passed"), gift);
    assertFalse(gift.contains("OK TO USE"), gift);
  }

  @Test
  void aSheetOfLabelsIsComparedWithItsShelf() {
    String found = home.run("scan", "print/plan/labels.pdf", "--shelf", "cellar B3");
    assertTrue(found.indexOf("260824A-T/05") < found.indexOf("260824A-T/03"), "to see to first");
    assertTrue(found.contains("At cellar B3 the ledger has 12"), found);
    assertTrue(
        found.contains("in the picture, but the ledger has it taken on 2026-08-26: 260824A-T/02"),
        found);
  }

  @Test
  void aScannedShelfIsAStockTake() throws Exception {
    String seen =
        home.run("scan", "print/plan/labels.pdf", "--shelf", "cellar B3", "--format", "csv");
    assertTrue(seen.startsWith("jar,shelf\n260824A-T/01,cellar B3\n"), seen);
    Files.writeString(folder.resolve("seen.csv"), seen);
    String told = home.run("count", "seen.csv");
    assertTrue(told.contains("260824A-T/02"), told);
  }

  @Test
  void whatCannotBeReadIsTold() throws Exception {
    assertTrue(refused("scan", "260824A-X/03").contains("is mistyped"));
    assertTrue(refused("scan", "shelf.jpg").contains("there is no such file"));
    assertTrue(refused("scan").contains("scan needs a picture or a code"));
    Files.writeString(folder.resolve("words.png"), "no picture");
    assertTrue(refused("scan", "words.png").contains("is no picture that can be read"));
  }
}
