package jarwright.files;

import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.sevenPlums;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.pantry.Entry;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Opened;
import jarwright.pantry.Standing;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerFileTest {
  @TempDir Path folder;

  private LedgerFile ledger() {
    return LedgerFile.in(folder);
  }

  private String text() throws IOException {
    return Files.readString(folder.resolve("ledger.csv"));
  }

  @Test
  void aLedgerThatIsNotThereIsEmpty() throws Exception {
    assertEquals(0, ledger().read().last());
    assertEquals(List.of(), ledger().read().events());
    assertFalse(Files.exists(folder.resolve("ledger.csv")));
  }

  @Test
  void aLineIsWhatASpreadsheetShowsAsOneRow() throws Exception {
    ledger().append(sevenPlums());
    List<String> lines = text().lines().toList();
    assertEquals("number,when,lot,jar,event,detail,by,check", lines.get(0));
    assertTrue(
        lines.get(1).matches("1,2026-08-24T12:00-05:00,,,opened,household=[0-9a-f]{16},Anna,.*"));
    assertTrue(
        lines
            .get(3)
            .matches(
                "3,2026-08-24T12:00-05:00,260824A-.,01\\.\\.07,outcome,load=1 \\| sealed=yes"
                    + " \\| lost=none \\| verdict=shelf,Anna,[0-9a-f]{6}-[0-9a-f]{16}"));
    assertEquals(4, lines.size());
  }

  @Test
  void whatIsAppendedIsReadBackInOrder() throws Exception {
    Entry taken = entry(PLUMS, "3", JarStep.taken("=2+2; \"quoted\",\nsecond line | \uD83E\uDED9"));
    ledger().append(sevenPlums());
    List<LedgerEvent> written = ledger().append(List.of(taken)).events();
    List<LedgerEvent> read = ledger().read().events();
    assertEquals(List.of(1L, 2L, 3L, 4L), read.stream().map(LedgerEvent::number).toList());
    assertTrue(read.get(0).what() instanceof Opened);
    assertEquals(sevenPlums(), read.subList(1, 3).stream().map(LedgerEvent::entry).toList());
    assertEquals(written, read.subList(3, 4));
    assertEquals(taken, read.get(3).entry());
    assertEquals(4, ledger().read().last());
  }

  @Test
  void aDecisionSeesAllThatWasWrittenBefore() throws Exception {
    ledger().append(sevenPlums());
    for (int i = 0; i < 2; i++) {
      ledger()
          .append(
              pantry -> {
                int next =
                    pantry
                        .here()
                        .filter(j -> j.standing() instanceof Standing.OnShelf)
                        .findFirst()
                        .orElseThrow()
                        .id()
                        .number();
                return List.of(entry(PLUMS, String.valueOf(next), JarStep.taken("")));
              });
    }
    assertEquals(5, ledger().read().pantry().here().count());
    assertTrue(
        ledger().read().pantry().jar(PLUMS.jar(2)).orElseThrow().standing()
            instanceof Standing.Taken);
  }

  @Test
  void nothingIsWrittenForNoEntries() throws Exception {
    assertEquals(List.of(), ledger().append(List.of()).events());
    assertFalse(Files.exists(folder.resolve("ledger.csv")));
  }

  @Test
  void anEditorsByteOrderMarkAndLineEndsAreReadOver() throws Exception {
    ledger().append(sevenPlums());
    Files.writeString(
        folder.resolve("ledger.csv"), "\uFEFF" + text().replace("\n", "\r\n") + "\r\n");
    assertEquals(3, ledger().read().last());
    ledger().append(List.of(entry(PLUMS, "1", JarStep.taken(""))));
    assertEquals(4, ledger().read().events().size());
    assertEquals(List.of(), ledger().read().remarks());
  }

  @Test
  void aWholeLastLineWithoutItsEndIsKept() throws Exception {
    ledger().append(sevenPlums());
    Files.writeString(folder.resolve("ledger.csv"), text().stripTrailing());
    assertEquals(3, ledger().read().last());
    ledger().append(List.of(entry(PLUMS, "1", JarStep.taken(""))));
    assertEquals(4, ledger().read().events().size());
  }

  @Test
  void everyHouseholdHasItsOwnMark() throws Exception {
    Path other = Files.createDirectory(folder.resolve("other"));
    ledger().append(sevenPlums());
    LedgerFile.in(other).append(sevenPlums());
    assertNotEquals(ledger().read().household(), LedgerFile.in(other).read().household());
  }

  @Test
  void aNoteTooLongForALineIsRefusedAndNothingWritten() throws Exception {
    ledger().append(sevenPlums());
    String before = text();
    Entry novel = entry(PLUMS, "1", JarStep.taken("x".repeat(70_000)));
    Entry fine = entry(PLUMS, "2", JarStep.taken(""));
    Refused refused = assertThrows(Refused.class, () -> ledger().append(List.of(fine, novel)));
    assertTrue(refused.getMessage().contains("shorten the note"), refused.getMessage());
    assertEquals(before, text());
  }

  @Test
  void aFolderThatIsNotThereIsSaidInPlainWords() {
    Path nowhere = folder.resolve("nowhere");
    IOException trouble =
        assertThrows(IOException.class, () -> LedgerFile.in(nowhere).append(sevenPlums()));
    assertEquals(
        nowhere.resolve("ledger.csv")
            + " could not be written: there is no such folder. Nothing was recorded",
        trouble.getMessage());
  }

  @Test
  void anAppendLooksOnlyAtTheEnds() throws Exception {
    ledger().append(sevenPlums());
    ledger().append(List.of(entry(PLUMS, "1", JarStep.taken("x".repeat(60_000)))));
    ledger().append(List.of(entry(PLUMS, "2", JarStep.taken("y".repeat(60_000)))));
    ledger().append(List.of(entry(PLUMS, "3", JarStep.taken("y".repeat(60_000)))));
    ledger().append(List.of(entry(PLUMS, "4", JarStep.taken(""))));
    assertEquals(7, ledger().read().last());
    byte[] bytes = text().getBytes(StandardCharsets.UTF_8);
    bytes[bytes.length / 2] = 'z';
    Files.write(folder.resolve("ledger.csv"), bytes);
    // The damage lies far from both ends: adding goes on, reading refuses.
    ledger().append(List.of(entry(PLUMS, "5", JarStep.taken(""))));
    assertThrows(Refused.class, () -> ledger().read());
  }
}
