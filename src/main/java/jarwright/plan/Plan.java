package jarwright.plan;

import java.util.List;

/** A plan read whole: its kitchen and its batches, in the order written. */
public record Plan(String name, Kitchen kitchen, List<BatchPlan> batches) {
  public Plan {
    batches = List.copyOf(batches);
  }

  /** The same plan for another kitchen. */
  public Plan in(Kitchen other) {
    return new Plan(name, other, batches);
  }
}
