package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Jars, labels, lids and the formula are the same number on every sheet, and check says why. */
class JarsAgreeTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-08-24T12:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private String run(String command, String batch) throws IOException {
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(
        plan,
        "kitchen: {altitude: 100 m, canners: [{name: pot, method: boiling-water}]}\n"
            + "batches: [{"
            + batch
            + ", date: 2026-08-24}]\n");
    out.reset();
    PrintStream told = new PrintStream(out, true, StandardCharsets.UTF_8);
    int status =
        new Program(new Surroundings(told, told, NOON, folder, Map.of()))
            .run(command, plan.toString());
    assertEquals(0, status, out.toString(StandardCharsets.UTF_8));
    return out.toString(StandardCharsets.UTF_8).replaceAll(" +", " ");
  }

  /** Yields: AIB 539 (2015) Guide 3 (chile salsa II, 7 to 9 pints), Guides 6 and 7. */
  @ParameterizedTest(name = "{0} × {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          product: chile-salsa-ii, jar: pint            | 9  | 1 × about 7 to 9 pints   | 9, as many new lids; expect 7 to 9
          product: chile-salsa-ii, jar: pint            | 8  | 1 × about 7 to 9 pints   | 9, as many new lids; expect 7 to 9; the plan asks for 8
          product: chile-salsa-ii, jar: pint            | 3  | 1/2 × about 7 to 9 pints | 4, as many new lids; expect 3 to 4; the plan asks for 3
          product: bread-and-butter-pickles, jar: pint  | 8  | 1 × about 8 pints        | 8, as many new lids
          product: bread-and-butter-pickles, jar: pint  | 9  | 1-1/2 × about 8 pints    | 12, as many new lids; expect 12; the plan asks for 9
          product: berry-jam-no-added-pectin, jar: half-pint | 20 | 5 × 3 to 4 half-pints | 20, as many new lids; expect 15 to 20
          """)
  void checkSaysWhatTheFormulaFills(String food, int jars, String formula, String ready)
      throws IOException {
    String told = run("check", food + ", jars: " + jars);
    assertTrue(told.contains(" formula " + formula + "\n"), told);
    assertTrue(told.contains(" jars " + ready + "\n"), told);
  }

  @Test
  void checkOffersTheNextSmallerBatchWhereFewerJarsAreAskedFor() throws IOException {
    String pickles = "product: bread-and-butter-pickles, jar: pint, jars: ";
    assertTrue(
        run("check", pickles + 9).contains("or less jars: 8 takes 1 × about 8 pints, fills 8\n"));
    assertFalse(run("check", pickles + 12).contains("or less"), "what is asked for is filled");
    assertFalse(run("check", pickles + 2).contains("or less"), "there is no less than half");
  }

  @Test
  void checkSaysWhatAFormulaLeavesOfTheProduce() throws IOException {
    String ketchup = "product: tomato-ketchup, jar: pint, produce: ";
    assertTrue(
        run("check", ketchup + "35 lb")
            .contains("produce 35 lb (15.9 kg), as planned; the formula takes 24 lb (10.9 kg)\n"));
    assertTrue(run("check", ketchup + "24 lb").contains("produce 24 lb (10.9 kg), as planned\n"));
  }

  @Test
  void labelsChecklistListAndDataHaveTheSameJars() throws IOException {
    run("kit", "product: chile-salsa-ii, jar: pint, jars: 8");
    Path kit = folder.resolve("print/plan");
    assertEquals(9, count("260824A-T/", text(kit.resolve("labels.pdf"))), "a label for each");
    String checklist = text(kit.resolve("checklist.pdf"));
    assertTrue(checklist.contains("9 pints"), checklist);
    assertTrue(checklist.contains("In all it fills about 7 to 9 pints. The plan asks for 8."));
    assertTrue(checklist.contains("Count new lids and bands 9"), checklist);
    assertTrue(text(kit.resolve("day.pdf")).contains("New lids 9 for pints"));
    String json = Files.readString(kit.resolve("kit.json")).replaceAll("\\s+", "");
    assertTrue(json.contains("\"times\":1.000"), "the formula once");
    assertTrue(json.contains("\"ready\":9,\"fewest\":7,\"likely\":8,\"most\":9,\"lids\":9"), json);
    assertTrue(json.contains("\"jars_and_lids\":[{\"jar\":\"pint\",\"number\":9}]"), json);
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  private static long count(String part, String text) {
    return Pattern.compile(Pattern.quote(part)).matcher(text).results().count();
  }
}
