package jarwright.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;

/**
 * Runs the everyday commands in one process, for the launcher: the class-data archive that the JVM
 * makes at its end then holds what each of them loads.
 */
public final class Training {
  private Training() {}

  /**
   * @param args a plan, and a folder to write in
   */
  public static void main(String[] args) {
    String plan = args[0];
    Path folder = Path.of(args[1]);
    String pantry = folder.resolve("pantry").toString();
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
    Program program =
        new Program(
            new Surroundings(
                nowhere, nowhere, Clock.system(ZoneId.systemDefault()), Path.of(""), Map.of()));
    String kit = folder.resolve("kit").toString();
    List<String[]> calls =
        List.of(
            new String[] {"kit", plan, "-o", kit, "--pantry", pantry},
            // Once more, as what reads a ledger is used only where there is one.
            new String[] {"kit", plan, "-o", kit, "--pantry", pantry},
            new String[] {"check", plan, "--pantry", pantry},
            new String[] {"day", plan, "--pantry", pantry},
            new String[] {"shelf", "--pantry", pantry},
            new String[] {"process", "raw", "peaches", "quart"});
    for (String[] call : calls) {
      if (program.run(call) != Exit.DONE.status()) {
        throw new IllegalStateException(String.join(" ", call) + " failed");
      }
    }
  }
}
