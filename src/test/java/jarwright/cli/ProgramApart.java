package jarwright.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The program in a process of its own, on a set day, to be killed. */
final class ProgramApart {
  private ProgramApart() {}

  /** Folder, time, and the words of the command. */
  public static void main(String[] args) {
    Clock clock = Clock.fixed(OffsetDateTime.parse(args[1]).toInstant(), ZoneOffset.UTC);
    PrintStream out =
        new PrintStream(
            new BufferedOutputStream(new FileOutputStream(FileDescriptor.out)),
            true,
            StandardCharsets.UTF_8);
    Surroundings here =
        new Surroundings(out, out, clock, Path.of(args[0]), Map.of(), Optional.empty());
    System.exit(new Program(here).run(Arrays.copyOfRange(args, 2, args.length)));
  }

  static Process start(Path folder, String time, String... words) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xshare:auto", "-XX:TieredStopAtLevel=1", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.addAll(List.of(ProgramApart.class.getName(), folder.toString(), time));
    command.addAll(List.of(words));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}
