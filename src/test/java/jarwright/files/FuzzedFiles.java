package jarwright.files;

import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.TOMATOES;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.numbered;
import static jarwright.pantry.InventedKitchen.planned;

import jarwright.pantry.LoadReport;
import jarwright.pantry.Pantry;
import jarwright.problem.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The readers of files, given whatever the fuzzer makes up. */
public final class FuzzedFiles {
  private static final ZoneId ZONE = ZoneId.of("America/Chicago");
  private static final String MARK = "3f9c21";
  private static final int MOST = 1_000_000;
  private static final Pantry PANTRY =
      Pantry.of(
          numbered(
              List.of(
                  entry(PLUMS, "", planned("plums-halved-or-whole", 7, 6)),
                  entry(TOMATOES, "", planned("tomatoes-crushed", 7)))),
          FoodTables::own);
  private static final Path FOLDER = folder();
  private static final List<String> TABLES =
      List.of(
          ProcessTables.TIMES, ProcessTables.PRODUCTS, ProcessTables.RECIPES, ProcessTables.SYRUPS);
  private static final Map<String, String> SOUND = sound();

  private FuzzedFiles() {}

  /** The first byte says which of the program's own tables the rest is put in place of. */
  public static void tables(byte[] input) throws IOException {
    if (input.length == 0) {
      return;
    }
    String text = new String(input, 1, input.length - 1, StandardCharsets.UTF_8);
    try {
      switch (input[0]) {
        case 'v' -> VerdictTable.read(text);
        case 'u' -> UntestedRows.read(text, Map.of("es", text));
        case 's' -> StepTables.readAll(StepTables.file(2, "en"), text);
        case 'l' -> LabelStocks.builtIn(text);
        default -> {
          Map<String, String> tables = new HashMap<>(SOUND);
          tables.put(TABLES.get(Math.floorMod(input[0], TABLES.size())), text);
          ProcessTables.of(tables).book();
        }
      }
    } catch (Refused e) {
      worded(e);
    }
  }

  /** The household's own label stocks. */
  public static void labelStocks(byte[] input) throws IOException {
    Path file = FOLDER.resolve(LabelStocks.FILE);
    Files.write(file, input);
    try {
      LabelStocks.read(FOLDER).all();
    } catch (Refused e) {
      worded(e);
    } finally {
      Files.delete(file);
    }
  }

  /** A ledger as it may be found on the disk; one that can be mended is sound afterwards. */
  public static void ledger(byte[] input) throws IOException {
    try {
      Files.write(FOLDER.resolve(LedgerFile.NAME), input);
      LedgerFile ledger = LedgerFile.in(FOLDER);
      Pantry pantry = ledger.read().pantry();
      Ledger again = ledger.read();
      if (!again.remarks().isEmpty()
          || !List.copyOf(again.pantry().lots()).equals(List.copyOf(pantry.lots()))) {
        throw new AssertionError("read differently a second time: " + again.remarks());
      }
    } catch (Refused e) {
      worded(e);
    } finally {
      empty();
    }
  }

  /** Lines with the right checks, so that what is looked at is what they say. */
  public static void ledgerLines(byte[] input) throws IOException {
    LedgerChain chain = new LedgerChain();
    StringBuilder ledger = new StringBuilder(LedgerText.HEADER + "\n");
    String before = LedgerText.HEADER;
    int number = 0;
    for (String said : new String(input, StandardCharsets.UTF_8).split("\n")) {
      number++;
      String line = number + "," + said + ",";
      byte[] text = line.getBytes(StandardCharsets.UTF_8);
      before = chain.check(MARK, before, text, text.length);
      ledger.append(line).append(before).append('\n');
      if (ledger.length() > MOST) {
        break; // with its numbers and checks it is far larger than the input by now
      }
    }
    ledger(ledger.toString().getBytes(StandardCharsets.UTF_8));
  }

  public static void batchRecord(byte[] input) {
    try {
      RecordReader.read(TextFile.of("record.yaml", input), PLUMS);
    } catch (Refused e) {
      worded(e);
    }
  }

  /** What a household keys in after a canning day. */
  public static void outcome(byte[] input) throws IOException {
    Path file = FOLDER.resolve("day.csv");
    Files.write(file, input);
    try {
      for (LoadReport report : OutcomeReader.read(file, PANTRY, ZONE)) {
        if (report.load() < 1) {
          throw new AssertionError(report.toString());
        }
      }
    } catch (Refused e) {
      worded(e);
    } finally {
      Files.delete(file);
    }
  }

  /** Each problem has a place and words. */
  private static void worded(Refused refused) {
    if (refused.problems().isEmpty()
        || refused.problems().stream()
            .anyMatch(p -> p.what().isBlank() || p.where().file().isEmpty())) {
      throw new AssertionError("refused without a word: " + refused.getMessage());
    }
  }

  private static Map<String, String> sound() {
    Map<String, String> sound = new HashMap<>();
    try {
      for (String file : TABLES) {
        sound.put(file, ProcessTables.resource(file));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return sound;
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

  private static void empty() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
  }
}
