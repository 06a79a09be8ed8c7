package jarwright.cli;

import jarwright.batch.Batch;
import jarwright.batch.BatchRecord;
import jarwright.files.FoodTables;
import jarwright.files.HouseholdFolder;
import jarwright.files.LedgerFile;
import jarwright.lot.LotCode;
import jarwright.pantry.Entry;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.Planned;
import jarwright.plan.BatchPlan;
import jarwright.problem.Refused;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Gives the batches of one call their lots, and registers them with the household. */
final class Register {
  private final HouseholdFolder house;
  private final LedgerFile ledger;
  private final OffsetDateTime now;
  private final List<LedgerEvent> events;
  private final Pantry pantry;
  private final Set<LotCode> given = new HashSet<>();

  Register(Call call) throws IOException, Refused {
    this.house = new HouseholdFolder(call.pantry());
    this.ledger = LedgerFile.in(call.pantry());
    this.now = OffsetDateTime.now(call.surroundings().clock());
    this.events = new ArrayList<>(ledger.read().events());
    this.pantry = Pantry.of(events, FoodTables::own);
  }

  /** The lots that a plan's batches have or will have. */
  Map<BatchPlan, LotCode> lotsOf(List<BatchPlan> batches) throws IOException, Refused {
    Map<BatchPlan, LotCode> lots =
        house.lotsOf(batches, lot -> pantry.lot(lot).isPresent() || given.contains(lot));
    given.addAll(lots.values());
    return lots;
  }

  /** What the household has recorded up to now. */
  Pantry pantry() {
    return pantry;
  }

  /** The household's jars as they will be once the plans are registered. */
  Pantry with(List<PlanRun> runs) {
    List<LedgerEvent> after = new ArrayList<>(events);
    for (Entry entry : entries(runs, pantry)) {
      after.add(new LedgerEvent(after.size() + 1L, entry));
    }
    return Pantry.of(after, FoodTables::own);
  }

  /**
   * Writes the batch records and the ledger's lines.
   *
   * @throws Refused where a lot's outcome is recorded already, so that its plan stays as it is, or
   *     where another run of the program has taken a lot meanwhile
   */
  void write(List<PlanRun> runs) throws IOException, Refused {
    List<BatchRecord> records = new ArrayList<>();
    for (PlanRun run : runs) {
      run.batches().forEach(b -> records.add(run.record(b)));
    }
    try (HouseholdFolder.Registration registration = house.register()) {
      // Jars may have been sealed since this run began.
      Pantry now = ledger.read().pantry();
      registration.write(
          records,
          lot -> now.lot(lot).map(Lot::isFrozen).orElse(false),
          () -> ledger.append(current -> entries(runs, current)));
    }
  }

  /** A line for each lot whose plan is new or has changed. */
  private List<Entry> entries(List<PlanRun> runs, Pantry known) {
    List<Entry> entries = new ArrayList<>();
    for (PlanRun run : runs) {
      for (Batch batch : run.batches()) {
        Planned planned = Planned.of(batch, run.sizes(batch));
        String written = planned.detail().toString();
        Optional<String> there =
            known.lot(batch.lot()).flatMap(Lot::planned).map(p -> p.detail().toString());
        if (!there.equals(Optional.of(written))) {
          entries.add(Entry.of(now, batch.lot(), planned, ""));
        }
      }
    }
    return entries;
  }
}
