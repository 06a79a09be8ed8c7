package jarwright.fuzz;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What the coverage-guided fuzzer calls: once with the target's name, then with each input. */
public final class Fuzzing {
  private static Target.Reading reading = Target.PLAN_YAML::read;

  private Fuzzing() {}

  /** Reads the known cases once, so that loading and compiling is not put down to an input. */
  public static void fuzzerInitialize(String... args) throws Exception {
    String id = args[0];
    reading = Planted.isNamed(id) ? Planted.named(id) : Target.named(id)::read;
    for (Path known : Planted.isNamed(id) ? List.<Path>of() : known(id)) {
      reading.read(Files.readAllBytes(known));
    }
  }

  private static List<Path> known(String id) throws Exception {
    try (Stream<Path> files = Files.list(Path.of("src", "test", "resources", "fuzz", id))) {
      return files.toList();
    }
  }

  public static void fuzzerTestOneInput(byte[] input) throws Exception {
    Allowance.hold(reading, input);
  }
}
