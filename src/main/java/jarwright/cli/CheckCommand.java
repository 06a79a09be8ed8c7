package jarwright.cli;

import jarwright.batch.Batch;
import jarwright.problem.Refused;
import java.io.IOException;
import java.util.List;
import org.apache.commons.cli.Options;

/** The kit's computation as text; writes nothing. */
final class CheckCommand implements Command {
  @Override
  public String name() {
    return "check";
  }

  @Override
  public String arguments() {
    return "PLAN…";
  }

  @Override
  public String summary() {
    return "work plans out and show the figures; write nothing";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.withValue(null, PlanRun.KITCHEN, "FILE", "the kitchen's file"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    Register register = new Register(call);
    List<PlanRun> runs = PlanRuns.of(PlanRuns.named(call, name()), call, register::lotsOf);
    register.doubles(runs).forEach(call::tell);
    for (PlanRun run : runs) {
      for (Batch batch : run.batches()) {
        call.out().println(new CheckText(batch).text(run.sizes(batch)));
      }
    }
    call.out().println(Help.CAUTION);
  }
}
