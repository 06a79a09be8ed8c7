package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.plan.BatchPlan;
import jarwright.plan.Plan;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** Whatever a file holds, it is read or refused; and a plan is the same plan in every form. */
class PlanReaderProperties {
  private static final List<String> SEEDS = new ArrayList<>();
  private static Path folder;
  private static ProcessTables tables;

  @BeforeContainer
  static void begin() throws IOException {
    folder = Files.createTempDirectory("plans");
    tables = ProcessTables.ofProgram();
    for (String sample : List.of("plum-day.yaml", "bean-day.yaml", "market-week.csv")) {
      SEEDS.add(Files.readString(Path.of("samples", sample)));
    }
  }

  @AfterContainer
  static void end() throws IOException {
    try (var files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }

  @Property(tries = 400)
  void aDamagedPlanIsReadOrRefused(@ForAll("damaged") byte[] bytes, @ForAll boolean table)
      throws IOException {
    readOrRefuse(bytes, table ? "plan.csv" : "plan.yaml");
  }

  @Property(tries = 200)
  void anyTextIsReadOrRefused(@ForAll String text, @ForAll boolean table) throws IOException {
    readOrRefuse(text.getBytes(StandardCharsets.UTF_8), table ? "plan.csv" : "plan.yaml");
  }

  @Property(tries = 300)
  void anyWordForAnyKeyIsReadOrRefused(@ForAll("keys") String key, @ForAll("words") String word)
      throws IOException {
    String quoted = word.replace("\\", "\\\\").replace("\"", "\\\"");
    readOrRefuse(
        ("kitchen: {altitude: 420 m, canners: [{name: pot, method: boiling-water}]}\n"
                + "batches: [{"
                + (key.equals("product") ? "" : "product: figs, ")
                + (key.equals("jar") ? "" : "jar: pint, ")
                + (key.equals("date") ? "" : "date: 2026-08-24, ")
                + (key.equals("jars") || key.equals("produce") ? "" : "jars: 9, ")
                + key
                + ": \""
                + quoted
                + "\"}]")
            .getBytes(StandardCharsets.UTF_8),
        "plan.yaml");
  }

  private static void readOrRefuse(byte[] bytes, String name) throws IOException {
    Path file = Files.write(folder.resolve(name), bytes);
    try {
      new PlanReader(tables).read(file, Optional.empty());
    } catch (Refused e) {
      e.problems().forEach(p -> assertEquals(p.text().strip(), p.text()));
    }
  }

  @Property(tries = 200)
  void yamlAndCsvOfTheSamePlanReadTheSame(
      @ForAll("rows") List<Map<String, String>> rows, @ForAll("dialects") Dialect dialect)
      throws Exception {
    Path kitchen =
        Files.writeString(
            folder.resolve("kitchen"),
            "altitude: 420 m\ncanners: [{name: big pot, method: boiling-water}]\n");
    Path yaml = Files.writeString(folder.resolve("same.yaml"), yaml(rows));
    Path csv = Files.writeString(folder.resolve("same.csv"), dialect.write(rows));
    assertEquals(batches(yaml, kitchen), batches(csv, kitchen));
  }

  private static List<BatchPlan> batches(Path file, Path kitchen) throws Exception {
    Plan plan = new PlanReader(tables).read(file, Optional.of(kitchen));
    return plan.batches().stream().map(PlanReaderProperties::withoutPlaces).toList();
  }

  private static BatchPlan withoutPlaces(BatchPlan b) {
    return new BatchPlan(
        "same",
        b.position(),
        Map.of(),
        b.product(),
        b.pack(),
        b.jar(),
        b.amount(),
        b.method(),
        b.pressure(),
        b.acid(),
        b.salt(),
        b.cover(),
        b.date(),
        b.start(),
        b.finish(),
        b.hands(),
        b.canner(),
        b.notes());
  }

  /**
   * How a spreadsheet saves: separator, quotes, line ends, byte order mark, blank lines, header.
   */
  record Dialect(
      char separator, boolean quotes, String end, boolean mark, boolean blank, int head) {
    String write(List<Map<String, String>> rows) {
      List<String> keys =
          rows.stream().flatMap(r -> r.keySet().stream()).distinct().sorted().toList();
      StringBuilder out = new StringBuilder(mark ? "\uFEFF" : "");
      out.append(line(keys.stream().map(this::header).toList()));
      for (Map<String, String> row : rows) {
        out.append(blank ? end : "");
        out.append(line(keys.stream().map(k -> cell(k, row.getOrDefault(k, ""))).toList()));
      }
      return out.toString();
    }

    private String header(String key) {
      return switch (head) {
        case 0 -> key;
        case 1 -> key.toUpperCase(Locale.ROOT);
        default -> " " + key.replace('-', ' ') + " ";
      };
    }

    private String cell(String key, String text) {
      return separator == ';' && key.equals("produce") ? text.replace('.', ',') : text;
    }

    private String line(List<String> cells) {
      return cells.stream().map(this::quoted).collect(Collectors.joining("" + separator)) + end;
    }

    private String quoted(String cell) {
      boolean needed = cell.indexOf(separator) >= 0 || cell.indexOf('"') >= 0;
      return quotes || needed ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }
  }

  private static String yaml(List<Map<String, String>> rows) {
    StringBuilder out = new StringBuilder("batches:\n");
    for (Map<String, String> row : rows) {
      String start = "  - ";
      for (Map.Entry<String, String> cell : row.entrySet()) {
        out.append(start).append(cell.getKey()).append(": '");
        out.append(cell.getValue().replace("'", "''")).append("'\n");
        start = "    ";
      }
    }
    return out.toString();
  }

  @Provide
  Arbitrary<Dialect> dialects() {
    return Combinators.combine(
            Arbitraries.of(',', ';', '\t'),
            Arbitraries.of(true, false),
            Arbitraries.of("\n", "\r\n"),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false),
            Arbitraries.integers().between(0, 2))
        .as(Dialect::new);
  }

