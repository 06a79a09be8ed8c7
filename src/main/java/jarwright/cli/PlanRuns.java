package jarwright.cli;

import jarwright.day.DayBook;
import jarwright.files.DayTables;
import jarwright.files.ProcessTables;
import jarwright.problem.Problem;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The plans named on a command line, worked out together. */
final class PlanRuns {
  private PlanRuns() {}

  /**
   * The plan files of a call.
   *
   * @throws Usage where none is named
   */
  static List<Path> named(Call call, String command) throws Usage {
    List<Path> plans = call.arguments().stream().map(call.surroundings()::resolve).toList();
    if (plans.isEmpty()) {
      throw new Usage(
          command + " needs a plan, as in: jarwright " + command + " samples/plum-day.yaml");
    }
    return plans;
  }

  /**
   * Every plan worked out.
   *
   * @throws Refused where any is refused, with the problems of all
   */
  static List<PlanRun> of(List<Path> plans, Call call, PlanRun.LotNames lots)
      throws IOException, Refused {
    ProcessTables tables = ProcessTables.ofProgram();
    DayBook book = DayTables.read();
    List<PlanRun> runs = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Path plan : plans) {
      try {
        runs.add(PlanRun.of(plan, call, tables, book, lots));
      } catch (Refused refused) {
        problems.addAll(refused.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new Refused(problems);
    }
    return runs;
  }
}
