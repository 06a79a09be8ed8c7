package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.LabelStocks;
import jarwright.label.AlignmentSheet;
import jarwright.page.LabelStock;
import jarwright.page.Language;
import jarwright.page.Registration;
import jarwright.page.Sheet;
import jarwright.render.Conformance;
import jarwright.render.Printer;
import jarwright.render.WordBundle;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/**
 * Every kind of print-out, in every language, is PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2)
 * to veraPDF.
 */
class EveryPrintOutTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-08-24T12:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  static Stream<String> languages() {
    return Language.tags().stream();
  }

  private Path kit(String... args) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream told = new PrintStream(err, true, StandardCharsets.UTF_8);
    Surroundings here = new Surroundings(told, told, NOON, folder, Map.of());
    assertEquals(0, new Program(here).run(args), () -> err.toString(StandardCharsets.UTF_8));
    return folder.resolve("kit");
  }

  private static String sample(String name) {
    return Path.of("samples", name).toAbsolutePath().toString();
  }

  private static void assertConforms(String what, byte[] pdf) throws Exception {
    assertEquals(List.of(), Conformance.faults(pdf, PDFAFlavour.PDFUA_1), what);
    assertEquals(List.of(), Conformance.faults(pdf, PDFAFlavour.PDFA_2_A), what);
  }

  @ParameterizedTest
  @MethodSource("languages")
  void aKitCanBeReadAloudAndKept(String language) throws Exception {
    for (String plan : List.of("plum-day.yaml", "bean-day.yaml")) {
      String pantry = folder.resolve("pantry-" + plan).toString();
      Path kit =
          kit(
              "kit",
              sample(plan),
              "-o",
              "kit",
              "--pantry",
              pantry,
              "--language",
              language,
              "--dated");
      for (String file : List.of("checklist.pdf", "day.pdf", "labels.pdf", "shelf.pdf")) {
        assertConforms(plan + " " + file, Files.readAllBytes(kit.resolve(file)));
      }
    }
    Path large =
        kit("kit", sample("plum-day.yaml"), "-o", "kit", "--language", language, "--large");
    assertConforms("large", Files.readAllBytes(large.resolve("checklist.pdf")));
  }

  @ParameterizedTest
  @MethodSource("languages")
  void theBooksCanBeReadAloudAndKept(String language) throws Exception {
    kit("kit", sample("plum-day.yaml"), "-o", "kit");
    kit("shelf", "--year", "-o", "year.pdf", "--language", language);
    kit("shelf", "-o", "inventory.pdf", "--language", language);
    for (String file : List.of("year.pdf", "inventory.pdf")) {
      assertConforms(file, Files.readAllBytes(folder.resolve(file)));
    }
  }

  /** Of jars that did not seal or are half empty: they are eaten cold. */
  @ParameterizedTest
  @MethodSource("languages")
  void refrigeratorLabelsCanBeReadAloudAndKept(String language) throws Exception {
    Household house = Household.withKit(folder);
    String seal = "seal " + Household.TOMATOES + " --start 00:30 --end 01:15 --kept yes --acid yes";
    String found = " --cloudy no --sealed all --half-lost 8 --unsealed 9";
    assertEquals(0, house.run((seal + found).split(" ")), house.told());
    for (LabelStock stock : LabelStocks.builtIn().all()) {
      String file = "cold-" + stock.id() + ".pdf";
      String labels =
          "labels " + Household.TOMATOES + "/08..09 -o " + file + " --stock " + stock.id();
      assertEquals(0, house.run((labels + " --language " + language).split(" ")), house.told());
      assertTrue(house.told().contains("2 for the refrigerator"), house.told());
      assertConforms(file, Files.readAllBytes(house.file(file)));
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void alignmentPagesCanBeReadAloudAndKept(String language) throws Exception {
    for (String stock : List.of("a4-21up", "letter-30up")) {
      Sheet sheet =
          AlignmentSheet.of(
              LabelStocks.builtIn().named(stock),
              Registration.TRUE,
              WordBundle.load(language),
              LocalDate.of(2026, 8, 24));
      ByteArrayOutputStream pdf = new ByteArrayOutputStream();
      new Printer(Optional.empty()).pdf(sheet, pdf);
      assertConforms(stock, pdf.toByteArray());
    }
  }
}
