package jarwright.files;

import jarwright.batch.BatchRecord;
import jarwright.lot.LotCode;
import jarwright.plan.BatchPlan;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Gives batches their lots: a plan that is read again keeps the ones it has. */
final class LotNaming {
  private final List<BatchRecord> records;
  private final Predicate<LotCode> taken;
  private final Set<LotCode> given = new HashSet<>();

  /**
   * @param records of the days in question
   * @param taken lots known elsewhere
   */
  LotNaming(List<BatchRecord> records, Predicate<LotCode> taken) {
    this.records = records;
    this.taken = taken;
    records.forEach(r -> given.add(r.lot()));
  }

  Map<BatchPlan, LotCode> name(List<BatchPlan> plans) throws Refused {
    Problems problems = new Problems();
    Map<BatchPlan, LotCode> lots = new LinkedHashMap<>();
    for (BatchPlan plan : plans) {
      Optional<LotCode> lot = registered(plan).or(() -> next(plan));
      lot.ifPresent(given::add);
      lot.ifPresent(l -> lots.put(plan, l));
      if (lot.isEmpty()) {
        problems.add(
            plan.placeOf("date"),
            "the batches A to Z of " + plan.date() + " are all taken",
            "pack this one on another day");
      }
    }
    problems.refuse();
    return lots;
  }

  /** By the plan's file name, the place in it, the day and the product. */
  private Optional<LotCode> registered(BatchPlan plan) {
    return records.stream()
        .filter(
            r ->
                r.origin().plan().equals(plan.plan())
                    && r.origin().position() == plan.position()
                    && r.days().packed().equals(plan.date())
                    && r.food().product().equals(plan.product().id()))
        .map(BatchRecord::lot)
        .findFirst();
  }

  private Optional<LotCode> next(BatchPlan plan) {
    Optional<LotCode> lot = Optional.of(new LotCode(plan.date(), 'A'));
    while (lot.isPresent() && (given.contains(lot.get()) || taken.test(lot.get()))) {
      lot = lot.get().next();
    }
    return lot;
  }
}
