package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.batch.BatchReckoner;
import jarwright.lot.LotCode;
import jarwright.plan.BatchPlan;
import jarwright.plan.Plan;
import jarwright.problem.Problems;
import jarwright.process.ProcessBook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SamplesTest {
  private static final Path SAMPLES = Path.of("samples");
  private static final Optional<Path> KITCHEN = Optional.of(SAMPLES.resolve("kitchen.yaml"));

  @Test
  void thePlumDayNeedsNoKitchenFile() throws Exception {
    assertEquals(
        List.of("plums-halved-or-whole 30", "tomatoes-whole-in-water 45"),
        reckoned("plum-day.yaml", Optional.empty()));
  }

  @Test
  void theBeanDayRunsUnderPressure() throws Exception {
    assertEquals(
        List.of("beans-snap-italian 25 at 13 psi"), reckoned("bean-day.yaml", Optional.empty()));
  }

  @Test
  void theMarketWeekIsReadAsASpreadsheetSavesIt() throws Exception {
    assertEquals(
        List.of(
            "peaches-halved-or-sliced 30",
            "apricots-halved-or-sliced 25",
            "plums-halved-or-whole 25",
            "figs 50",
            "pears-halved 30",
            "berries-whole 20"),
        reckoned("market-week.csv", KITCHEN));
  }

  @Test
  void theSampleKitchenNamesEveryKey() throws Exception {
    String kitchen = Files.readString(SAMPLES.resolve("kitchen.yaml"));
    for (String key : KitchenReader.KEYS) {
      assertTrue(kitchen.matches("(?s).*\n(# )?" + key + ":.*"), key);
    }
    for (String key : CannerReader.KEYS) {
      assertTrue(kitchen.matches("(?s).*\n +(- )?" + key + ":.*"), key);
    }
    assertEquals("Lindqvist-Amari kitchen", PlanReader.readKitchen(KITCHEN.get()).household());
  }

  /** Each batch with its minutes, once the rest of the core has accepted the plan too. */
  private static List<String> reckoned(String file, Optional<Path> kitchen) throws Exception {
    ProcessTables tables = ProcessTables.ofProgram();
    Plan plan = new PlanReader(tables).read(SAMPLES.resolve(file), kitchen);
    ProcessBook book = tables.bookFor(plan);
    Problems problems = new Problems();
    BatchReckoner reckoner = new BatchReckoner(book, plan.kitchen());
    List<String> found =
        plan.batches().stream()
            .flatMap(b -> reckoner.reckon(b, lot(b), problems).stream())
            .map(
                b ->
                    b.product().id()
                        + " "
                        + b.process().minutes()
                        + b.process().pressure().map(p -> " at " + p).orElse(""))
            .toList();
    assertTrue(problems.isEmpty(), () -> problems.list().toString());
    return found;
  }

  private static LotCode lot(BatchPlan batch) {
    return new LotCode(batch.date(), (char) ('A' + batch.position() - 1));
  }
}
