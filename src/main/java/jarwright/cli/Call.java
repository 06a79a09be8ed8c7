package jarwright.cli;

import jarwright.files.OneLine;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.CommandLine;

/**
 * One call of a command: its arguments and what it finds around it.
 *
 * @param line the options and arguments as given
 */
record Call(Surroundings surroundings, CommandLine line) {
  PrintStream out() {
    return surroundings.out();
  }

  List<String> arguments() {
    return line.getArgList();
  }

  boolean has(String option) {
    return line.hasOption(option);
  }

  Optional<String> value(String option) {
    return Optional.ofNullable(line.getOptionValue(option));
  }

  /**
   * Free text, to be written into the ledger, in one line; empty where it was not given.
   *
   * @throws Usage where it is too long or cannot be printed
   */
  String text(String option) throws Usage {
    String line = OneLine.of(value(option).orElse(""));
    if (line.length() > OneLine.LONGEST) {
      throw new Usage("--" + option + " takes " + OneLine.LONGEST + " characters or fewer");
    }
    if (!OneLine.isPrintable(line)) {
      throw new Usage(
          "--" + option + " holds a character that cannot be printed; write plain text");
    }
    return line;
  }

  Optional<Path> path(String option) {
    return value(option).map(surroundings::resolve);
  }

  /** A word for whoever watches; on the error stream, so that output can be piped. */
  void tell(String text) {
    if (!has(CommonOptions.QUIET)) {
      surroundings.err().println(text);
    }
  }

  /** The household folder: the option, the environment, else {@code pantry} here. */
  Path pantry() {
    return path(CommonOptions.PANTRY)
        .orElseGet(
            () ->
                surroundings.resolve(
                    surroundings.environment().getOrDefault("JARWRIGHT_PANTRY", "pantry")));
  }
}
