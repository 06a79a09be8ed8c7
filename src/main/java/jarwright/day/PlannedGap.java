package jarwright.day;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * What a day reckons with from the end of one load's clock to the start of the next one's, without
 * waiting for jars.
 *
 * @param pressure whether in a pressure canner
 * @param minutes all of it
 * @param refill the part of it in which water is topped up and heated again
 */
public record PlannedGap(boolean pressure, int minutes, int refill) {
  private static final Set<TaskKind> AFTER =
      EnumSet.of(TaskKind.REST, TaskKind.COOL_DOWN, TaskKind.LID_WAIT, TaskKind.UNLOAD);
  private static final Set<TaskKind> AGAIN =
      EnumSet.of(
          TaskKind.REFILL,
          TaskKind.LOAD,
          TaskKind.COME_TO_BOIL,
          TaskKind.COME_TO_STEAM,
          TaskKind.VENT,
          TaskKind.COME_TO_PRESSURE);

  /** The first gap of that kind in the day; none where no load follows another of its batch. */
  public static Optional<PlannedGap> of(DayPlan day, boolean pressure) {
    for (int i = 0; i + 1 < day.loads().size(); i++) {
      CannerLoad load = day.loads().get(i).load();
      boolean followed = day.loads().get(i + 1).load().batch().equals(load.batch());
      if (followed && load.batch().process().isPressure() == pressure) {
        int refill = minutes(day, i + 1, EnumSet.of(TaskKind.REFILL));
        int all = minutes(day, i, AFTER) + minutes(day, i + 1, AGAIN);
        return Optional.of(new PlannedGap(pressure, all, refill));
      }
    }
    return Optional.empty();
  }

  /**
   * Minutes of the refill that would make the whole as long as it really was; none where even no
   * refill would be too long.
   */
  public Optional<Integer> refillFor(int really) {
    int refill = refill() + really - minutes();
    return refill > 0 ? Optional.of(refill) : Optional.empty();
  }

  private static int minutes(DayPlan day, int load, Set<TaskKind> kinds) {
    return day.tasks().stream()
        .filter(t -> t.load() == load && kinds.contains(t.kind()))
        .mapToInt(t -> t.end() - t.start())
        .sum();
  }
}
