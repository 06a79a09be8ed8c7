package jarwright.house;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The project's texts stand by themselves: they point to nothing that lies outside it. */
class TextHygieneTest {

  /** In two halves, so that this file does not tell on itself. */
  private static final List<String> FOREIGN =
      List.of("shared" + "/", "/work" + "/", "/root" + "/", "seed" + " document");

  private static final List<String> TEXT =
      List.of(
          ".java",
          ".properties",
          ".csv",
          ".yaml",
          ".md",
          ".ftl",
          ".ftlx",
          ".ftlh",
          ".css",
          ".xml",
          ".json",
          ".html",
          ".txt",
          ".cmd");

  @Test
  void noTextPointsOutOfTheProject() {
    Path root = SourceTree.root();
    List<Path> files = new ArrayList<>();
    for (String folder : List.of("src", "templates", "samples", "fonts", ".ci")) {
      files.addAll(SourceTree.filesBelow(root.resolve(folder)));
    }
    Stream.of(
            "README.md",
            "DEVELOPERS.md",
            "CHANGELOG.md",
            "NOTICE",
            "pom.xml",
            "jarwright",
            "jarwright.cmd")
        .map(root::resolve)
        .filter(Files::exists)
        .forEach(files::add);
    assertEquals(List.of(), foreignLines(files));
  }

  @Test
  void aForeignLineIsToldWithItsPlace(@TempDir Path folder) throws IOException {
    Path note = folder.resolve("note.md");
    Files.writeString(note, "jars\nsee ../Shared" + "/tables\n");
    assertEquals(List.of(note + ":2: see ../Shared" + "/tables"), foreignLines(List.of(note)));
  }

  private static List<String> foreignLines(List<Path> files) {
    List<String> found = new ArrayList<>();
    for (Path file : files) {
      if (!isText(file)) {
        continue;
      }
      // What is looked for is ASCII, and some test inputs are not UTF-8 on purpose.
      List<String> lines = SourceTree.lines(file, ISO_8859_1);
      for (int i = 0; i < lines.size(); i++) {
        String line = lines.get(i).toLowerCase(Locale.ROOT);
        if (FOREIGN.stream().anyMatch(line::contains)) {
          found.add(file + ":" + (i + 1) + ": " + lines.get(i));
        }
      }
    }
    return found;
  }

  private static boolean isText(Path file) {
    String name = file.getFileName().toString();
    return !name.contains(".") || TEXT.stream().anyMatch(name::endsWith);
  }
}
