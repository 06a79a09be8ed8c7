package jarwright.cli;

import jarwright.files.OutputFolder;
import jarwright.page.Sheet;
import jarwright.render.Printer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** One print-out in a file of its own. */
final class PdfFile {
  private static final int TYPICAL = 1 << 16;

  private PdfFile() {}

  /**
   * Prints a sheet; the file is replaced whole or not at all.
   *
   * @param templates a folder of the household's own, looked into first
   */
  static void write(Path file, Sheet sheet, Optional<Path> templates) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream(TYPICAL);
    new Printer(templates).pdf(sheet, out);
    Path whole = file.toAbsolutePath().normalize();
    Path folder = whole.getParent();
    Path name = whole.getFileName();
    if (folder == null || name == null) {
      throw new IOException(file + " is no file that can be written");
    }
    new OutputFolder(folder).write(Map.of(name.toString(), out.toByteArray()));
  }
}
