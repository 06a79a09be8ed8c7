package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {
  @TempDir private Path temp;

  @Test
  void filesAndTheirFoldersAreMade() throws Exception {
    Path out = temp.resolve("print/plum-day");
    new OutputFolder(out).write(files("kit.json", "{}", "records/index.html", "<p>"));
    assertEquals(List.of("kit.json", "records", "records/index.html"), names(out));
    assertEquals("{}", Files.readString(out.resolve("kit.json")));
  }

  @Test
  void whatWasThereIsReplacedAndNothingElseTouched() throws Exception {
    Files.writeString(temp.resolve("kit.json"), "old and longer than the new one");
    Files.writeString(temp.resolve("mine.txt"), "mine");
    new OutputFolder(temp).write(files("kit.json", "new"));
    assertEquals("new", Files.readString(temp.resolve("kit.json")));
    assertEquals(List.of("kit.json", "mine.txt"), names(temp));
  }

  @Test
  void aFullDiskLeavesEverythingAsItWas() throws Exception {
    Files.writeString(temp.resolve("a"), "old a");
    Files.writeString(temp.resolve("b"), "old b");
    OutputFolder full = new OutputFolder(temp, FakeDisk.fullAfter(7));
    IOException told =
        assertThrows(
            IOException.class, () -> full.write(files("a", "new a", "sub/b", "new b", "c", "c")));
    assertEquals(
        temp.resolve("sub/b") + " could not be written: No space left on device",
        told.getMessage());
    assertEquals(List.of("a", "b"), names(temp));
    assertEquals("old a", Files.readString(temp.resolve("a")));
  }

  @Test
  void aDiskThatCannotSayTheBytesAreSafeChangesNothing() throws Exception {
    OutputFolder unsure = new OutputFolder(temp.resolve("new"), FakeDisk.unsure());
    assertThrows(IOException.class, () -> unsure.write(files("a", "a")));
    assertFalse(Files.exists(temp.resolve("new")));
  }

  /** No process has so high a number; this one's own is another living run's. */
  @Test
  void whatAKilledRunLeftIsTakenAwayAndWhatALivingOneWritesIsNot() throws Exception {
    String living = ".jarwright-" + ProcessHandle.current().pid() + "-999999.part";
    for (String name : List.of(".jarwright-999999999999-1.part", living, ".mine.part")) {
      Files.writeString(temp.resolve(name), "half");
    }
    new OutputFolder(temp).write(files("a", "a", "b", "b"));
    assertEquals(List.of(living, ".mine.part", "a", "b"), names(temp));
  }

  /** As long as most file systems allow, which leaves nothing for an ending of our own. */
  @Test
  void theLongestNamesCanBeWritten() throws Exception {
    String longest = "x".repeat(251) + ".pdf";
    new OutputFolder(temp).write(files(longest, "x"));
    assertEquals(List.of(longest), names(temp));
    IOException told =
        assertThrows(
            IOException.class,
            () -> new OutputFolder(temp).write(files("a", "a", "y" + longest, "y")));
    assertTrue(told.getMessage().contains("could not be written"), told.getMessage());
    assertEquals(List.of(longest), names(temp));
  }

  @Test
  void whatIsStagedAndNotPutInPlaceLeavesNoTrace() throws Exception {
    Files.writeString(temp.resolve("a"), "old");
    OutputFolder.Staged staged = new OutputFolder(temp).stage(files("a", "new", "records/b", "b"));
    assertEquals("old", Files.readString(temp.resolve("a")));
    assertTrue(Files.isDirectory(temp.resolve("records")));
    staged.close();
    assertEquals(List.of("a"), names(temp));
  }

  @Test
  void aFileInThePlaceOfAFolderIsTold() throws Exception {
    Path file = Files.writeString(temp.resolve("print"), "mine");
    IOException told =
        assertThrows(
            IOException.class,
            () -> new OutputFolder(file.resolve("plum-day")).write(files("kit.json", "{}")));
    assertEquals(
        file.resolve("plum-day/kit.json") + " could not be written: a file is in the way",
        told.getMessage());
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void aFolderInThePlaceOfAFileIsTold() throws Exception {
    Files.createDirectories(temp.resolve("b"));
    IOException told =
        assertThrows(
            IOException.class, () -> new OutputFolder(temp).write(files("a", "a", "b", "b")));
    assertEquals(
        temp.resolve("b") + " could not be written: a folder is in the way", told.getMessage());
    assertEquals(List.of("b"), names(temp));
  }

  @Test
  void aLinkInThePlaceOfAFileIsNotFollowed() throws Exception {
    Path elsewhere = Files.writeString(temp.resolve("elsewhere"), "mine");
    Path out = Files.createDirectories(temp.resolve("out"));
    Files.createSymbolicLink(out.resolve("kit.json"), elsewhere);
    IOException told =
        assertThrows(IOException.class, () -> new OutputFolder(out).write(files("kit.json", "{}")));
    assertTrue(told.getMessage().endsWith("could not be written: a link is in the way"));
    assertEquals("mine", Files.readString(elsewhere));
  }

  @Test
  void anUnwritableFolderIsTold() throws Exception {
    // Refused by the opener, since a folder's own bits do not bind the superuser, who may run this.
    LedgerFile.Opener refuses =
        (file, options) -> {
          throw new AccessDeniedException(file.toString());
        };
    Path out = temp.resolve("out");
    IOException told =
        assertThrows(
            IOException.class, () -> new OutputFolder(out, refuses).write(files("a", "a")));
    assertEquals(out.resolve("a") + " could not be written: not permitted", told.getMessage());
    assertEquals(List.of(), names(temp));
  }

  private static Map<String, byte[]> files(String... namesAndTexts) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      files.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(p -> !p.equals(folder))
          .map(p -> folder.relativize(p).toString())
          .sorted()
          .toList();
    }
  }
}
