package jarwright.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;

/**
 * What the program finds around it, handed in so that tests can hand in their own.
 *
 * @param folder relative paths are taken from here
 */
record Surroundings(
    PrintStream out, PrintStream err, Clock clock, Path folder, Map<String, String> environment) {
  Path resolve(String path) {
    return folder.resolve(path);
  }
}
