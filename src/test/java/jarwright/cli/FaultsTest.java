package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a disk, a clock, another run or a name can do to a kit. */
class FaultsTest {
  private static final Instant NOON = Instant.parse("2026-08-24T12:00:00Z");
  private static final String PLAN = Path.of("samples/plum-day.yaml").toAbsolutePath().toString();

  @TempDir Path folder;

  /** What a run said, and how it ended. */
  private record Ran(int status, String told) {}

  private Ran run(Clock clock, String... args) {
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(told, true, StandardCharsets.UTF_8);
    Surroundings here =
        new Surroundings(stream, stream, clock, folder, Map.of(), Optional.empty());
    int status = new Program(here).run(args);
    return new Ran(status, told.toString(StandardCharsets.UTF_8));
  }

  private Ran run(String... args) {
    return run(Clock.fixed(NOON, ZoneOffset.UTC), args);
  }

  private void done(String... args) {
    Ran ran = run(args);
    assertEquals(0, ran.status(), ran.told());
  }

  /** One line that says which file and what is wrong with it. */
  private void refusedByTheDisk(Ran ran, String file) {
    assertEquals(3, ran.status(), ran.told());
    assertEquals(1, ran.told().lines().count(), ran.told());
    assertTrue(ran.told().contains(file), ran.told());
  }

