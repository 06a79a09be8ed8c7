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
 */
public record SectionTimes(Map<String, List<ZonedDateTime>> due, List<ZonedDateTime> ends) {
  /** What a section begins with; whichever of these a load has first. */
  private static final Map<String, Set<TaskKind>> BEGINS = new LinkedHashMap<>();

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
    return new SectionTimes(due, ends);
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
