package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.page.PaperSize;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Large print-outs. */
class MuchTest {
  @TempDir Path folder;

  /** Prints many rows into the file named; run in a Java of its own with little memory. */
  static final class Rows {
    private Rows() {}

    public static void main(String[] arguments) throws IOException {
      Map<String, Object> view = Map.of("n", Integer.valueOf(arguments[1]));
      try (OutputStream out = Files.newOutputStream(Path.of(arguments[0]))) {
        new Printer(Optional.of(Prints.TEMPLATES))
            .pdf(Prints.sheet("rows.ftl", view, PaperSize.LETTER), out);
      }
    }
  }

  @Test
  void fiveThousandRowsPrintInALittleMemory() throws Exception {
    Path pdf = folder.resolve("rows.pdf");
    Process java =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx64m",
                "-cp",
                System.getProperty("java.class.path"),
                Rows.class.getName(),
                pdf.toString(),
                "5000")
            .redirectErrorStream(true)
            .start();
    String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, java.waitFor(), said);
    try (PDDocument document = Prints.read(Files.readAllBytes(pdf))) {
      assertTrue(document.getNumberOfPages() > 100, "pages " + document.getNumberOfPages());
    }
  }

  @Test
  void aThousandLabelsPrint() throws IOException {
    byte[] pdf =
        Prints.pdf(Prints.TEMPLATES, "many-labels.ftl", Map.of("labels", 1000), PaperSize.LETTER);
    try (PDDocument document = Prints.read(pdf)) {
      assertEquals(34, document.getNumberOfPages());
    }
    assertEquals(30, Rectangles.of(pdf, 32).pictures().size());
    assertEquals(10, Rectangles.of(pdf, 33).pictures().size());
  }
}
