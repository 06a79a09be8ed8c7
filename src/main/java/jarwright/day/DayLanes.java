package jarwright.day;

import jarwright.batch.Batch;
import jarwright.page.Wording;
import jarwright.process.Product;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The tasks of a day laid out in lanes: one for each canner, burner and pair of hands, and one for
 * what stands by itself.
 */
final class DayLanes {
  private static final int TICK = 30;

  /** From so many on, hours are easier to read; a process stays as its table has it. */
  private static final int MANY_MINUTES = 150;

  private static final int MINUTES_AN_HOUR = 60;

  /** Minutes of a block that holds three lines of words. */
  private static final int ROOM_FOR_WORDS = 20;

  private final DayPlan day;
  private final Wording words;
  private final StepTexts steps;
  private final Function<Product, String> productName;
  private final ClockTime clock;
  private final List<Integer> burners;

  DayLanes(DayPlan day, StepTexts steps, Function<Product, String> productName) {
    this.day = day;
    this.words = steps.words();
    this.steps = steps;
    this.productName = productName;
    this.clock = new ClockTime(batch(0).kitchen().clock(), words);
    TreeSet<Integer> used = new TreeSet<>();
    for (Task task : day.tasks()) {
      if (task.kind().where() != TaskKind.Where.CANNER) {
        used.addAll(task.burners());
      }
    }
    this.burners = List.copyOf(used);
  }

  /** The captions of the lanes, from left to right. */
  List<String> heads() {
    List<String> heads = new ArrayList<>(day.canners());
    burners.forEach(b -> heads.add(words.text("day.lane.burner", Map.of("n", b))));
    for (int hand = 1; hand <= day.hands(); hand++) {
      heads.add(words.text("day.lane.hands", Map.of("n", hand)));
    }
    if (day.tasks().stream().anyMatch(DayLanes::standsAlone)) {
      heads.add(words.text("day.lane.wait"));
    }
    return heads;
  }

  /** Food that waits takes no hands, and no burner where it stands in no pot. */
  private static boolean standsAlone(Task task) {
    return task.kind() == TaskKind.WAIT && task.burners().isEmpty();
  }

  private Batch batch(int load) {
    return day.loads().get(load).load().batch();
  }

  /** The batch's letter and the load's number in it. */
  String name(int load) {
    CannerLoad of = day.loads().get(load).load();
    return of.batch().lot().letter() + (of.of() == 1 ? "" : String.valueOf(of.number()));
  }

  private String clock(int minute) {
    return clock.of(day.at(minute));
  }

  /** The clock, and before it the day where that is not the plan's own. */
  String dated(ZonedDateTime time) {
    return clock.of(time, day.date());
  }

  /** When seals can be tested. */
  String seals(PlannedLoad load) {
    return clock.seals(load, day.date());
  }

  /** When a load's first task of a kind starts; empty where it has none. */
  String start(int load, TaskKind kind) {
    return day.tasks().stream()
        .filter(t -> t.load() == load && t.kind() == kind)
        .findFirst()
        .map(t -> dated(day.at(t.start())))
        .orElse("");
  }

  private String dayAndMonth(LocalDate date) {
    return words.date("day", date);
  }

