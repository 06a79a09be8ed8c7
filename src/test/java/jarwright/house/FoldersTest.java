package jarwright.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What must lie beside what: a word on each package, a licence for each typeface. */
class FoldersTest {

  @Test
  void eachPackageSaysWhatItHolds() {
    assertEquals(List.of(), packagesWithoutInfo(SourceTree.root().resolve("src/main/java")));
  }

  @Test
  void eachTypefaceHasItsLicence() {
    Path fonts = SourceTree.root().resolve("fonts");
    assertNotEquals(
        List.of(), SourceTree.filesBelow(fonts).stream().filter(FoldersTest::isFont).toList());
    assertEquals(List.of(), fontsWithoutLicence(fonts));
  }

  @Test
  void aPackageWithoutAWordIsTold(@TempDir Path folder) throws IOException {
    Files.writeString(Files.createDirectories(folder.resolve("jars")).resolve("Jar.java"), "");
    assertEquals(List.of(folder.resolve("jars")), packagesWithoutInfo(folder));
    Files.writeString(folder.resolve("jars/package-info.java"), "");
    assertEquals(List.of(), packagesWithoutInfo(folder));
  }

  @Test
  void aTypefaceWithoutALicenceIsTold(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("Face-Bold.ttf"), "");
    assertEquals(List.of(folder.resolve("Face-Bold.ttf")), fontsWithoutLicence(folder));
    Files.writeString(folder.resolve("Face-OFL.txt"), "SIL OPEN FONT LICENSE");
    assertEquals(List.of(), fontsWithoutLicence(folder));
  }

  private static List<Path> packagesWithoutInfo(Path folder) {
    return SourceTree.javaBelow(folder).stream()
        .map(Path::getParent)
        .distinct()
        .filter(it -> !Files.exists(it.resolve("package-info.java")))
        .toList();
  }

  private static List<Path> fontsWithoutLicence(Path folder) {
    return SourceTree.filesBelow(folder).stream()
        .filter(FoldersTest::isFont)
        .filter(it -> !hasLicence(it))
        .toList();
  }

  private static boolean isFont(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).matches(".*\\.(ttf|otf|ttc|woff2?)");
  }

  /**
   * {@code Family-Weight.ttf} wants {@code Family-OFL.txt} or {@code Family-LICENSE.txt}, and text
   * in it.
   */
  private static boolean hasLicence(Path font) {
    String family = font.getFileName().toString().replaceFirst("[-.].*", "");
    return List.of("-OFL.txt", "-LICENSE.txt").stream()
        .map(end -> font.resolveSibling(family + end))
        .anyMatch(
            it -> Files.exists(it) && String.join("\n", SourceTree.lines(it)).contains("LICENSE"));
  }
}
