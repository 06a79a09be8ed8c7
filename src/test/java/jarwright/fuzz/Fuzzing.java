package jarwright.fuzz;

/** What the coverage-guided fuzzer calls: once with the target's name, then with each input. */
public final class Fuzzing {
  private static Target target = Target.PLAN_YAML;

  private Fuzzing() {}

  public static void fuzzerInitialize(String... args) {
    target = Target.named(args[0]);
  }

  public static void fuzzerTestOneInput(byte[] input) throws Exception {
    target.read(input);
  }
}
