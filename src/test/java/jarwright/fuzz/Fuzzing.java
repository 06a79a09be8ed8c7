package jarwright.fuzz;

/** What the coverage-guided fuzzer calls: once with the target's name, then with each input. */
public final class Fuzzing {
  private static Target.Reading reading = Target.PLAN_YAML::read;

  private Fuzzing() {}

  public static void fuzzerInitialize(String... args) {
    reading = Planted.isNamed(args[0]) ? Planted.named(args[0]) : Target.named(args[0])::read;
  }

  public static void fuzzerTestOneInput(byte[] input) throws Exception {
    Allowance.hold(reading, input);
  }
}
