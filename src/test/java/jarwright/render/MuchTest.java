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
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Large print-outs. */
class MuchTest {
  @TempDir Path folder;

  /** Fills a template with a number; run in a Java of its own with little memory. */
  static final class Much {
    private Much() {}

    public static void main(String[] arguments) throws IOException {
      Map<String, Object> view = Map.of(arguments[2], Integer.valueOf(arguments[3]));
      try (OutputStream out = Files.newOutputStream(Path.of(arguments[0]))) {
        new Printer(Optional.of(Prints.TEMPLATES))
            .pdf(Prints.sheet(arguments[1], view, PaperSize.LETTER), out);
      }
    }
  }

  private byte[] printed(int megabytes, String template, String value, int number)
      throws IOException, InterruptedException {
    Path pdf = folder.resolve("much.pdf");
    Process java =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + megabytes + "m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Much.class.getName(),
                pdf.toString(),
                template,
                value,
                String.valueOf(number))
            .redirectErrorStream(true)
            .start();
    String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, java.waitFor(), said);
    return Files.readAllBytes(pdf);
  }

  @Test
  void fiveThousandRowsPrintInALittleMemory() throws Exception {
    try (PDDocument document = Prints.read(printed(16, "rows.ftl", "n", 5_000))) {
      assertTrue(document.getNumberOfPages() > 100, "pages " + document.getNumberOfPages());
    }
  }

  @Test
  void tenThousandLabelsPrintInALittleMemory() throws Exception {
    byte[] pdf = printed(16, "many-labels.ftl", "labels", 10_000);
    try (PDDocument document = Prints.read(pdf)) {
      assertEquals(334, document.getNumberOfPages());
      assertEquals(
          10_000,
          document.getDocumentCatalog().getStructureTreeRoot().getKids().stream()
              .map(PDStructureElement.class::cast)
              .mapToInt(all -> all.getKids().size())
              .sum());
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
