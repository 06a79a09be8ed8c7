package jarwright.day;

import jarwright.lot.LotCode;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * When each section of a batch's checklist is due, load by load; all are estimates.
 *
 * @param due by the id of the section, in order; a section that is done once for all loads has one
 *     moment, and one that the day does not know has no entry
 * @param ends when the clock of each load is over
 * @param ready when each wait that the batch has once is over, by the place of its step
 * @param inTheMorning whether seals are looked at in the morning after the night in which they may
 *     first be
 */
public record SectionTimes(
    Map<String, List<ZonedDateTime>> due,
    List<ZonedDateTime> ends,
    Map<Integer, ZonedDateTime> ready,
    boolean inTheMorning) {
  /** What a section begins with; whichever of these a load has first. */
  private static final Map<String, Set<TaskKind>> BEGINS = new LinkedHashMap<>();

  private static final String AHEAD = "ahead";
  private static final String BEFORE = "before";
  private static final String CLOCK = "clock";
  private static final String NEXT_DAY = "next-day";

  static {
    BEGINS.put("jars", EnumSet.of(TaskKind.HEAT_JARS));
    BEGINS.put("produce", EnumSet.of(TaskKind.WASH, TaskKind.PREPARE));
    BEGINS.put("fill", EnumSet.of(TaskKind.FILL));
    BEGINS.put("canner", EnumSet.of(TaskKind.LOAD));
    BEGINS.put(CLOCK, EnumSet.of(TaskKind.PROCESS));
    BEGINS.put("out", EnumSet.of(TaskKind.REST, TaskKind.COOL_DOWN));
  }

  public SectionTimes {
    due = Map.copyOf(due);
    ends = List.copyOf(ends);
    ready = Map.copyOf(ready);
  }

  /** The times of a lot in its day; none where the lot is not in it. */
  public static SectionTimes of(DayPlan day, LotCode lot) {
    List<Integer> loads = new ArrayList<>();
    for (int i = 0; i < day.loads().size(); i++) {
      if (day.loads().get(i).load().batch().lot().equals(lot)) {
        loads.add(i);
      }
    }
    Map<String, List<ZonedDateTime>> due = new LinkedHashMap<>();
    List<Ahead> ahead = day.ahead().stream().filter(a -> a.lot().equals(lot)).toList();
    if (!ahead.isEmpty()) {
      due.put(AHEAD, ahead.stream().map(Ahead::start).toList());
    }
    day.tasks().stream()
        .filter(t -> loads.contains(t.load()))
        .min(Comparator.comparingInt(Task::start))
        .ifPresent(first -> due.put(BEFORE, List.of(day.at(first.start()))));
    BEGINS.forEach((section, kinds) -> due.put(section, starts(day, loads, kinds)));
    due.put(NEXT_DAY, loads.stream().map(l -> day.loads().get(l).testFrom()).toList());
    List<ZonedDateTime> ends =
        day.tasks().stream()
            .filter(t -> loads.contains(t.load()) && t.kind() == TaskKind.PROCESS)
            .sorted(Comparator.comparingInt(Task::load))
            .map(t -> day.at(t.end()))
            .toList();
    boolean morning =
        !loads.isEmpty() && day.loads().get(loads.get(loads.size() - 1)).isTestedInTheMorning();
    return new SectionTimes(due, ends, ready(day, loads, ahead), morning);
  }

  private static Map<Integer, ZonedDateTime> ready(
      DayPlan day, List<Integer> loads, List<Ahead> ahead) {
    Map<Integer, ZonedDateTime> ready = new LinkedHashMap<>();
    ahead.forEach(a -> ready.put(a.step(), a.until()));
    List<Task> waits =
        day.tasks().stream().filter(t -> loads.contains(t.load()) && t.step().isPresent()).toList();
    for (Task task : waits) {
      int step = task.step().getAsInt();
      if (waits.stream().filter(t -> t.step().getAsInt() == step).count() == 1) {
        ready.put(step, day.at(task.end()));
      }
    }
    return ready;
  }

  private static List<ZonedDateTime> starts(DayPlan day, List<Integer> loads, Set<TaskKind> kinds) {
    List<ZonedDateTime> starts = new ArrayList<>();
    for (int load : loads) {
      day.tasks().stream()
          .filter(t -> t.load() == load && kinds.contains(t.kind()))
          .mapToInt(Task::start)
          .min()
          .ifPresent(at -> starts.add(day.at(at)));
    }
    return starts;
  }

  /** When the clock of each load starts. */
  public List<ZonedDateTime> starts() {
    return due.getOrDefault(CLOCK, List.of());
  }
}
