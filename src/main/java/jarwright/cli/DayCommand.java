package jarwright.cli;

import jarwright.day.DayPlan;
import jarwright.day.StepTexts;
import jarwright.files.DayJson;
import jarwright.page.Language;
import jarwright.page.Wording;
import jarwright.problem.Nearest;
import jarwright.problem.Refused;
import jarwright.render.WordBundle;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.cli.Options;

/** The timeline alone, as text or JSON. */
final class DayCommand implements Command {
  private static final String FORMAT = "format";
  private static final List<String> FORMATS = List.of("text", "json");

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
    List<PlanRun> runs = PlanRuns.of(PlanRuns.named(call, name()), call, register::lotsOf);
    runs.forEach(run -> days.addAll(run.days()));
    if (format.equals("json")) {
      call.out().print(DayJson.of(days));
      return;
    }
    Wording words = WordBundle.load(Language.ENGLISH.tag());
    for (PlanRun run : runs) {
      StepTexts steps = new StepTexts(words, run.steps()::get);
      for (DayPlan day : run.days()) {
        call.out().println(new DayText(day, steps).text());
      }
    }
    OwnMedians.offers(register.pantry(), days).forEach(call.out()::println);
    call.out()
        .println("~ is an estimate. The clock of a load starts at the full boil or at pressure.");
    call.out().println(Help.CAUTION);
  }
}
