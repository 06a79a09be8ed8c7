package jarwright.cli;

import jarwright.day.DayPlan;
import jarwright.day.Task;
import jarwright.day.TaskKind;
import jarwright.files.DayJson;
import jarwright.problem.Nearest;
import jarwright.problem.Refused;
import java.io.IOException;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.cli.Options;

/** The timeline alone, as text or JSON. */
final class DayCommand implements Command {
  private static final String FORMAT = "format";
  private static final List<String> FORMATS = List.of("text", "json");
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  @Override
  public String name() {
    return "day";
  }

  @Override
  public String arguments() {
    return "PLAN…";
  }

  @Override
  public String summary() {
    return "the day by the clock; writes nothing";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.withValue(null, PlanRun.KITCHEN, "FILE", "the kitchen's file"))
        .addOption(CommonOptions.withValue(null, FORMAT, "FORMAT", String.join(", ", FORMATS)));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    String format = call.value(FORMAT).orElse(FORMATS.get(0));
    if (!FORMATS.contains(format)) {
      throw new Usage("--format " + format + ": " + Nearest.remedy(format, FORMATS));
    }
    Register register = new Register(call);
    List<DayPlan> days = new ArrayList<>();
    for (PlanRun run : PlanRuns.of(PlanRuns.named(call, name()), call, register::lotsOf)) {
      days.addAll(run.days());
    }
    if (format.equals("json")) {
      call.out().print(DayJson.of(days));
      return;
    }
    for (DayPlan day : days) {
      call.out().println(text(day));
    }
    call.out()
        .println("~ is an estimate. The clock of a load starts at the full boil or at pressure.");
    call.out().println(Help.CAUTION);
  }

  private static String text(DayPlan day) {
    StringBuilder out = new StringBuilder();
    out.append(day.date()).append("  ").append(CLOCK.format(day.start()));
    out.append(" to about ").append(CLOCK.format(day.at(day.finish())));
    out.append(
        day.proven()
            ? " (no order of the work is quicker)"
            : " (at most " + day.gap() + " min could be saved)");
    out.append('\n');
    for (Task task : day.tasks()) {
      String load =
          day.loads().get(task.load()).load().batch().lot()
              + " load "
              + day.loads().get(task.load()).load().number();
      out.append(
          String.format(
              Locale.ROOT,
              "  %s–%s %5s  %-20s %s%n",
              CLOCK.format(day.at(task.start())),
              CLOCK.format(day.at(task.end())),
              (task.isExact() ? "" : "~") + task.minutes().planned(),
              task.kind() == TaskKind.PROCESS ? "PROCESS" : task.kind().id().replace('-', ' '),
              load));
    }
    return out.toString();
  }
}
