package jarwright.cli;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** An invented household in a scratch folder, whose clock the test sets and whose hands it is. */
final class Household {
  static final String PLUMS = "260824A-T";
  static final String TOMATOES = "260824B-R";
  static final String BEANS = "260824C-P";

  private static final String KITCHEN =
      """
      household: Fernhollow kitchen
      altitude: 420 m
      zone: America/Chicago
      canners:
        - name: big pot
          method: boiling-water
          holds: {quart: 7, pint: 9}
        - name: old faithful
          method: dial-gauge
          holds: {quart: 7, pint: 9}
      """;

  private static final String PLAN =
      """
      batches:
        - product: plums-halved-or-whole
          pack: raw
          jar: quart
          jars: 14
          method: boiling-water
          date: 2026-08-24
          shelf: cellar B3
        - product: tomatoes-whole-in-water
          pack: raw
          jar: pint
          jars: 9
          method: boiling-water
          acid: citric acid
          date: 2026-08-24
        - product: beans-snap-italian
          pack: hot
          jar: pint
          jars: 9
          date: 2026-08-24
      """;

  private static final Map<String, byte[]> KIT = new TreeMap<>();

  private final Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private Instant now = Instant.EPOCH;

  Household(Path folder) throws IOException {
    this.folder = folder;
    Files.createDirectories(folder.resolve("pantry"));
    write("pantry/kitchen.yaml", KITCHEN);
    write("plan.yaml", PLAN);
    at("2026-08-24T07:00:00-05:00");
  }

  /** One with its kit made, at half past one on the day; the kit is made once for all tests. */
  static synchronized Household withKit(Path folder) throws IOException {
    Household house = new Household(folder);
    if (KIT.isEmpty()) {
      if (house.run("kit", "plan.yaml") != 0) {
        throw new AssertionError(house.told());
      }
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          KIT.put(folder.relativize(file).toString(), Files.readAllBytes(file));
        }
      }
    } else {
      for (Map.Entry<String, byte[]> file : KIT.entrySet()) {
        Path to = folder.resolve(file.getKey());
        Files.createDirectories(to.getParent());
        Files.write(to, file.getValue());
      }
    }
    return house.at("2026-08-24T13:30:00-05:00");
  }

  Household at(String time) {
    now = OffsetDateTime.parse(time).toInstant();
    return this;
  }

  Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  Path file(String name) {
    return folder.resolve(name);
  }

  /** The exit status of a run at which nobody can be asked. */
  int run(String... args) {
    return run(Optional.empty(), args);
  }

  /** The same with somebody at the terminal who types these lines. */
  int answering(List<String> lines, String... args) {
    String typed = String.join("\n", lines) + "\n";
    return run(Optional.of(new BufferedReader(new StringReader(typed))), args);
  }

  int run(Optional<BufferedReader> keyboard, String... args) {
    out.reset();
    err.reset();
    return new Program(surroundings(keyboard)).run(args);
  }

  Surroundings surroundings(Optional<BufferedReader> keyboard) {
    return new Surroundings(
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8),
        Clock.fixed(now, ZoneOffset.UTC),
        folder,
        Map.of(),
        keyboard);
  }

  /** What was printed, as it stands. */
  String said() {
    return out.toString(StandardCharsets.UTF_8);
  }

  /** What was printed, its lines joined, so that a line's end hides no words. */
  String shown() {
    return said().replaceAll("\\s+", " ");
  }

  String told() {
    return err.toString(StandardCharsets.UTF_8);
  }

  List<String> ledger() throws IOException {
    return Files.readAllLines(folder.resolve("pantry/ledger.csv"));
  }

  /** The last line of the ledger, without its check. */
  String lastEvent() throws IOException {
    List<String> lines = ledger();
    return lines.get(lines.size() - 1);
  }

  /** The words of a print-out. */
  String pdf(String name) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(folder.resolve(name).toFile())) {
      return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }
  }

  /** The jars of a lot named as a command line takes them. */
  static String jar(String lot, String numbers) {
    return lot + "/" + numbers;
  }
}
