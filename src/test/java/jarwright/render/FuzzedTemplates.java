package jarwright.render;

import jarwright.page.PaperSize;
import jarwright.page.PrintFault;
import jarwright.page.Sheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A household's own templates, as the fuzzer makes them up. */
public final class FuzzedTemplates {
  private static final Map<String, Object> VIEW =
      Map.of("jars", List.of(Map.of("lot", "260824A-T", "n", 3)), "name", "plums", "yes", true);
  private static final Path FOLDER = folder();
  private static final Duration PATIENCE = Duration.ofMillis(100);

  private FuzzedTemplates() {}

  public static void template(byte[] input) throws IOException {
    print(input);
  }

  /** The input inside a sheet, so that more of it is read as blocks and less as a template. */
  public static void markup(byte[] input) throws IOException {
    ByteArrayOutputStream sheet = new ByteArrayOutputStream();
    sheet.writeBytes("<sheet><section><body>".getBytes(java.nio.charset.StandardCharsets.UTF_8));
    sheet.writeBytes(input);
    sheet.writeBytes("</body></section></sheet>".getBytes(java.nio.charset.StandardCharsets.UTF_8));
    print(sheet.toByteArray());
  }

  private static void print(byte[] template) throws IOException {
    Files.write(FOLDER.resolve("t.ftl"), template);
    Sheet sheet = Prints.sheet("t.ftl", VIEW, PaperSize.LETTER);
    try {
      new Printer(Optional.of(FOLDER), PATIENCE).pdf(sheet, new ByteArrayOutputStream());
    } catch (PrintFault e) {
      if (e.getMessage().isBlank() || e.getMessage().contains("\n")) {
        throw new AssertionError("not one line: " + e.getMessage());
      }
    }
  }

  private static Path folder() {
    try {
      Path made = Files.createTempDirectory("jarwright-fuzz");
      made.toFile().deleteOnExit();
      return made;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
