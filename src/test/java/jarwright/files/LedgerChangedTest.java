package jarwright.files;

import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.sevenPlums;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.pantry.JarStep;
import jarwright.problem.Problem;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A ledger that somebody changed is refused, by the line. */
class LedgerChangedTest {
  @TempDir Path folder;
  private List<String> lines;

  @BeforeEach
  void writeALedger() throws Exception {
    LedgerFile ledger = LedgerFile.in(folder);
    ledger.append(sevenPlums());
    for (int jar = 1; jar <= 3; jar++) {
      ledger.append(List.of(entry(PLUMS, String.valueOf(jar), JarStep.taken("lunch"))));
    }
    lines = new ArrayList<>(Files.readAllLines(folder.resolve("ledger.csv")));
  }

  private Problem refusal(List<String> changed) throws IOException {
    Files.write(folder.resolve("ledger.csv"), changed);
    Refused refused = assertThrows(Refused.class, () -> LedgerFile.in(folder).read());
    assertEquals(changed, Files.readAllLines(folder.resolve("ledger.csv")));
    return refused.problems().get(0);
  }

  @Test
  void anyByteChangedInAnyLineButTheLastIsFoundInThatLineOrTheNext() throws Exception {
    byte[] whole = Files.readAllBytes(folder.resolve("ledger.csv"));
    int last = String.join("\n", lines.subList(0, lines.size() - 1)).length();
    int line = 1;
    for (int i = 0; i < last; i++) {
      byte[] changed = whole.clone();
      changed[i] = (byte) (whole[i] == '7' ? '8' : '7');
      Files.write(folder.resolve("ledger.csv"), changed);
      Refused refused = assertThrows(Refused.class, () -> LedgerFile.in(folder).read());
      int told = refused.problems().get(0).where().line();
      assertTrue(told == line || told == line + 1, "byte " + i + ": line " + told);
      line += whole[i] == '\n' ? 1 : 0;
      assertArrayEquals(changed, Files.readAllBytes(folder.resolve("ledger.csv")));
    }
  }

  @Test
  void anEditedLineIsNamed() throws Exception {
    lines.set(4, lines.get(4).replace("lunch", "dinner"));
    Problem problem = refusal(lines);
    assertEquals("ledger.csv:5", problem.where().toString());
    assertEquals("the line was edited, or one before it is gone", problem.what());
  }

  @Test
  void aLineCutShortInTheMiddleIsNamed() throws Exception {
    lines.set(4, lines.get(4).substring(0, 30));
    Problem problem = refusal(lines);
    assertEquals("ledger.csv:5", problem.where().toString());
    assertEquals("the line was torn or edited", problem.what());
  }

  @Test
  void aLineTakenOutIsFoundAtTheNext() throws Exception {
    lines.remove(4);
    lines.add(lines.get(lines.size() - 1));
    assertEquals("ledger.csv:5", refusal(lines).where().toString());
  }

  @Test
  void linesThatChangedPlacesAreNamed() throws Exception {
    lines.add(4, lines.remove(5));
    assertEquals("ledger.csv:5", refusal(lines).where().toString());
  }

  @Test
  void aLineOfAnotherHouseholdIsRefusedByItsMark() throws Exception {
    Path other = Files.createDirectory(folder.resolve("other"));
    LedgerFile.in(other).append(sevenPlums());
    List<String> others = Files.readAllLines(other.resolve("ledger.csv"));
    String mine = LedgerFile.in(folder).read().household();
    String theirs = LedgerFile.in(other).read().household();

    List<String> joined = new ArrayList<>(lines);
    joined.add(others.get(3));
    Problem problem = refusal(joined);
    assertEquals("ledger.csv:8", problem.where().toString());
    assertEquals(
        "the line is from the ledger of another household (" + theirs + ", here " + mine + ")",
        problem.what());

    Files.write(folder.resolve("ledger.csv"), joined);
    Refused atAppend =
        assertThrows(
            Refused.class,
            () -> LedgerFile.in(folder).append(List.of(entry(PLUMS, "4", JarStep.taken("")))));
    assertEquals(problem.what(), atAppend.problems().get(0).what());
  }

  @Test
  void twoWholeLedgersInOneFileAreRefused() throws Exception {
    Path other = Files.createDirectory(folder.resolve("other"));
    LedgerFile.in(other).append(sevenPlums());
    List<String> joined = new ArrayList<>(lines);
    joined.addAll(Files.readAllLines(other.resolve("ledger.csv")));
    Problem problem = refusal(joined);
    assertEquals("ledger.csv:8", problem.where().toString());
    assertEquals("a second ledger begins here", problem.what());
  }

  @Test
  void twoCopiesOfOneLedgerThatWentOnApartAreRefusedAsSuch() throws Exception {
    Path copy = Files.createDirectory(folder.resolve("copy"));
    Files.write(copy.resolve("ledger.csv"), lines);
    LedgerFile.in(folder).append(List.of(entry(PLUMS, "5", JarStep.taken(""))));
    LedgerFile.in(copy).append(List.of(entry(PLUMS, "6", JarStep.taken(""))));
    List<String> joined = new ArrayList<>(Files.readAllLines(folder.resolve("ledger.csv")));
    joined.add(Files.readAllLines(copy.resolve("ledger.csv")).get(lines.size()));
    Problem problem = refusal(joined);
    assertEquals(
        "event 7 comes a second time: two copies of this ledger were joined", problem.what());
  }

  @Test
  void whatASpreadsheetSavedOverTheLedgerIsRefused() throws Exception {
    List<String> saved = lines.stream().map(l -> l.replace(",", ";")).toList();
    Problem problem = refusal(saved);
    assertTrue(problem.what().startsWith("this is no ledger"), problem.what());
  }

  @Test
  void aLineOfAnUnknownKindIsLeftToTheVersionThatWroteIt() throws Exception {
    LedgerScan.Found end = new LedgerMender(folder, folder.resolve("ledger.csv"), null).scan();
    String text = "7,2026-08-24T12:00-05:00,,,blessed,,Anna,";
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    lines.add(text + new LedgerChain().check(end.mark(), end.check(), bytes, bytes.length));
    Files.write(folder.resolve("ledger.csv"), lines);
    Refused refused = assertThrows(Refused.class, () -> LedgerFile.in(folder).read().events());
    Problem problem = refused.problems().get(0);
    assertEquals("ledger.csv:8", problem.where().toString());
    assertTrue(problem.what().startsWith("\"blessed\" is no event"), problem.what());
  }
}
