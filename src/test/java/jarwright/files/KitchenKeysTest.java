package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.plan.Canner;
import jarwright.plan.ClockHours;
import jarwright.plan.Kitchen;
import jarwright.problem.Problems;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a kitchen says, and what counts where it says nothing. */
class KitchenKeysTest {
  private static Kitchen read(String keys) throws Exception {
    TextFile file = TextFile.of("kitchen.yaml", keys.getBytes(StandardCharsets.UTF_8));
    Problems problems = new Problems();
    Written.Keys written = (Written.Keys) YamlTree.read(file, problems);
    Optional<Kitchen> kitchen =
        new KitchenReader(written, new PlanWords(ProcessTables.ofProgram()), problems).read();
    problems.refuse();
    return kitchen.orElseThrow();
  }

  @Test
  void theClockIsThatOfThePaperUnlessSaid() throws Exception {
    assertEquals(ClockHours.TWELVE, read("altitude: 420 m").clock());
    assertEquals(ClockHours.TWENTY_FOUR, read("altitude: 420 m\npaper: a4").clock());
    assertEquals(
        ClockHours.TWENTY_FOUR, read("altitude: 420 m\npaper: letter\nclock: 24h").clock());
    assertEquals(ClockHours.TWELVE, read("altitude: 420 m\npaper: a4\nclock: 12h").clock());
    assertEquals(
        ClockHours.TWELVE, read("altitude: 420 m\npaper: a4\nclock: 12h").in("es").clock());
  }

  @Test
  void theDayOfTheGaugesTestIsKept() throws Exception {
    Canner tested =
        read("""
        altitude: 420 m
        canners: [{name: old, method: dial-gauge, gauge-tested: 2026-04-12}]
        """)
            .canners()
            .get(0);
    assertEquals(Optional.of(LocalDate.of(2026, 4, 12)), tested.gaugeTested());
    Canner untested =
        read("altitude: 420 m\ncanners: [{name: old, method: dial-gauge}]").canners().get(0);
    assertEquals(Optional.empty(), untested.gaugeTested());
  }
}
