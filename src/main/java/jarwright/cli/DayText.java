package jarwright.cli;

import jarwright.batch.Batch;
import jarwright.day.AheadWords;
import jarwright.day.CannerLoad;
import jarwright.day.ClockTime;
import jarwright.day.DayPlan;
import jarwright.day.NoticeWords;
import jarwright.day.StepTexts;
import jarwright.day.Task;
import jarwright.day.TaskKind;
import jarwright.page.Wording;
import java.time.LocalDate;
import java.util.Locale;

/** A day by the clock, a line a task; the date stands wherever it changes. */
final class DayText {
  /** As wide as most times of day are. */
  private static final int CLOCK_WIDTH = 8;

  private final DayPlan day;
  private final StepTexts steps;
  private final ClockTime clock;
  private final StringBuilder out = new StringBuilder();
  private LocalDate shown;

  /**
   * @param steps the words of waits, in the language of the text
   */
  DayText(DayPlan day, StepTexts steps) {
    this.day = day;
    this.steps = steps;
    this.clock = new ClockTime(day.loads().get(0).load().batch().kitchen().clock(), steps.words());
    this.shown = day.date();
  }

  /** The lines, each ended. */
  String text() {
    Wording words = steps.words();
    out.append(words.date("weekday", day.date())).append(": begin ");
    out.append(clock.of(day.start(), day.date())).append(", done about ");
    out.append(clock.of(day.at(day.finish()), day.date()));
    out.append(
        day.proven()
            ? " (no order of the work is quicker)"
            : " (at most " + day.gap() + " min could be saved)");
    out.append('\n');
    day.loads().stream().map(l -> l.load().batch()).distinct().forEach(this::food);
    for (AheadWords.Row row : new AheadWords(steps).of(day)) {
      out.append("  before: ").append(row.when()).append("  ").append(row.letter());
      out.append("  ").append(row.what().text()).append('\n');
    }
    new NoticeWords(words).of(day).forEach(n -> out.append("  ! ").append(n).append('\n'));
    day.tasks().forEach(this::line);
    return out.toString();
  }

  private void food(Batch batch) {
    out.append("  ").append(batch.lot().letter()).append(" = ").append(batch.product().name());
    out.append(", ").append(batch.lot()).append('\n');
  }

  private void line(Task task) {
    LocalDate on = day.at(task.start()).toLocalDate();
    if (!on.equals(shown)) {
      shown = on;
      out.append("  ").append(steps.words().date("weekday", on)).append('\n');
    }
    CannerLoad load = day.loads().get(task.load()).load();
    out.append(
        String.format(
            Locale.ROOT,
            "  %" + CLOCK_WIDTH + "s – %-" + CLOCK_WIDTH + "s %5s  %-3s %s\n",
            clock.of(day.at(task.start())),
            clock.of(day.at(task.end())),
            (task.isExact() ? "" : "~") + task.minutes().planned(),
            load.batch().lot().letter() + (load.of() == 1 ? "" : String.valueOf(load.number())),
            what(task, load.batch())));
  }

  private String what(Task task, Batch batch) {
    if (task.step().isPresent()) {
      return steps.line(batch, task.step().getAsInt()).text();
    }
    return task.kind() == TaskKind.PROCESS ? "PROCESS" : task.kind().id().replace('-', ' ');
  }
}
