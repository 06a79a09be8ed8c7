package jarwright.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One domain noun per file: files stay small enough to be read at one go. */
class FileSizeTest {

  private static final int MOST = 400;
  private static final int LOOK_AGAIN = 250;
  private static final int MEDIAN = 120;
  private static final int ENOUGH_FOR_A_MEDIAN = 20;

  @Test
  void noFileIsTooLong() {
    Path source = SourceTree.root().resolve("src");
    longerThan(LOOK_AGAIN, source).forEach(it -> System.out.println("look again: " + it));
    assertEquals(List.of(), longerThan(MOST, source));
  }

  @Test
  void mostFilesOfTheProgramAreShort() {
    List<Integer> sizes =
        SourceTree.javaBelow(SourceTree.root().resolve("src/main")).stream()
            .filter(it -> !it.endsWith("package-info.java"))
            .map(it -> SourceTree.lines(it).size())
            .sorted()
            .toList();
    assertTrue(areMostlyShort(sizes), () -> "too many long files: " + sizes);
  }

  @Test
  void theMedianCountsOnceThereAreEnoughFiles() {
    List<Integer> few = Collections.nCopies(ENOUGH_FOR_A_MEDIAN - 1, MEDIAN + 1);
    assertTrue(areMostlyShort(few));
    List<Integer> enough = Collections.nCopies(ENOUGH_FOR_A_MEDIAN, MEDIAN + 1);
    assertFalse(areMostlyShort(enough));
    assertTrue(areMostlyShort(Collections.nCopies(ENOUGH_FOR_A_MEDIAN, MEDIAN)));
  }

  private static boolean areMostlyShort(List<Integer> sorted) {
    return sorted.size() < ENOUGH_FOR_A_MEDIAN || sorted.get(sorted.size() / 2) <= MEDIAN;
  }

  @Test
  void aLineTooManyIsTold(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("Right.java"), "\n".repeat(MOST));
    Files.writeString(folder.resolve("Long.java"), "\n".repeat(MOST + 1));
    assertEquals(List.of(folder.resolve("Long.java") + ": 401 lines"), longerThan(MOST, folder));
  }

  private static List<String> longerThan(int most, Path folder) {
    return SourceTree.javaBelow(folder).stream()
        .filter(it -> SourceTree.lines(it).size() > most)
        .map(it -> it + ": " + SourceTree.lines(it).size() + " lines")
        .toList();
  }
}
