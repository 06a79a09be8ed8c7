package jarwright.cli;

import jarwright.batch.Batch;
import jarwright.day.DayBook;
import jarwright.files.DayTables;
import jarwright.files.ProcessTables;
import jarwright.problem.Refused;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.cli.DefaultParser;

/** Commands given whatever the fuzzer makes up, in a folder that is emptied each time. */
public final class FuzzedCommands {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-08-24T12:00:00Z"), ZoneOffset.UTC);
  private static final Path FOLDER = folder();
  private static final byte[] KITCHEN = sample("kitchen.yaml");
  private static final byte[] WEEK = sample("market-week.csv");
  private static final ProcessTables TABLES = load(ProcessTables::ofProgram);
  private static final DayBook BOOK = load(DayTables::read);
  private static final int LONGEST_MESSAGE = 4_000_000;

  private FuzzedCommands() {}

  public static void yamlPlan(byte[] input) throws Exception {
    Files.write(FOLDER.resolve("plan.yaml"), input);
    workOut("plan.yaml");
  }

  public static void csvPlan(byte[] input) throws Exception {
    Files.write(FOLDER.resolve("plan.csv"), input);
    Files.write(FOLDER.resolve("k.yaml"), KITCHEN);
    workOut("plan.csv", "--kitchen", "k.yaml");
  }

  public static void kitchen(byte[] input) throws Exception {
    Files.write(FOLDER.resolve("plan.csv"), WEEK);
    Files.write(FOLDER.resolve("k.yaml"), input);
    workOut("plan.csv", "--kitchen", "k.yaml");
  }

  /** As {@code check} does, with tables that have been read before. */
  private static void workOut(String... args) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Surroundings here = here(out, out);
    Call call =
        new Call(
            here,
            new DefaultParser().parse(CommonOptions.with(new CheckCommand().options()), args));
    try {
      PlanRun run =
          PlanRun.of(here.resolve(args[0]), call, TABLES, BOOK, new Register(call)::lotsOf);
      for (Batch batch : run.batches()) {
        run.record(batch);
        new CheckText(batch).text(run.sizes(batch));
      }
    } catch (Refused e) {
      check(
          Exit.REFUSED.status(),
          e.problems().stream()
              .map(p -> Program.plain(p.text()))
              .collect(Collectors.joining("\n")));
    }
  }

  /** The input as a household's own words, each line in the next place, through the whole kit. */
  public static void words(byte[] input) throws IOException {
    String[] said = new String(input, StandardCharsets.UTF_8).split("\n", -1);
    StringBuilder plan = new StringBuilder();
    plan.append("kitchen:\n  altitude: 420 m\n  household: ").append(quoted(said, 0));
    plan.append("\n  canners:\n    - name: ").append(quoted(said, 1));
    plan.append("\n      method: boiling-water\nbatches:\n  - product: plums-halved-or-whole\n");
    plan.append("    pack: raw\n    jar: quart\n    jars: 7\n    date: 2026-08-24\n    shelf: ");
    plan.append(quoted(said, 2)).append("\n    from: ").append(quoted(said, 3));
    plan.append("\n    lids: ").append(quoted(said, 4));
    plan.append("\n    note: ").append(quoted(said, 5)).append('\n');
    Files.writeString(FOLDER.resolve("plan.yaml"), plan);
    refusedOrDone("kit", "plan.yaml");
  }

  /** The input's lines as the words of a command line. */
  public static void commandLine(byte[] input) throws IOException {
    String[] said = new String(input, StandardCharsets.UTF_8).split("\n", -1);
    boolean leaves = Stream.of(said).anyMatch(s -> s.contains("/") || s.contains(".."));
    if (!said[0].equals("serve") && !leaves) {
      run(said);
    }
  }

  private static String quoted(String[] said, int i) {
    StringBuilder quoted = new StringBuilder("\"");
    String text = i < said.length ? said[i] : "";
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      boolean plain = c >= ' ' && c != '"' && c != '\\';
      quoted.append(plain ? String.valueOf(c) : String.format(Locale.ROOT, "\\x%02x", (int) c));
    }
    return quoted.append('"').toString();
  }

  private static void refusedOrDone(String... args) throws IOException {
    int status = run(args);
    if (status != Exit.DONE.status() && status != Exit.REFUSED.status()) {
      throw new AssertionError("exit " + status);
    }
  }

  private static int run(String... args) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    try {
      int status = new Program(here(out, err)).run(args);
      check(status, err.toString(StandardCharsets.UTF_8));
      return status;
    } finally {
      empty(FOLDER);
    }
  }

  private static Surroundings here(ByteArrayOutputStream out, ByteArrayOutputStream err) {
    return new Surroundings(
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8),
        NOON,
        FOLDER,
        Map.of(),
        Optional.empty());
  }

  private static void check(int status, String told) {
    if (told.startsWith("jarwright: this is a fault of the program")
        || told.startsWith("jarwright: this takes more memory")) {
      throw new AssertionError(told);
    }
    if (status != 0 && told.isBlank()) {
      throw new AssertionError("exit " + status + " without a word");
    }
    if (told.length() > LONGEST_MESSAGE) {
      throw new AssertionError("a message of " + told.length() + " characters");
    }
    if (told.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n')) {
      throw new AssertionError("a control character in a message: " + told);
    }
  }

  private static byte[] sample(String name) {
    return load(() -> Files.readAllBytes(Path.of("samples", name)));
  }

  private static <T> T load(Callable<T> reading) {
    try {
      return reading.call();
    } catch (Exception e) {
      throw new IllegalStateException(e);
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

  private static void empty(Path folder) throws IOException {
    List<Path> all;
    try (Stream<Path> walk = Files.walk(folder)) {
      all = walk.sorted(Comparator.reverseOrder()).filter(p -> !p.equals(folder)).toList();
    }
    for (Path path : all) {
      Files.delete(path);
    }
  }
}
