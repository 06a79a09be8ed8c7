package jarwright.cli;

import jarwright.batch.Batch;
import jarwright.batch.BatchReckoner;
import jarwright.files.PlanReader;
import jarwright.files.ProcessTables;
import jarwright.lot.LotCode;
import jarwright.plan.BatchPlan;
import jarwright.plan.Plan;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan read and worked out; nothing of it is written yet.
 *
 * @param batches in the plan's order
 */
record PlanRun(Plan plan, List<Batch> batches) {
  static final String KITCHEN = "kitchen";
  private static final String KITCHEN_FILE = "kitchen.yaml";

  PlanRun {
    batches = List.copyOf(batches);
  }

  /** The names that a plan's batches are to carry. */
  interface LotNames {
    Map<BatchPlan, LotCode> of(List<BatchPlan> batches) throws IOException, Refused;
  }

  /**
   * Reads a plan and works its batches out.
   *
   * @throws Refused with all that is wrong in the plan, what has no tested process included
   */
  static PlanRun of(Path file, Call call, ProcessTables tables, LotNames lots)
      throws IOException, Refused {
    Problems problems = new Problems();
    Optional<Plan> read = new PlanReader(tables).read(file, kitchenFile(call), problems);
    List<Batch> batches = new ArrayList<>();
    if (read.isPresent()) {
      Map<BatchPlan, LotCode> names = lots.of(read.get().batches());
      BatchReckoner reckoner = new BatchReckoner(tables.bookFor(read.get()), read.get().kitchen());
      for (BatchPlan batch : read.get().batches()) {
        reckoner.reckon(batch, names.get(batch), problems).ifPresent(batches::add);
      }
    }
    problems.refuse();
    return new PlanRun(read.orElseThrow(), batches);
  }

  /** The option's file, else the household's where it has one. */
  static Optional<Path> kitchenFile(Call call) {
    Optional<Path> named = call.path(KITCHEN);
    return named.isPresent()
        ? named
        : Optional.of(call.pantry().resolve(KITCHEN_FILE)).filter(Files::exists);
  }
}