  /** The day cut into stretches that one side of paper holds, each with its ticks and blocks. */
  List<Map<String, Object>> sides(int longest) {
    int count = Math.max(1, (day.finish() + longest - 1) / longest);
    int each = (day.finish() + count - 1) / count;
    List<Map<String, Object>> sides = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int from = i * each;
      int to = Math.min(day.finish(), from + each);
      Map<String, Object> side = new LinkedHashMap<>();
      side.put("minutes", to - from);
      side.put("ticks", ticks(from, to));
      side.put("blocks", blocks(from, to));
      side.put("rushes", rushes(from, to));
      sides.add(side);
    }
    return sides;
  }

  private List<Map<String, Object>> ticks(int from, int to) {
    List<Map<String, Object>> ticks = new ArrayList<>();
    int past = day.at(from).getMinute() % TICK;
    for (int at = past == 0 ? from : from + TICK - past; at <= to; at += TICK) {
      Map<String, Object> tick = new LinkedHashMap<>();
      tick.put("at", at - from);
      tick.put("clock", clock(at));
      tick.put("hour", day.at(at).getMinute() == 0);
      boolean midnight = day.at(at).toLocalTime().equals(LocalTime.MIDNIGHT);
      tick.put("day", midnight ? dayAndMonth(day.at(at).toLocalDate()) : "");
      ticks.add(tick);
    }
    return ticks;
  }

  private List<Map<String, Object>> rushes(int from, int to) {
    List<Map<String, Object>> rushes = new ArrayList<>();
    for (Rush rush : day.rushes()) {
      if (rush.end() > from && rush.start() < to) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("from", Math.max(0, rush.start() - from));
        one.put("to", Math.min(to, rush.end()) - from);
        rushes.add(one);
      }
    }
    return rushes;
  }

  private List<Map<String, Object>> blocks(int from, int to) {
    List<Map<String, Object>> blocks = new ArrayList<>();
    for (Task task : day.tasks()) {
      if (task.end() <= from || task.start() >= to || task.end() == task.start()) {
        continue;
      }
      for (int lane : lanes(task)) {
        Map<String, Object> block = new LinkedHashMap<>();
        block.put("lane", lane);
        block.put("from", Math.max(0, task.start() - from));
        block.put("to", Math.min(to, task.end()) - from);
        block.put("exact", task.kind() == TaskKind.PROCESS);
        block.put("clock", task.kind().startsClock() && task.start() >= from);
        block.put("text", name(task.load()) + " " + words.text("day.brief." + task.kind().id()));
        block.put("estimate", !task.isExact());
        block.put("length", length(task, "day.length.minutes"));
        block.put("food", isFirst(task) ? productName.apply(batch(task.load()).product()) : "");
        blocks.add(block);
      }
    }
    return blocks;
  }

  /** Whether a batch has no hand work with room for words before it: there its food is named. */
  private boolean isFirst(Task task) {
    return day.tasks().stream()
        .filter(t -> batch(t.load()).equals(batch(task.load())) && !t.hands().isEmpty())
        .filter(t -> t.end() - t.start() >= ROOM_FOR_WORDS)
        .findFirst()
        .filter(task::equals)
        .isPresent();
  }

  private List<Integer> lanes(Task task) {
    List<Integer> lanes = new ArrayList<>();
    if (standsAlone(task)) {
      lanes.add(day.canners().size() + burners.size() + day.hands());
    }
    if (task.kind().where() == TaskKind.Where.CANNER) {
      lanes.add(day.loads().get(task.load()).canner() - 1);
    } else {
      task.burners().forEach(b -> lanes.add(day.canners().size() + burners.indexOf(b)));
    }
    task.hands().forEach(h -> lanes.add(day.canners().size() + burners.size() + h - 1));
    return lanes;
  }

  /** Minutes, or hours and minutes where that is easier to read. */
  private String length(Task task, String minutesKey) {
    int minutes = task.end() - task.start();
    if (minutes < MANY_MINUTES || task.kind() == TaskKind.PROCESS) {
      return words.text(minutesKey, Map.of("n", minutes));
    }
    int hours = minutes / MINUTES_AN_HOUR;
    int rest = minutes % MINUTES_AN_HOUR;
    return rest == 0
        ? words.text("day.length.hours", Map.of("h", hours))
        : words.text("day.length.hours-minutes", Map.of("h", hours, "n", rest));
  }

  /** Acid is named where the batch takes it, and nowhere else. */
  private String what(Task task) {
    if (task.step().isPresent()) {
      return steps.line(batch(task.load()), task.step().getAsInt()).text();
    }
    boolean isSour = task.kind() == TaskKind.FILL && batch(task.load()).acid().isPresent();
    return words.text("day.task." + task.kind().id() + (isSour ? "-acid" : ""));
  }

  /** The same as a table, in the order of the clock. */
  List<Map<String, Object>> table() {
    List<Map<String, Object>> rows = new ArrayList<>();
    LocalDate shown = day.date();
    for (Task task : day.tasks()) {
      Map<String, Object> row = new LinkedHashMap<>();
      LocalDate on = day.at(task.start()).toLocalDate();
      row.put("day", on.equals(shown) ? "" : words.date("long", on));
      shown = on;
      row.put("start", clock(task.start()));
      row.put("end", clock(task.end()));
      row.put("load", name(task.load()));
      row.put("what", what(task));
      row.put("length", length(task, "day.length.bare"));
      row.put("exact", task.isExact());
      row.put("process", task.kind() == TaskKind.PROCESS);
      row.put("hands", task.hands().size());
      rows.add(row);
    }
    return rows;
  }
}
