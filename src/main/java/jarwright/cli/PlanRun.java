package jarwright.cli;

import jarwright.batch.Batch;
import jarwright.batch.BatchReckoner;
import jarwright.batch.BatchRecord;
import jarwright.day.CannerLoad;
import jarwright.day.DayBook;
import jarwright.day.DayPlan;
import jarwright.day.DayPlanner;
import jarwright.day.Task;
import jarwright.day.TaskKind;
import jarwright.files.HouseholdFolder;
import jarwright.files.PlanReader;
import jarwright.files.ProcessTables;
import jarwright.files.StepTables;
import jarwright.lot.LotCode;
import jarwright.page.Language;
import jarwright.plan.BatchPlan;
import jarwright.plan.Plan;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.PreparationStep;
import jarwright.process.Product;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan read and worked out; nothing of it is written yet.
 *
 * @param lots the names that its batches carry
 * @param loads the canner loads of each batch, in the plan's order
 * @param days the plan's days by the clock, earliest first
 * @param steps of its products, in the language of the terminal
 */
record PlanRun(
    Plan plan,
    Map<BatchPlan, LotCode> lots,
    Map<Batch, List<CannerLoad>> loads,
    List<DayPlan> days,
    Map<Product, List<PreparationStep>> steps) {
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
    Optional<Plan> read =
        new PlanReader(tables)
            .read(file, kitchenFile(call), problems)
            .map(
                p -> call.value(SheetOptions.LANGUAGE).map(l -> p.in(p.kitchen().in(l))).orElse(p));
    Map<BatchPlan, LotCode> lots = Map.of();
    List<Batch> batches = new ArrayList<>();
    if (read.isPresent() && !read.get().batches().isEmpty()) {
      lots = names.of(read.get().batches());
      BatchReckoner reckoner = new BatchReckoner(tables.bookFor(read.get()), read.get().kitchen());
      for (BatchPlan batch : read.get().batches()) {
        reckoner.reckon(batch, lots.get(batch), problems).ifPresent(batches::add);
      }
    }
    Map<Product, List<PreparationStep>> steps = new LinkedHashMap<>();
    for (Batch batch : batches) {
      if (!steps.containsKey(batch.product())) {
        steps.put(batch.product(), StepTables.read(batch.product(), Language.ENGLISH.tag()));
      }
    }
    DayPlanner planner =
        new DayPlanner(book.with(read.map(p -> p.kitchen().times()).orElse(List.of())), steps::get);
    List<DayPlan> days = planner.plan(batches, call.surroundings().clock().getZone(), problems);
    problems.refuse();
    return new PlanRun(read.orElseThrow(), lots, loads(batches, days), days, steps);
  }

  private static Map<Batch, List<CannerLoad>> loads(List<Batch> batches, List<DayPlan> days) {
    Map<Batch, List<CannerLoad>> loads = new LinkedHashMap<>();
    batches.forEach(b -> loads.put(b, new ArrayList<>()));
    for (DayPlan day : days) {
      day.loads().forEach(l -> loads.get(l.load().batch()).add(l.load()));
    }
    return loads;
  }

  /** What is frozen of a batch: the plan with its loads and the planned starts of their clocks. */
  BatchRecord record(Batch batch) {
    List<LocalTime> starts = new ArrayList<>();
    for (DayPlan day : days) {
      for (Task task : day.tasks()) {
        boolean own = day.loads().get(task.load()).load().batch().lot().equals(batch.lot());
        if (own && task.kind() == TaskKind.PROCESS) {
          starts.add(day.at(task.start()).toLocalTime());
        }
      }
    }
    return BatchRecord.of(batch, sizes(batch), starts);
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
