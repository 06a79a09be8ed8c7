package jarwright.cli;

import jarwright.batch.Batch;
import jarwright.batch.BatchReckoner;
import jarwright.day.CannerLoad;
import jarwright.day.DayBook;
import jarwright.day.LoadPlanner;
import jarwright.files.HouseholdFolder;
import jarwright.files.PlanReader;
import jarwright.files.ProcessTables;
import jarwright.lot.LotCode;
import jarwright.plan.BatchPlan;
import jarwright.plan.Plan;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.water.Rack;
import jarwright.water.WaterLevel;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan read and worked out; nothing of it is written yet.
 *
 * @param lots the names that its batches carry
 * @param loads the canner loads of each batch, in the plan's order
 */
record PlanRun(Plan plan, Map<BatchPlan, LotCode> lots, Map<Batch, List<CannerLoad>> loads) {
  static final String KITCHEN = "kitchen";

  /** The names that a plan's batches are to carry. */
  interface LotNames {
    Map<BatchPlan, LotCode> of(List<BatchPlan> batches) throws IOException, Refused;
  }

  /**
   * Reads a plan and works its batches out.
   *
   * @throws Refused with all that is wrong in the plan, what has no tested process included
   */
  static PlanRun of(Path file, Call call, ProcessTables tables, DayBook book, LotNames names)
      throws IOException, Refused {
    Problems problems = new Problems();
    Optional<Plan> read = new PlanReader(tables).read(file, kitchenFile(call), problems);
    Map<BatchPlan, LotCode> lots = Map.of();
    Map<Batch, List<CannerLoad>> loads = new LinkedHashMap<>();
    if (read.isPresent() && !read.get().batches().isEmpty()) {
      lots = names.of(read.get().batches());
      BatchReckoner reckoner =
          new BatchReckoner(tables.bookFor(read.get()), read.get().kitchen());
      LoadPlanner planner =
          new LoadPlanner(
              new Rack(book.jars(), book.packing(), book.loads()), new WaterLevel(book.jars()));
      for (BatchPlan batch : read.get().batches()) {
        Optional<Batch> reckoned = reckoner.reckon(batch, lots.get(batch), problems);
        reckoned.ifPresent(b -> loads.put(b, planner.loads(b, problems)));
      }
    }
    problems.refuse();
    return new PlanRun(read.orElseThrow(), lots, loads);
  }

  /** In the plan's order. */
  List<Batch> batches() {
    return List.copyOf(loads.keySet());
  }

  /** Jars with food in each canner load of a batch. */
  List<Integer> sizes(Batch batch) {
    return loads.get(batch).stream().map(CannerLoad::jars).toList();
  }

  /** The option's file, else the household's where it has one. */
  static Optional<Path> kitchenFile(Call call) {
    return call.path(KITCHEN).or(() -> new HouseholdFolder(call.pantry()).kitchenFile());
  }
}
