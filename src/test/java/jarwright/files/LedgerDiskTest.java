package jarwright.files;

import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.sevenPlums;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.pantry.Entry;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Disks fail; what was recorded before stays, and nothing is half recorded. */
class LedgerDiskTest {
  /** Some 600 bytes, so that there are as many points at which to fail. */
  private static final List<Entry> SIX =
      List.of(
          entry(PLUMS, "1", JarStep.taken("lunch")),
          entry(PLUMS, "2", JarStep.moved("attic")),
          entry(PLUMS, "3", JarStep.tossed("the lid had lifted")),
          entry(PLUMS, "4", JarStep.missing()),
          entry(PLUMS, "5", JarStep.moved("cellar")),
          entry(PLUMS, "6", JarStep.taken("a gift")));

  @TempDir Path folder;
  private Path file;
  private byte[] before;
  private List<LedgerEvent> events;

  @BeforeEach
  void writeALedger() throws Exception {
    file = folder.resolve("ledger.csv");
    LedgerFile.in(folder).append(sevenPlums());
    before = Files.readAllBytes(file);
    events = LedgerFile.in(folder).read().events();
  }

  private int lengthOfSix() throws Exception {
    new LedgerFile(folder, FakeDisk.sound()).append(SIX);
    int length = (int) Files.size(file) - before.length;
    Files.write(file, before);
    return length;
  }

  @Test
  void aDiskFullAtAnyByteLeavesTheLedgerAsItWas() throws Exception {
    int length = lengthOfSix();
    for (int room = 0; room < length; room++) {
      LedgerFile ledger = new LedgerFile(folder, FakeDisk.fullAfter(room));
      IOException trouble = assertThrows(IOException.class, () -> ledger.append(SIX));
      assertEquals(
          file + " could not be written: No space left on device. Nothing was recorded",
          trouble.getMessage());
      assertArrayEquals(before, Files.readAllBytes(file), "full after " + room);
    }
  }

  /** As when the program is killed there: stopped at every byte, then started anew. */
  @Test
  void stoppedAtAnyByteTheNextStartFindsAllThatWasRecorded() throws Exception {
    int length = lengthOfSix();
    assertTrue(length >= 500, length + " points");
    for (int room = 0; room < length; room++) {
      LedgerFile dying = new LedgerFile(folder, FakeDisk.goneAfter(room));
      assertThrows(IOException.class, () -> dying.append(SIX));
      LedgerFile next = new LedgerFile(folder, FakeDisk.sound());
      List<LedgerEvent> found = next.read().events();
      assertEquals(events, found.subList(0, events.size()), "stopped after " + room);
      assertTrue(found.size() <= events.size() + SIX.size());
      next.append(SIX);
      assertEquals(found.size() + SIX.size(), next.read().last(), "stopped after " + room);
      Files.write(file, before);
      Files.deleteIfExists(folder.resolve("ledger.torn-1.txt"));
    }
  }

  @Test
  void bytesThatMayNotBeSafeAreTakenBack() throws Exception {
    LedgerFile ledger = new LedgerFile(folder, FakeDisk.unsure());
    IOException trouble = assertThrows(IOException.class, () -> ledger.append(SIX));
    assertTrue(trouble.getMessage().endsWith("Input/output error. Nothing was recorded"));
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  @Test
  void aFirstAppendThatFailsLeavesAnEmptyLedger() throws Exception {
    Path fresh = Files.createDirectory(folder.resolve("fresh"));
    for (int room = 0; room < 200; room++) {
      LedgerFile ledger = new LedgerFile(fresh, FakeDisk.fullAfter(room));
      assertThrows(IOException.class, () -> ledger.append(sevenPlums()));
      assertEquals(0, LedgerFile.in(fresh).read().last(), "full after " + room);
    }
    LedgerFile.in(fresh).append(sevenPlums());
    assertEquals(3, LedgerFile.in(fresh).read().last());
  }

  @Test
  void aTornLineIsNeverCutOffBeforeItsCopyIsWritten() throws Exception {
    byte[] torn = "4,2026-08-24T12:00-05:00,torn".getBytes(java.nio.charset.StandardCharsets.UTF_8);
    for (int room = 0; room < torn.length; room++) {
      byte[] damaged = java.util.Arrays.copyOf(before, before.length + torn.length);
      System.arraycopy(torn, 0, damaged, before.length, torn.length);
      Files.write(file, damaged);
      LedgerFile ledger = new LedgerFile(folder, FakeDisk.fullAfter(room));
      assertThrows(IOException.class, () -> ledger.append(SIX));
      assertArrayEquals(damaged, Files.readAllBytes(file), "full after " + room);
    }
  }
}