  @Provide
  Arbitrary<List<Map<String, String>>> rows() {
    Arbitrary<String> free =
        Arbitraries.of("cellar B3", "a, b; c", "\"quoted\" text", "it's", "# no remark", "ñandú");
    Arbitrary<Map<String, String>> row =
        Combinators.combine(
                Arbitraries.of("figs", "plums-halved-or-whole", "Tomatoes whole in water"),
                Arbitraries.of("raw", "hot", "HOT"),
                Arbitraries.of("pint", "quart", "half pint"),
                Arbitraries.of("jars:9", "produce:18.5 kg", "produce:12-1/2 lb"),
                Arbitraries.of("yes", "no", "TRUE"),
                Arbitraries.of("2026-08-24", "2028-02-29"),
                free,
                Arbitraries.of("", "start:8:30", "acid:citric acid", "syrup:very light"))
            .as(
                (product, pack, jar, amount, salt, date, note, more) -> {
                  Map<String, String> cells = new LinkedHashMap<>();
                  cells.put("product", product);
                  cells.put("pack", pack);
                  cells.put("jar", jar);
                  cells.put(amount.split(":")[0], amount.split(":")[1]);
                  cells.put("salt", salt);
                  cells.put("date", date);
                  cells.put("note", note);
                  cells.put("shelf", note);
                  if (!more.isEmpty()) {
                    cells.put(more.split(":", 2)[0], more.split(":", 2)[1]);
                  }
                  return cells;
                });
    return row.list().ofMinSize(1).ofMaxSize(5);
  }

  @Provide
  Arbitrary<String> keys() {
    return Arbitraries.of(BatchReader.KEYS);
  }

  @Provide
  Arbitrary<String> words() {
    return Arbitraries.oneOf(
        Arbitraries.strings().ofMaxLength(30),
        Arbitraries.strings().withChars("0123456789.,/-: %kgmlbpsi").ofMaxLength(30));
  }

  /** A sample with some bytes changed, left out, doubled or put in. */
  @Provide
  Arbitrary<byte[]> damaged() {
    Arbitrary<Integer> place = Arbitraries.integers().between(0, 2_000);
    Arbitrary<Byte> put =
        Arbitraries.oneOf(
            Arbitraries.bytes(),
            Arbitraries.of(":-,;\"'[]{}&*!|>%@`#\n\t 0".chars().mapToObj(c -> (byte) c).toList()));
    return Combinators.combine(
            Arbitraries.integers().between(0, 2),
            place.list().ofMinSize(1).ofMaxSize(6),
            put.list().ofSize(6))
        .as(
            (seed, places, bytes) -> {
              StringBuilder text =
                  new StringBuilder(
                      new String(
                          SEEDS.get(seed).getBytes(StandardCharsets.UTF_8),
                          StandardCharsets.ISO_8859_1));
              for (int i = 0; i < places.size(); i++) {
                int at = places.get(i) % text.length();
                char now = (char) (bytes.get(i) & 0xFF);
                switch (places.get(i) % 3) {
                  case 0 -> text.setCharAt(at, now);
                  case 1 -> text.insert(at, now);
                  default -> text.deleteCharAt(at);
                }
              }
              return text.toString().getBytes(StandardCharsets.ISO_8859_1);
            });
  }
}