  /** Every file below a folder, but for locks, by name. */
  private Map<String, String> files(String name) {
    Map<String, String> files = new TreeMap<>();
    Path root = folder.resolve(name);
    if (!Files.isDirectory(root)) {
      return files;
    }
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        if (!file.toString().endsWith(".lock")) {
          files.put(
              root.relativize(file).toString(),
              new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  @Test
  void theOutputFolderIsAFile() throws IOException {
    Files.writeString(folder.resolve("out"), "mine");
    refusedByTheDisk(run("kit", PLAN, "-o", "out"), "out");
    assertEquals("mine", Files.readString(folder.resolve("out")));
    assertEquals(Map.of(), files("pantry"));
  }

  @Test
  void theHouseholdFolderIsAFile() throws IOException {
    Files.writeString(folder.resolve("house"), "mine");
    refusedByTheDisk(run("kit", PLAN, "-o", "out", "--pantry", "house"), "house");
    assertEquals("mine", Files.readString(folder.resolve("house")));
    assertEquals(Map.of(), files("out"));
  }

  @Test
  void theOutputFolderIsALink() throws IOException {
    Path target = Files.createDirectory(folder.resolve("elsewhere"));
    assumeTrue(linked(folder.resolve("out"), target), "links are not to be had here");
    done("kit", PLAN, "-o", "out");
    assertTrue(Files.exists(target.resolve("labels.pdf")));
    assertTrue(Files.isSymbolicLink(folder.resolve("out")));
  }

  @Test
  void theOutputFolderIsALinkToNowhere() throws IOException {
    assumeTrue(linked(folder.resolve("out"), folder.resolve("gone")), "links are not to be had here");
    refusedByTheDisk(run("kit", PLAN, "-o", "out"), "out");
    assertEquals(Map.of(), files("pantry"));
  }

  private static boolean linked(Path link, Path target) {
    try {
      Files.createSymbolicLink(link, target);
      return true;
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }

  @Test
  void aFolderStandsWhereAPrintOutGoes() throws IOException {
    done("kit", PLAN, "-o", "out");
    Map<String, String> pantry = files("pantry");
    Files.delete(folder.resolve("out/labels.pdf"));
    Files.createDirectory(folder.resolve("out/labels.pdf"));
    Map<String, String> before = files("out");
    refusedByTheDisk(run("kit", PLAN, "-o", "out"), "labels.pdf");
    assertEquals(before, files("out"));
    assertEquals(pantry, files("pantry"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"kit", "check", "day"})
  void thePlanIsGoneOrAFolder(String command) throws IOException {
    refusedByTheDisk(run(command, "gone.yaml"), "gone.yaml");
    Files.createDirectory(folder.resolve("plan.yaml"));
    refusedByTheDisk(run(command, "plan.yaml"), "plan.yaml");
  }

  /** The disk was full when the ledger was to be written: records stand there without an event. */
  @Test
  void recordsWithoutALedgerAreTakenUpByTheNextRun() throws IOException {
    done("kit", PLAN, "-o", "first");
    for (String left : List.of("", "number,when,lot,jar")) {
      Files.writeString(folder.resolve("pantry/ledger.csv"), left);
      done("kit", PLAN, "-o", "second");
      assertEquals(files("first"), files("second"));
      assertEquals(4, Files.readAllLines(folder.resolve("pantry/ledger.csv")).size());
    }
  }

  @Test
  void theClockGoesBackYearsAndToAnotherZone() throws IOException {
    done("kit", PLAN, "-o", "out");
    Clock past = Clock.fixed(Instant.parse("1999-12-31T23:59:59Z"), ZoneId.of("Pacific/Apia"));
    Path other = plan("2026-08-25", "cellar");
    assertEquals(0, run(past, "kit", other.toString(), "-o", "more").status());
    Ran ran = run("shelf", "--format", "csv");
    assertEquals(0, ran.status(), ran.told());
    assertTrue(ran.told().contains("lies before"), ran.told());
    assertEquals(4, Files.readAllLines(folder.resolve("pantry/ledger.csv")).size() - 1);
  }

  @Test
  void twoAtOnceGiveOutEachLotOnce() throws Exception {
    Path one = plan("2026-08-25", "attic");
    Path two = plan("2026-08-25", "cellar");
    ExecutorService both = Executors.newFixedThreadPool(2);
    try {
      List<Callable<Ran>> runs =
          List.of(
              () -> run("kit", one.toString(), "-o", "one"),
              () -> run("kit", two.toString(), "-o", "two"));
      int written = 0;
      for (Future<Ran> run : both.invokeAll(runs)) {
        Ran ran = run.get();
        assertTrue(ran.status() == 0 || ran.status() == 1, ran.told());
        written += ran.status() == 0 ? 1 : 0;
      }
      assertTrue(written > 0);
      long lots = files("pantry").keySet().stream().filter(n -> n.startsWith("batches")).count();
      assertEquals(written, lots);
      assertEquals(2 + written, Files.readAllLines(folder.resolve("pantry/ledger.csv")).size());
      assertEquals(0, run("shelf").status());
    } finally {
      both.shutdownNow();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"a b  c", "\uD83C\uDF53 jam", "\u0631\u0641 \u0661", "\u68DA", "a'b;c&d $HOME %PATH%"})
  void foldersOfAnyName(String name) {
    String plan = folder.resolve(name).resolve("p.yaml").toString();
    assertTrue(copied(plan));
    done("kit", plan, "-o", name + "/out", "--pantry", name + "/pantry");
    assertFalse(files(name + "/out").isEmpty());
    assertTrue(run("kit", name + "/gone.yaml").told().contains(name));
  }

  private static boolean copied(String plan) {
    try {
      Files.createDirectories(Path.of(plan).getParent());
      Files.copy(Path.of(PLAN), Path.of(plan));
      return true;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The digits of some locales are not 0 to 9, and a Turkish capital i has a dot. */
  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "th-TH-u-nu-thai-ca-buddhist", "de-DE", "hi-IN"})
  void theLocaleChangesNothing(String locale) {
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ROOT);
      done("kit", PLAN, "-o", "plain", "--pantry", "p1");
      String plain = run("check", PLAN, "--pantry", "p1").told() + run("day", PLAN).told();
      Locale.setDefault(Locale.forLanguageTag(locale));
      done("kit", PLAN, "-o", "there", "--pantry", "p2");
      assertEquals(plain, run("check", PLAN, "--pantry", "p2").told() + run("day", PLAN).told());
    } finally {
      Locale.setDefault(usual);
    }
    Map<String, String> plain = files("plain");
    Map<String, String> there = files("there");
    assertEquals(plain.keySet(), there.keySet());
    plain.forEach(
        (name, text) -> assertArrayEquals(text.getBytes(StandardCharsets.ISO_8859_1), bytes(there.get(name)), name));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  /** What comes in other letters is refused by its place before anything is written. */
  @ParameterizedTest
  @ValueSource(strings = {"\uD83C\uDF53", "\u0631\u0641", "\u68DA", "\u0E0A\u0E31\u0E49\u0E19"})
  void whatTheTypefaceLacksIsToldAndNothingWritten(String shelf) throws IOException {
    Ran ran = run("kit", plan("2026-08-24", shelf).toString(), "-o", "out");
    assertEquals(1, ran.status(), ran.told());
    assertTrue(ran.told().contains("cannot print"), ran.told());
    assertTrue(ran.told().contains(shelf.substring(0, 1)), ran.told());
    assertEquals(Map.of(), files("out"));
    assertEquals(Map.of(), files("pantry"));
  }

  private Path plan(String date, String shelf) throws IOException {
    Path plan = folder.resolve("plan" + Math.abs(shelf.hashCode()) + ".yaml");
    return Files.writeString(
        plan,
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
            date: %s
            shelf: "%s"
        """
            .formatted(date, shelf));
  }
}
