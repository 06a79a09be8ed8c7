package jarwright.files;

import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.entry;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.pantry.Entry;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import jarwright.problem.Refused;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A power cut can leave a ledger cut off at any byte. */
class LedgerTornTest {
  private static final Entry NEXT = entry(PLUMS, "7", JarStep.moved("attic"));

  @TempDir Path folder;
  private byte[] whole;
  private List<LedgerEvent> events;

  @BeforeEach
  void writeASmallLedger() throws Exception {
    Path written = Files.createDirectory(folder.resolve("written"));
    LedgerFile.in(written).append(List.of(entry(PLUMS, "3", JarStep.taken("für Oma 🫙"))));
    LedgerFile.in(written).append(List.of(entry(PLUMS, "4", JarStep.missing())));
    whole = Files.readAllBytes(written.resolve("ledger.csv"));
    events = LedgerFile.in(written).read().events();
  }

  private static LedgerFile ledger(Path household) {
    return new LedgerFile(household, FakeDisk.sound());
  }

  private Path cutOffAt(int bytes) throws IOException {
    Path household = folder.resolve("cut");
    Files.createDirectories(household);
    for (Path aside : asides(household)) {
      Files.delete(aside);
    }
    Files.write(household.resolve("ledger.csv"), Arrays.copyOf(whole, bytes));
    return household;
  }

  /** Events whose lines lie whole before the given byte, with or without their line feed. */
  private int wholeBefore(int bytes) {
    String text = new String(whole, StandardCharsets.ISO_8859_1);
    int lines = 0;
    for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', end + 1)) {
      lines += end <= bytes ? 1 : 0;
    }
    return Math.max(0, lines - 1);
  }

  private static List<Path> asides(Path household) throws IOException {
    try (Stream<Path> files = Files.list(household)) {
      return files.filter(f -> f.toString().contains("torn")).sorted().toList();
    }
  }

  private static byte[] setAside(Path household) throws IOException {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (Path file : asides(household)) {
      all.write(Files.readAllBytes(file));
    }
    return all.toByteArray();
  }

  @Test
  void cutOffAtAnyByteItOpensWithAllThatIsWholeAndLosesNothing() throws Exception {
    for (int bytes = 0; bytes <= whole.length; bytes++) {
      Path household = cutOffAt(bytes);
      Ledger ledger = ledger(household).read();
      assertEquals(events.subList(0, wholeBefore(bytes)), ledger.events(), "cut at " + bytes);
      byte[] kept = Files.readAllBytes(household.resolve("ledger.csv"));
      byte[] aside = setAside(household);
      byte[] both = Arrays.copyOf(kept, kept.length + aside.length);
      System.arraycopy(aside, 0, both, kept.length, aside.length);
      assertArrayEquals(Arrays.copyOf(whole, bytes), both, "cut at " + bytes);
      assertEquals(aside.length > 0, !ledger.remarks().isEmpty(), "cut at " + bytes);
    }
  }

  @Test
  void cutOffAtAnyByteItCanBeAddedToAtOnce() throws Exception {
    for (int bytes = 0; bytes <= whole.length; bytes++) {
      Path household = cutOffAt(bytes);
      Appended appended = ledger(household).append(List.of(NEXT));
      List<LedgerEvent> read = ledger(household).read().events();
      int before = Math.max(1, wholeBefore(bytes));
      assertEquals(before + 1, read.size(), "cut at " + bytes);
      assertEquals(NEXT, read.get(before).entry());
      assertEquals(appended.events().get(0), read.get(before));
      assertEquals(setAside(household).length > 0, !appended.remarks().isEmpty());
    }
  }

  @Test
  void aTornLineIsReportedOnceAndByName() throws Exception {
    Path household = cutOffAt(whole.length - 5);
    Ledger first = ledger(household).read();
    int bytes = setAside(household).length;
    assertEquals(
        List.of(
            "The last line of ledger.csv had been cut off. Its "
                + bytes
                + " bytes are set aside in ledger.torn-1.txt; every event before it is kept."),
        first.remarks());
    assertEquals(List.of(), ledger(household).read().remarks());
  }

  @Test
  void anEarlierTornLineIsNotOverwritten() throws Exception {
    Path household = cutOffAt(whole.length - 5);
    Files.writeString(household.resolve("ledger.torn-1.txt"), "earlier");
    ledger(household).read();
    assertEquals("earlier", Files.readString(household.resolve("ledger.torn-1.txt")));
    assertTrue(Files.exists(household.resolve("ledger.torn-2.txt")));
  }

  @Test
  void blocksThatWereNeverWrittenAreSetAsideToo() throws Exception {
    Path household = Files.createDirectory(folder.resolve("zeros"));
    Files.write(household.resolve("ledger.csv"), Arrays.copyOf(whole, whole.length + 4096));
    assertEquals(events, ledger(household).read().events());
    assertEquals(4096, setAside(household).length);
  }

  @Test
  void aTornLineThatCannotBeSetAsideIsLeftWhereItIs() throws Exception {
    Path household = cutOffAt(whole.length - 5);
    byte[] before = Files.readAllBytes(household.resolve("ledger.csv"));
    LedgerFile readOnly =
        new LedgerFile(
            household,
            (file, options) -> {
              throw new java.nio.file.AccessDeniedException(file.toString());
            });
    Ledger ledger = readOnly.read();
    assertEquals(events.subList(0, 2), ledger.events());
    assertEquals(
        List.of(
            "The last line of ledger.csv is cut off and was left out;"
                + " it could not be set aside (not permitted)."),
        ledger.remarks());
    assertArrayEquals(before, Files.readAllBytes(household.resolve("ledger.csv")));
  }

  @Test
  void lookingAtAWholeLedgerWritesNothing() throws IOException, Refused {
    Path household = cutOffAt(whole.length);
    ledger(household).read().pantry();
    assertFalse(Files.exists(household.resolve(".ledger.lock")));
  }
}
