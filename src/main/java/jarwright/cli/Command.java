package jarwright.cli;

import jarwright.problem.Refused;
import java.io.IOException;
import org.apache.commons.cli.Options;

/** One command of the program. */
interface Command {
  String name();

  /** What is written after the name, as {@code PLAN… [-o DIR]}. */
  String arguments();

  /** One line for the list of commands. */
  String summary();

  /** The options that only this command has. */
  Options options();

  /**
   * Does the work.
   *
   * @throws Usage when the arguments are not what the command takes
   * @throws Refused when the input is; nothing has been written
   * @throws IOException when a file cannot be read or written
   */
  void run(Call call) throws Usage, Refused, IOException;
}
