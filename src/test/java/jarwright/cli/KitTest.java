package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main job, run as a user runs it, but in this JVM and with a clock of its own. */
class KitTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-08-24T12:00:00Z"), ZoneOffset.UTC);
  private static final List<String> FILES =
      List.of(
          "checklist.pdf",
          "day.pdf",
          "kit.json",
          "labels.pdf",
          "records/260824A-T.html",
          "records/260824B-R.html",
          "records/index.html",
          "shelf.pdf");

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    out.reset();
    err.reset();
    Surroundings here =
        new Surroundings(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            NOON,
            folder,
            Map.of());
    return new Program(here).run(args);
  }

  private String told() {
    return err.toString(StandardCharsets.UTF_8);
  }

  private static String sample(String name) {
    return Path.of("samples", name).toAbsolutePath().toString();
  }

  private static Map<String, byte[]> read(Path kit) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(kit)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(kit.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
      }
    }
    return files;
  }

  private Path plan(String text) throws IOException {
    return Files.writeString(folder.resolve("plan.yaml"), text);
  }

  private long filesIn(String name) throws IOException {
    Path there = folder.resolve(name);
    if (!Files.exists(there)) {
      return 0;
    }
    try (Stream<Path> all = Files.walk(there)) {
      return all.filter(Files::isRegularFile).count();
    }
  }

  @Test
  void writesTheWholeKitBesideThePlansName() throws IOException {
    assertEquals(0, run("kit", sample("plum-day.yaml")), told());
    assertEquals(FILES, List.copyOf(read(folder.resolve("print/plum-day")).keySet()));
    assertTrue(Files.exists(folder.resolve("pantry/batches/260824A-T.yaml")));
  }

  @Test
  void samePlanGivesTheSameBytesAndTheSameLotsTwice() throws IOException {
    assertEquals(0, run("kit", sample("plum-day.yaml"), "-o", "one"), told());
    byte[] ledger = Files.readAllBytes(folder.resolve("pantry/ledger.csv"));
    assertEquals(0, run("kit", sample("plum-day.yaml"), "-o", "two"), told());
    Map<String, byte[]> first = read(folder.resolve("one"));
    Map<String, byte[]> second = read(folder.resolve("two"));
    assertEquals(first.keySet(), second.keySet());
    first.forEach((name, bytes) -> assertArrayEquals(bytes, second.get(name), name));
    assertArrayEquals(ledger, Files.readAllBytes(folder.resolve("pantry/ledger.csv")));
  }

  /** What was picked is gathered, not what the largest number of jars would take. */
  @Test
  void theProduceThatAPlanWeighsIsWhatIsGathered() throws IOException {
    assertEquals(0, run("check", sample("bean-day.yaml")), told());
    String shown = out.toString(StandardCharsets.UTF_8);
    assertTrue(shown.contains("produce     28 lb, as planned"), shown);
    assertEquals(0, run("kit", sample("bean-day.yaml"), "-q"), told());
    try (PDDocument day = Loader.loadPDF(folder.resolve("print/bean-day/day.pdf").toFile())) {
      String text = new PDFTextStripper().getText(day).replaceAll("\\s+", " ");
      String gather = text.substring(text.indexOf("Buy and lay out"));
      assertTrue(gather.contains("28 lb") && !gather.contains("36 lb"), gather);
    }
  }

  @Test
  void checkSaysTheAltitudeInBothUnitsWhateverUnitsAreAskedFor() throws IOException {
    for (String units : List.of("us", "metric", "both")) {
      Path plan =
          plan(
              "kitchen: {altitude: 1500 m, units: "
                  + units
                  + ", canners: [{name: pot, method: boiling-water}]}\n"
                  + "batches: [{product: pickled-beets, jar: pint, jars: 8, date: 2026-08-24}]\n");
      assertEquals(0, run("check", plan.toString()), told());
      String shown = out.toString(StandardCharsets.UTF_8);
      assertTrue(shown.contains("altitude    4,922 ft (1,500 m)"), shown);
    }
  }

  /** AIB 539 (2015) Guide 6, pickled beets: yield about 8 pints. */
  @Test
  void checkCountsTheFormulasOfABatch() throws IOException {
    Path plan =
        plan(
            """
            kitchen:
              altitude: 100 m
              canners: [{name: pot, method: boiling-water}]
            batches:
              - {product: pickled-beets, pack: hot, jar: pint, jars: 14, date: 2026-08-24}
            """);
    assertEquals(0, run("check", plan.toString()), told());
    String shown = out.toString(StandardCharsets.UTF_8);
    assertTrue(shown.contains("formula     2 × about 8 pints"), shown);
  }

  /** AIB 539 (2015) Guide 3: acid for tomatoes, in every jar; plums (Guide 2) take none. */
  @Test
  void theDayNamesAcidForTheTomatoesAlone() throws IOException {
    assertEquals(0, run("kit", sample("plum-day.yaml"), "-q"), told());
    try (PDDocument day = Loader.loadPDF(folder.resolve("print/plum-day/day.pdf").toFile())) {
      String text = new PDFTextStripper().getText(day).replaceAll("\\s+", " ");
      assertEquals(2, text.split("Acid first", -1).length, text);
      assertTrue(text.contains("A1 Fill and close the jars · 2 people"), text);
    }
  }

  @Test
  void givesOtherProgramsTheDayInTheFormThatTheSchemaDescribes() throws IOException {
    assertEquals(0, run("kit", sample("plum-day.yaml"), "-o", "kit"), told());
    assertEquals(0, run("kit", sample("bean-day.yaml"), "-o", "beans"), told());
    String schema;
    try (InputStream in = KitTest.class.getResourceAsStream("/jarwright/kit-schema.json")) {
      schema = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    for (String kit : List.of("kit", "beans")) {
      String json = Files.readString(folder.resolve(kit + "/kit.json"));
      assertEquals(
          List.of(),
          JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
              .getSchema(schema)
              .validate(json, InputFormat.JSON)
              .stream()
              .map(Object::toString)
              .toList());
      assertTrue(json.contains("\"days\""), json);
    }
  }

  /** The example of a changed template shows the same figures as the program's own. */
  @Test
  void printsByTheUsersOwnTemplates() throws IOException {
    String templates = Path.of("samples", "templates").toAbsolutePath().toString();
    assertEquals(0, run("kit", sample("plum-day.yaml"), "-o", "kit", "--templates", templates));
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("kit/checklist.pdf").toFile())) {
      String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      assertTrue(text.contains("1. Start the timer at the full rolling boil 45 min"), text);
      assertTrue(text.contains("Put citric acid into every empty jar first 1\u20444 tsp"), text);
      assertTrue(text.contains("Boil lost? Bring back the full boil"), text);
    }
  }

  @Test
  void tellsWhereAnOwnTemplateIsWrongAndWritesNothing() throws IOException {
    Files.createDirectory(folder.resolve("mine"));
    Files.writeString(
        folder.resolve("mine/checklist.ftl"),
        "<sheet size=\"12\">\n<section><body>\n<parra>x</parra></body></section></sheet>");
    assertEquals(1, run("kit", sample("plum-day.yaml"), "--templates", "mine"));
    assertTrue(told().contains("checklist.ftl:3: <parra> may not stand in <body>"), told());
    assertEquals(0, filesIn("print") + filesIn("pantry"));
    assertEquals(1, run("kit", sample("plum-day.yaml"), "--templates", "nowhere"));
    assertTrue(told().contains("nowhere: there is no such folder of templates"), told());
  }

  /** The first plan's kit is on the disk by then, beside its place. */
  @Test
  void takesTheFirstKitAwayAgainWhereTheSecondCannotBePrinted() throws IOException {
    Files.createDirectory(folder.resolve("mine"));
    Files.writeString(
        folder.resolve("mine/labels.ftl"),
        "<sheet><section><body><#if labels?size != 23><parra/></#if></body></section></sheet>");
    String first = sample("plum-day.yaml");
    assertEquals(0, run("kit", first, "-o", "kit", "--templates", "mine"), told());
    assertEquals(1, run("kit", first, sample("bean-day.yaml"), "--templates", "mine"));
    assertTrue(told().contains("labels.ftl:1: <parra> may not stand in <body>"), told());
    assertFalse(Files.exists(folder.resolve("print")), told());
  }

  @Test
  void printsInTheLanguageAskedFor() throws IOException {
    assertEquals(0, run("kit", sample("plum-day.yaml"), "-o", "kit", "--language", "es"), told());
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("kit/checklist.pdf").toFile())) {
      assertTrue(new PDFTextStripper().getText(pdf).contains("Ciruelas"));
      assertEquals("es", pdf.getDocumentCatalog().getLanguage());
    }
    assertEquals(2, run("kit", sample("plum-day.yaml"), "--language", "ess"));
    assertTrue(told().contains("did you mean es?"), told());
  }

  @Test
  void showsAPictureOfEveryPage() throws IOException {
    assertEquals(0, run("kit", sample("bean-day.yaml"), "-o", "kit", "--preview"), told());
    for (String sheet : List.of("checklist", "day", "labels", "shelf")) {
      int pages;
      try (PDDocument pdf = Loader.loadPDF(folder.resolve("kit/" + sheet + ".pdf").toFile())) {
        pages = pdf.getNumberOfPages();
      }
      for (int page = 1; page <= pages; page++) {
        Path file = folder.resolve("kit/preview/" + sheet + "-" + page + ".png");
        BufferedImage picture = ImageIO.read(file.toFile());
        assertTrue(picture.getWidth() > 800, file.toString());
      }
      assertFalse(
          Files.exists(folder.resolve("kit/preview/" + sheet + "-" + (pages + 1) + ".png")));
    }
  }

  /** AIB 539 (2015) p. 2-22 and p. 3-10, band 1,001 to 3,000 ft. */
  @Test
  void printsTheTestedMinutesOnPaper() throws IOException {
    assertEquals(0, run("kit", sample("plum-day.yaml"), "-o", "kit"), told());
    try (PDDocument pdf = Loader.loadPDF(folder.resolve("kit/checklist.pdf").toFile())) {
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(text.contains("30") && text.contains("45"), text);
      assertTrue(text.contains("AIB 539 (2015) p. 2-22"), text);
      assertTrue(text.contains("AIB 539 (2015) p. 3-10"), text);
    }
  }

  @Test
  void everySampleWorks() {
    assertEquals(0, run("kit", sample("bean-day.yaml")), told());
    assertEquals(
        0, run("kit", sample("market-week.csv"), "--kitchen", sample("kitchen.yaml")), told());
    assertEquals(0, run("check", sample("bean-day.yaml")), told());
    assertEquals(0, run("day", sample("plum-day.yaml"), "--format", "json"), told());
  }

  @Test
  void aCannerWithoutMeasuresStillGetsItsKit() throws IOException {
    Path plan =
        plan(
            """
            kitchen:
              altitude: 420 m
              canners:
                - name: big pot
                  method: boiling-water
            batches:
              - product: plums-halved-or-whole
                pack: raw
                jar: quart
                jars: 7
                date: 2026-08-24
            """);
    assertEquals(0, run("kit", plan.toString()), told());
  }

  @Test
  void tellsThreeMistakesInOnePlanTogetherAndWritesNothing() throws IOException {
    Path plan =
        plan(
            """
            kitchen:
              altitude: 420 m
              canners:
                - name: big pot
                  method: boiling-water
            batches:
              - product: plums-halved-or-whole
                pack: raw
                jar: qvart
                jars: 14
                date: 2026-08-24
              - product: tomatoes-whole-in-water
                pack: raw
                jar: pint
                jars: 9
                date: 2026-08-24
              - product: beans-snap-italian
                pack: hot
                jar: pint
                jars: 9
                date: 2026-08-24
            """);
    assertEquals(1, run("kit", plan.toString()));
    String told = told();
    assertTrue(told.contains("plan.yaml:9:"), told);
    assertTrue(told.contains("did you mean quart?"), told);
    assertTrue(told.contains("needs acid in every jar"), told);
    assertTrue(told.contains("no tested boiling-water process"), told);
    assertEquals(0, filesIn("print") + filesIn("pantry"));
  }

  @Test
  void refusesAnAltitudeWithoutItsUnit() throws IOException {
    Path plan = plan("kitchen:\n  altitude: 420\nbatches:\n  - product: figs\n");
    assertEquals(1, run("kit", plan.toString()));
    assertTrue(told().contains("an altitude needs a number and a unit"), told());
    assertEquals(0, filesIn("print") + filesIn("pantry"));
  }

  @Test
  void namesTheNearestCommandAndTheRightUse() {
    assertEquals(2, run("kitt", "x"));
    assertTrue(told().contains("did you mean kit?"), told());
    assertEquals(2, run("kit"));
    assertEquals(0, run("--help"));
    assertTrue(out.toString(StandardCharsets.UTF_8).contains("jarwright kit"));
  }

  @Test
  void aFileThatIsNotThereOrAFolderThatCannotBeWrittenIsExitThree() throws IOException {
    assertEquals(3, run("kit", "no-such-plan.yaml"));
    assertFalse(told().contains("Exception"), told());
    Files.writeString(folder.resolve("taken"), "a file");
    assertEquals(3, run("kit", sample("plum-day.yaml"), "-o", "taken"));
    assertFalse(told().contains("Exception"), told());
  }
}
