package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import jarwright.batch.Batch;
import jarwright.batch.BatchReckoner;
import jarwright.batch.BatchRecord;
import jarwright.lot.LotCode;
import jarwright.plan.BatchPlan;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.ProcessBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HouseholdFolderTest {
  private static final Predicate<LotCode> NONE = Set.<LotCode>of()::contains;
  private static final Predicate<LotCode> ALL = Predicate.not(NONE);

  @TempDir private Path temp;

  @Test
  void theFirstBatchesOfADayAreAAndB() throws Exception {
    assertEquals(List.of('A', 'B'), letters(register("plums.yaml", List.of("figs", "pineapple"))));
  }

  @Test
  void aPlanThatIsReadAgainKeepsItsLots() throws Exception {
    Map<BatchPlan, LotCode> first = register("plums.yaml", List.of("figs", "pineapple"));
    assertEquals(
        List.copyOf(first.values()),
        List.copyOf(register("plums.yaml", List.of("figs", "pineapple")).values()));
    assertEquals(List.of('A', 'B'), letters(first));
  }

  @Test
  void anotherPlanOfTheDayGetsTheNextLetters() throws Exception {
    register("plums.yaml", List.of("figs", "pineapple"));
    assertEquals(List.of('C'), letters(register("more.yaml", List.of("figs"))));
  }

  @Test
  void anotherProductInTheSamePlaceIsAnotherBatch() throws Exception {
    register("plums.yaml", List.of("figs", "pineapple"));
    assertEquals(
        List.of('C', 'B'), letters(register("plums.yaml", List.of("grapes-whole", "pineapple"))));
  }

  @Test
  void aLotThatTheLedgerKnowsIsNotGivenAgain() throws Exception {
    HouseholdFolder folder = new HouseholdFolder(temp);
    Map<BatchPlan, LotCode> lots =
        folder.lotsOf(plans("plums.yaml", List.of("figs")), lot -> lot.letter() < 'D');
    assertEquals(List.of('D'), letters(lots));
  }

  @Test
  void afterZTheDayIsFull() throws Exception {
    Refused refused =
        assertThrows(
            Refused.class,
            () -> new HouseholdFolder(temp).lotsOf(plans("p.yaml", List.of("figs")), ALL));
    assertEquals(
        "p.yaml: the batches A to Z of 2026-08-24 are all taken. pack this one on another day.",
        refused.getMessage());
  }

  @Test
  void lookingWritesNothing() throws Exception {
    Path none = temp.resolve("none");
    new HouseholdFolder(none).lotsOf(plans("p.yaml", List.of("figs")), NONE);
    assertFalse(Files.exists(none));
    assertTrue(new HouseholdFolder(none).kitchenFile().isEmpty());
  }

  @Test
  void aRecordIsFoundAgain() throws Exception {
    LotCode lot = register("p.yaml", List.of("figs")).values().iterator().next();
    BatchRecord record = new HouseholdFolder(temp).record(lot).orElseThrow();
    assertEquals(List.of("figs", lot), List.of(record.food().product(), record.lot()));
    assertEquals(List.of(lot), List.copyOf(new HouseholdFolder(temp).lots()));
    assertTrue(new HouseholdFolder(temp).record(lot.next().orElseThrow()).isEmpty());
  }

  @Test
  void aRecordChangesOnlyBeforeTheWorkIsDone() throws Exception {
    Batch batch =
        batch(plans("p.yaml", List.of("figs")).get(0), new LotCode(EveryProduct.DAY, 'A'));
    BatchRecord one = BatchRecord.of(batch, List.of(9), List.of());
    BatchRecord other = BatchRecord.of(batch, List.of(5, 4), List.of());
    write(one, ALL);
    write(one, ALL);
    write(other, NONE);
    Refused refused = assertThrows(Refused.class, () -> write(one, ALL));
    String told = refused.getMessage();
    assertTrue(
        told.contains("it has \"loads: [5, 4]\", and the plan now gives \"loads: [9]\""), told);
    assertEquals(other, new HouseholdFolder(temp).record(batch.lot()).orElseThrow());
  }

  /** As where the disk is full once the ledger's turn comes. */
  @Test
  void recordsAreTakenBackWhereTheLedgerCannotBeWritten() throws Exception {
    HouseholdFolder folder = new HouseholdFolder(temp);
    List<BatchPlan> plans = plans("p.yaml", List.of("figs", "pineapple"));
    Batch known = batch(plans.get(0), new LotCode(EveryProduct.DAY, 'A'));
    Batch unknown = batch(plans.get(1), new LotCode(EveryProduct.DAY, 'B'));
    BatchRecord before = BatchRecord.of(known, List.of(9), List.of());
    for (List<BatchRecord> there : List.of(List.<BatchRecord>of(), List.of(before))) {
      for (BatchRecord record : there) {
        write(record, NONE);
      }
      List<BatchRecord> changed =
          List.of(
              BatchRecord.of(known, List.of(5, 4), List.of()),
              BatchRecord.of(unknown, List.of(9), List.of()));
      try (HouseholdFolder.Registration registration = folder.register()) {
        IOException full = new IOException("No space left on device");
        IOException told =
            assertThrows(
                IOException.class,
                () ->
                    registration.write(
                        changed,
                        NONE,
                        () -> {
                          assertEquals(2, folder.lots().size());
                          throw full;
                        }));
        assertSame(full, told);
      }
      assertEquals(there.size(), folder.lots().size());
      assertEquals(there, folder.record(known.lot()).stream().toList());
      assertEquals(there.isEmpty(), !Files.exists(temp.resolve("batches")));
    }
  }

  /** Between the listing of a folder and the reading of a file in it. */
  @Test
  void aRecordThatIsGoneWhenItIsReadIsNone() throws Exception {
    LotCode lot = new LotCode(EveryProduct.DAY, 'A');
    Path gone = Files.createDirectories(temp.resolve("batches")).resolve(lot + ".yaml");
    try {
      Files.createSymbolicLink(gone, temp.resolve("nowhere"));
    } catch (IOException | UnsupportedOperationException e) {
      assumeTrue(false, "links are not to be had here");
    }
    HouseholdFolder folder = new HouseholdFolder(temp);
    assertEquals(List.of(lot), List.copyOf(folder.lots()));
    assertTrue(folder.record(lot).isEmpty());
    assertEquals(List.of('A'), letters(folder.lotsOf(plans("p.yaml", List.of("figs")), NONE)));
  }

  @Test
  void aLotThatAnotherRunHasTakenMeanwhileIsNotOverwritten() throws Exception {
    BatchPlan late = plans("late.yaml", List.of("figs")).get(0);
    LotCode lot = new HouseholdFolder(temp).lotsOf(List.of(late), NONE).get(late);
    register("early.yaml", List.of("figs"));
    BatchRecord record = BatchRecord.of(batch(late, lot), List.of(9), List.of());
    String told = assertThrows(Refused.class, () -> write(record, NONE)).getMessage();
    assertTrue(told.contains("has meanwhile been given to another batch"), told);
    assertEquals("early.yaml", new HouseholdFolder(temp).record(lot).orElseThrow().origin().plan());
  }

  @Test
  void aDamagedRecordOfTheDayStopsTheRegistering() throws Exception {
    LotCode lot = register("p.yaml", List.of("figs")).values().iterator().next();
    Path file = new HouseholdFolder(temp).file(lot);
    Files.writeString(file, Files.readString(file).replace("jars: 9", "jars: many"));
    Refused refused = assertThrows(Refused.class, () -> register("q.yaml", List.of("figs")));
    assertTrue(refused.getMessage().contains("the batch record is damaged"), refused::getMessage);
  }

  @Test
  void otherFilesInTheFolderAreLeftAlone() throws Exception {
    register("p.yaml", List.of("figs"));
    Path batches = temp.resolve("batches");
    Files.writeString(batches.resolve("notes.yaml"), "{");
    Files.writeString(batches.resolve("260824A-X.yaml"), "{");
    Files.writeString(batches.resolve("260824B.yaml~"), "{");
    assertEquals(List.of('B'), letters(register("q.yaml", List.of("figs"))));
  }

  @Test
  void twoRunsAtOnceNeverGetTheSameLot() throws Exception {
    ExecutorService runs = Executors.newFixedThreadPool(4);
    List<Future<Map<BatchPlan, LotCode>>> all = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      String plan = "plan" + i + ".yaml";
      all.add(runs.submit(() -> register(plan, List.of("figs", "pineapple"))));
    }
    List<LotCode> lots = new ArrayList<>();
    for (Future<Map<BatchPlan, LotCode>> one : all) {
      lots.addAll(one.get().values());
    }
    runs.shutdown();
    assertEquals(24, lots.stream().distinct().count());
  }

  @Test
  void aFileInThePlaceOfTheFolderIsTold() throws Exception {
    Path file = Files.writeString(temp.resolve("pantry"), "");
    IOException told =
        assertThrows(IOException.class, () -> new HouseholdFolder(file).register().close());
    assertEquals(file + " cannot be written to: a file is in the way", told.getMessage());
  }

  private void write(BatchRecord record, Predicate<LotCode> frozen) throws Exception {
    try (HouseholdFolder.Registration registration = new HouseholdFolder(temp).register()) {
      registration.write(List.of(record), frozen, () -> {});
    }
  }

  private Map<BatchPlan, LotCode> register(String file, List<String> products) throws Exception {
    List<BatchPlan> plans = plans(file, products);
    try (HouseholdFolder.Registration registration = new HouseholdFolder(temp).register()) {
      Map<BatchPlan, LotCode> lots = registration.lotsOf(plans, NONE);
      List<BatchRecord> records = new ArrayList<>();
      for (BatchPlan plan : plans) {
        records.add(BatchRecord.of(batch(plan, lots.get(plan)), List.of(9), List.of()));
      }
      registration.write(records, NONE, () -> {});
      return lots;
    }
  }

  private static Batch batch(BatchPlan plan, LotCode lot) throws Exception {
    ProcessBook book = ProcessTables.ofProgram().book();
    return new BatchReckoner(book, EveryProduct.KITCHEN)
        .reckon(plan, lot, new Problems())
        .orElseThrow();
  }

  private static List<BatchPlan> plans(String file, List<String> products) throws Exception {
    ProcessBook book = ProcessTables.ofProgram().book();
    List<BatchPlan> plans = new ArrayList<>();
    for (String product : products) {
      plans.add(
          EveryProduct.plan(
              file,
              plans.size() + 1,
              book.product(product).orElseThrow(),
              book.rows(product).get(1)));
    }
    return plans;
  }

  private static List<Character> letters(Map<BatchPlan, LotCode> lots) {
    Collection<LotCode> values = lots.values();
    return values.stream().map(LotCode::letter).toList();
  }
}
