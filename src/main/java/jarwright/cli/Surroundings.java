package jarwright.cli;

import java.io.BufferedReader;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;

/**
 * What the program finds around it, handed in so that tests can hand in their own.
 *
 * @param folder relative paths are taken from here
 * @param keyboard of the person who can be asked; empty where nobody sits at a terminal
 */
record Surroundings(
    PrintStream out,
    PrintStream err,
    Clock clock,
    Path folder,
    Map<String, String> environment,
    Optional<BufferedReader> keyboard) {
  /** Where nobody can be asked. */
  Surroundings(
      PrintStream out, PrintStream err, Clock clock, Path folder, Map<String, String> environment) {
    this(out, err, clock, folder, environment, Optional.empty());
  }

  Path resolve(String path) {
    return folder.resolve(path);
  }
}
