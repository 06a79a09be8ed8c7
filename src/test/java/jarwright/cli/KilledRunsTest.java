package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whole commands, killed at any moment: what is there is whole, and the command runs again. */
class KilledRunsTest {
  /** {@code mvn test -Dcommand.kills=100} for a long run. */
  private static final int KILLS = Integer.getInteger("command.kills", 1);

  /** Milliseconds; some runs are done by then. */
  private static final int LATEST = 2_000;

  private static final String EVENING = "2026-08-24T18:00:00-05:00";

  /** How what the program writes ends, so that half a file is told. */
  private static final Map<String, String> ENDS =
      Map.of(".pdf", "%%EOF\n", ".html", "</html>\n", ".json", "}\n", ".yaml", "\n", ".csv", "\n");

  private enum Run {
    KIT("kit plan.yaml -o out", false),
    SEAL(sealing(2), true),
    TAKE("take plums", true),
    LABELS("labels 260824A-T -o out/labels.pdf", true),
    PAGES("pages -o out", true);

    private final String[] words;
    private final boolean isAfterKit;

    Run(String words, boolean isAfterKit) {
      this.words = words.split(" ");
      this.isAfterKit = isAfterKit;
    }
  }

  private static String sealing(int load) {
    return "seal 260824A-T --load "
        + load
        + " --start 04:42 --end 05:27 --kept yes --cloudy no --sealed all";
  }

  @TempDir private Path temp;

  @ParameterizedTest
  @EnumSource(Run.class)
  void leaveNothingHalf(Run run) throws Exception {
    long seed = System.nanoTime();
    Random random = new Random(seed);
    Household undisturbed = house("undisturbed", run);
    assertEquals(0, undisturbed.run(run.words), undisturbed::told);
    for (int kill = 1; kill <= KILLS; kill++) {
      String name = run + ", seed " + seed + ", kill " + kill;
      Household house = house("kill" + kill, run);
      kill(house, run, random.nextInt(LATEST));
      check(house, name);
      assertEquals(0, house.run(run.words), () -> name + ": " + house.told());
      check(house, name);
      assertEquals(names(undisturbed.file("")), names(house.file("")), name);
    }
  }

  private Household house(String name, Run run) throws IOException {
    Path folder = Files.createDirectory(temp.resolve(name));
    Household house = run.isAfterKit ? Household.withKit(folder) : new Household(folder);
    house.at(EVENING);
    if (run.isAfterKit) {
      assertEquals(0, house.run(sealing(1).split(" ")), house::told);
    }
    return house;
  }

  private static void kill(Household house, Run run, int millis) throws Exception {
    Process program = ProgramApart.start(house.file(""), EVENING, run.words);
    boolean ended = program.waitFor(millis, TimeUnit.MILLISECONDS);
    program.destroyForcibly();
    int status = program.waitFor();
    assertTrue(!ended || status == 0, "ended by itself with " + status);
  }

  /** The ledger reads, and what stands under its own name is whole. */
  private static void check(Household house, String name) throws IOException {
    if (Files.exists(house.file("pantry/ledger.csv"))) {
      assertEquals(0, house.run("shelf"), () -> name + ": " + house.told());
      assertFalse(house.told().contains("was left out"), house::told);
    }
    for (String file : names(house.file(""))) {
      String ending = file.substring(Math.max(0, file.lastIndexOf('.')));
      String text = Files.readString(house.file(file), StandardCharsets.ISO_8859_1);
      // A ledger may be made and still be empty; other files are made with what is in them.
      boolean isBegun = file.endsWith("ledger.csv") && text.isEmpty();
      assertTrue(
          isBegun || text.endsWith(ENDS.getOrDefault(ending, "")),
          () -> name + ": " + file + " ends in " + text.substring(Math.max(0, text.length() - 20)));
    }
  }

  private static Set<String> names(Path folder) throws IOException {
    Set<String> names = new TreeSet<>();
    try (Stream<Path> all = Files.walk(folder)) {
      all.filter(Files::isRegularFile).forEach(f -> names.add(folder.relativize(f).toString()));
    }
    return names;
  }
}
