package jarwright.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whoever gets the self-contained jar learns whose work is in it, and under which licence. */
class NoticeTest {
  /** As Maven lists them: {@code commons-io:commons-io:jar:2.20.0:compile}. */
  private static final Pattern LISTED = Pattern.compile("\\s+([\\w.-]+:[\\w.-]+):jar:.*");

  private static final Pattern NAMED = Pattern.compile("\\s*([\\w.-]+:[\\w.-]+)\\s{2,}\\S.*");

  @Test
  void noticeNamesWhatTheJarBundles() {
    Path list = SourceTree.root().resolve("target/bundled.txt");
    assumeTrue(
        Files.exists(list) || System.getenv("CI") != null,
        "run with Maven, which lists what is bundled");
    Set<String> bundled = found(LISTED, list);
    assertNotEquals(new TreeSet<>(), bundled);
    assertEquals(bundled, found(NAMED, SourceTree.root().resolve("NOTICE")));
  }

  @Test
  void noticeNamesEachTypeface() {
    String notice = String.join("\n", SourceTree.lines(SourceTree.root().resolve("NOTICE")));
    List<Path> fonts =
        SourceTree.filesBelow(SourceTree.root().resolve("fonts")).stream()
            .filter(f -> f.toString().endsWith(".ttf"))
            .toList();
    assertNotEquals(List.of(), fonts);
    for (Path font : fonts) {
      String[] name = font.getFileName().toString().replace(".ttf", "").split("-", 2);
      String family = name[0].replaceAll("(?<=[a-z])(?=[A-Z0-9])", " ");
      assertTrue(notice.contains(family) && notice.contains(name[1]), font::toString);
    }
  }

  private static Set<String> found(Pattern form, Path file) {
    TreeSet<String> found = new TreeSet<>();
    SourceTree.lines(file).stream()
        .map(form::matcher)
        .filter(Matcher::matches)
        .map(m -> m.group(1))
        .forEach(found::add);
    return found;
  }
}
