package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.LedgerFile;
import jarwright.pantry.Jar;
import jarwright.pantry.Pantry;
import jarwright.pantry.Standing;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is typed in whatever order: no jar is lost, none is doubled, no event is senseless. */
class AnySequenceTest {
  private static final int COMMANDS = 25;

  @TempDir Path folder;

  private Pantry pantry() throws IOException, Refused {
    return LedgerFile.in(folder.resolve("pantry")).read().pantry();
  }

  private static int packed(Pantry pantry) {
    Map<Standing.Kind, Integer> counts = pantry.counts();
    int all = counts.values().stream().mapToInt(Integer::intValue).sum();
    return all
        - counts.getOrDefault(Standing.Kind.PLANNED, 0)
        - counts.getOrDefault(Standing.Kind.UNFILLED, 0);
  }

  private static String jars(Random random) {
    return "260824A-T/" + (1 + random.nextInt(15)) + "," + (1 + random.nextInt(15));
  }

  private static String[] command(Random random, Household house) throws IOException {
    return switch (random.nextInt(10)) {
      case 0 -> new String[] {"take", "plums"};
      case 1 -> new String[] {"take", jars(random)};
      case 2 -> new String[] {"move", jars(random), "--to", random.nextBoolean() ? "attic" : "x"};
      case 3 -> new String[] {"toss", jars(random), "--why", "=cracked"};
      case 4 ->
          new String[] {"trace", "260824A-T/" + (1 + random.nextInt(14)), "--spoiled", "mould"};
      case 5 ->
          new String[] {
            "trace", "260824A-T/all", "--looked-at", random.nextInt(3) > 0 ? "none" : "leaks"
          };
      case 6 ->
          isAnythingLeftToUndo(house)
              ? new String[] {"undo", "--why", "slip"}
              : new String[] {"take", "plums"};
      case 7 -> new String[] {"move", jars(random), "--to", "freezer"};
      default -> {
        String found = random.nextInt(15) + ".." + (random.nextInt(4) + 12);
        house.write(
            "count.csv",
            "lot,shelf,jars,found\n260824A-T,attic,1..14," + found.replace("0..", "1..") + "\n");
        yield new String[] {"count", "count.csv", "--apply"};
      }
    };
  }

  /** The seal itself stays, or else nothing would be packed. */
  private static boolean isAnythingLeftToUndo(Household house) throws IOException {
    List<String> lines = house.ledger();
    int sealed = 0;
    int since = 0;
    for (String line : lines) {
      if (line.contains(",outcome,")) {
        sealed++;
        since = 0;
      } else {
        since += line.contains(",undone,") ? -1 : 1;
      }
    }
    return sealed > 0 && since > 0;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void allThatWasPackedIsSomewhere(int seed) throws Exception {
    Random random = new Random(seed);
    Household house = Household.withKit(folder);
    String seal =
        "seal 260824A-T --kept yes --cloudy no --sealed all --load 1 --start 00:10 --end 00:41"
            + " --some-lost 2 --load 2 --start 00:50 --end 01:21 --unsealed 8 --half-lost 9";
    assertEquals(0, house.run(seal.split(" ")), house.told());
    int done = 0;
    for (int i = 0; i < COMMANDS; i++) {
      List<String> before = house.ledger();
      house.at("2026-08-24T" + (14 + i / 10) + ":" + (10 + i) + ":00-05:00");
      String[] command = command(random, house);
      int status = house.run(command);
      String told = seed + ": " + String.join(" ", command) + ": " + house.told();
      assertTrue(status == 0 || status == 1, told);
      assertEquals(before, house.ledger().subList(0, before.size()), told);
      if (status == 1) {
        assertEquals(before, house.ledger(), told);
      }
      done += status == 0 ? 1 : 0;
      Pantry pantry = pantry();
      assertEquals(14, packed(pantry), told);
      assertEquals(14, pantry.jars().filter(Jar::wasPacked).map(Jar::id).distinct().count(), told);
      assertEquals(List.of(), pantry.remarks(), told);
      assertTrue(
          pantry
              .jars()
              .filter(j -> j.standing() instanceof Standing.OnShelf)
              .allMatch(Jar::mayStandOnShelf),
          told);
    }
    assertTrue(done > 5, "only " + done + " commands were carried out");
  }
}
