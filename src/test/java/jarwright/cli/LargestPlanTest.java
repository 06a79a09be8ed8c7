package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan allows can be printed: one batch of up to 2,000 jars, on every paper. */
class LargestPlanTest {
  /** Lines of words on a side below which it looks like a mistake: common practice, no source. */
  private static final int FEWEST_LINES = 9;

  @TempDir Path folder;

  private static String plan(int jars, String paper, String language) {
    return String.format(
        Locale.ROOT,
        """
        kitchen:
          altitude: 420 m
          paper: %s
          language: %s
          canners: [{name: pot, method: boiling-water, inside-diameter: 33 cm, inside-height: 30 cm}]
        batches:
          - product: tomatoes-whole-in-water
            pack: hot
            jar: pint
            jars: %d
            acid: citric acid
            date: 2026-08-24
        """,
        paper,
        language,
        jars);
  }

  @ParameterizedTest
  @CsvSource({
    "212, letter, en",
    "212, letter, es",
    "212, a4, en",
    "250, a4, es",
    "2000, letter, en",
    "2000, a4, es"
  })
  void aLargeBatchMakesItsKit(int jars, String paper, String language) throws IOException {
    Path plan = folder.resolve("large.yaml");
    Files.writeString(plan, plan(jars, paper, language));
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    PrintStream to = new PrintStream(told, true, StandardCharsets.UTF_8);
    Clock noon = Clock.fixed(Instant.parse("2026-08-24T12:00:00Z"), ZoneOffset.UTC);
    Surroundings here = new Surroundings(to, to, noon, folder, Map.of());
    int status = new Program(here).run(new String[] {"kit", plan.toString(), "-o", "kit"});
    assertEquals(0, status, () -> told.toString(StandardCharsets.UTF_8));
    for (String file : List.of("checklist.pdf", "shelf.pdf")) {
      assertNoSideIsNearlyEmpty(folder.resolve("kit").resolve(file));
    }
    try (PDDocument labels = Loader.loadPDF(folder.resolve("kit/labels.pdf").toFile())) {
      assertTrue(labels.getNumberOfPages() >= jars / 30, "a label for each jar");
    }
  }

  private static void assertNoSideIsNearlyEmpty(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      for (int side = 1; side <= document.getNumberOfPages(); side++) {
        stripper.setStartPage(side);
        stripper.setEndPage(side);
        String text = stripper.getText(document);
        long lines = text.lines().filter(l -> !l.isBlank()).count();
        assertTrue(lines == 0 || lines >= FEWEST_LINES, () -> pdf + ": " + text);
      }
    }
  }
}
