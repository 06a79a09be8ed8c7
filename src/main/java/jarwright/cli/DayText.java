package jarwright.cli;

import jarwright.day.CannerLoad;
import jarwright.day.ClockTime;
import jarwright.day.DayPlan;
import jarwright.day.NoticeWords;
import jarwright.day.Task;
import jarwright.day.TaskKind;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Locale;

/** A day by the clock, a line a task; the date stands wherever it changes. */
final class DayText {
  private final DayPlan day;
  private final NoticeWords notices;
  private final StringBuilder out = new StringBuilder();
  private LocalDate shown;

  DayText(DayPlan day, NoticeWords notices) {
    this.day = day;
    this.notices = notices;
    this.shown = day.date();
  }

  /** The lines, each ended. */
  String text() {
    ZonedDateTime end = day.at(day.finish());
    out.append(day.date()).append("  ").append(dated(day.start()));
    out.append(" to about ").append(dated(end));
    out.append(
        day.proven()
            ? " (no order of the work is quicker)"
            : " (at most " + day.gap() + " min could be saved)");
    out.append('\n');
    notices.of(day).forEach(n -> out.append("  ! ").append(n).append('\n'));
    day.tasks().forEach(this::line);
    return out.toString();
  }

  private void line(Task task) {
    LocalDate on = day.at(task.start()).toLocalDate();
    if (!on.equals(shown)) {
      shown = on;
      out.append("  ").append(on).append('\n');
    }
    CannerLoad load = day.loads().get(task.load()).load();
    out.append(
        String.format(
            Locale.ROOT,
            "  %s–%s %5s  %-20s %s load %d\n",
            ClockTime.of(day.at(task.start())),
            ClockTime.of(day.at(task.end())),
            (task.isExact() ? "" : "~") + task.minutes().planned(),
            task.kind() == TaskKind.PROCESS ? "PROCESS" : task.kind().id().replace('-', ' '),
            load.batch().lot(),
            load.number()));
  }

  private String dated(ZonedDateTime time) {
    String clock = ClockTime.of(time);
    return time.toLocalDate().equals(day.date()) ? clock : time.toLocalDate() + " " + clock;
  }
}
