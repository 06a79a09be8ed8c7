package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextFileTest {
  @TempDir private Path folder;

  @Test
  void aHundredMegabytesAreRefusedUnread() throws Exception {
    Path large = folder.resolve("large.yaml");
    try (FileChannel channel =
        FileChannel.open(large, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      byte[] start = "a: b\n".repeat(300_000).getBytes(StandardCharsets.UTF_8);
      channel.write(ByteBuffer.wrap(start));
      channel.write(ByteBuffer.wrap(new byte[] {'\n'}), 100_000_000);
    }
    assertEquals(
        "the file is larger than 1 MB",
        assertThrows(Refused.class, () -> TextFile.read(large)).problems().get(0).what());
  }

  @ParameterizedTest
  @CsvSource({"UTF-16LE,true", "UTF-16BE,true", "UTF-16LE,false", "UTF-16BE,false"})
  void wideTextIsNamed(String charset, boolean mark) {
    byte[] bytes = ((mark ? "\uFEFF" : "") + "product,jar").getBytes(Charset.forName(charset));
    String what = what(bytes);
    assertTrue(what.contains(mark ? "UTF-16" : "no text file"), what);
  }

  @Test
  void aSpreadsheetsOwnFileIsNamed() {
    assertEquals(
        "this is a spreadsheet's own file or an archive",
        what("PK\u0003\u0004....".getBytes(StandardCharsets.ISO_8859_1)));
  }

  @Test
  void anOldWesternTextIsPlaced() {
    Refused refused =
        assertThrows(
            Refused.class,
            () ->
                TextFile.of("p.csv", "product\nPur\u00E9e".getBytes(StandardCharsets.ISO_8859_1)));
    assertEquals(
        "p.csv:2:4: a character here is not in UTF-8. save the file in UTF-8 (in a spreadsheet:"
            + " CSV UTF-8).",
        refused.getMessage());
  }

  @Test
  void aControlCharacterIsPlaced() {
    Refused refused =
        assertThrows(
            Refused.class, () -> TextFile.of("p", "a\r\nb\u0007".getBytes(StandardCharsets.UTF_8)));
    assertEquals("p:2:2", refused.problems().get(0).where().toString());
  }

  @Test
  void aFolderAndAMissingFileAreNoPlans() {
    assertTrue(
        assertThrows(IOException.class, () -> TextFile.read(folder))
            .getMessage()
            .endsWith("is a folder, not a file"));
    assertThrows(IOException.class, () -> TextFile.read(folder.resolve("none.yaml")));
  }

  @ParameterizedTest
  @CsvSource({"a\\nbc\\nd", "a\\r\\nbc\\r\\nd", "a\\rbc\\rd"})
  void everyLineEndIsOne(String written) throws Exception {
    String text = written.replace("\\r", "\r").replace("\\n", "\n");
    TextFile file = TextFile.of("p", text.getBytes(StandardCharsets.UTF_8));
    assertEquals(java.util.List.of("a", "bc", "d"), file.lines());
    assertEquals("p:2:2", file.atIndex(text.indexOf('c')).toString());
    assertEquals("p:3:1", file.atIndex(text.indexOf('d')).toString());
  }

  @Test
  void theMarkAtTheBeginningIsNoPartOfTheText() throws Exception {
    Path file = Files.writeString(folder.resolve("p"), "\uFEFFa");
    assertEquals("a", TextFile.read(file).text());
  }

  private static String what(byte[] bytes) {
    return assertThrows(Refused.class, () -> TextFile.of("p", bytes)).problems().get(0).what();
  }
}
