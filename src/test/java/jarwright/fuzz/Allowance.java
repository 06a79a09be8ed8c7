package jarwright.fuzz;

import java.lang.management.ManagementFactory;

/**
 * What reading one input may cost: a second of work. The second allowance, the memory, is the heap
 * that the fuzzer's JVM is started with; what does nothing and never ends is the fuzzer's to stop.
 */
final class Allowance {
  private static final long MOST_NANOS = 1_000_000_000L;
  private static final int TRIES = 3;
  private static final com.sun.management.OperatingSystemMXBean SYSTEM =
      ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class);

  private Allowance() {}

  /**
   * Reads an input, again where it takes too long: the first time may go into loading and
   * compiling. Work is counted as processor time of all threads, which other programs on the
   * machine do not lengthen.
   */
  static void hold(Target.Reading reading, byte[] input) throws Exception {
    long least = Long.MAX_VALUE;
    for (int i = 0; i < TRIES && least > MOST_NANOS; i++) {
      long start = SYSTEM.getProcessCpuTime();
      reading.read(input);
      least = Math.min(least, SYSTEM.getProcessCpuTime() - start);
    }
    if (least > MOST_NANOS) {
      throw new AssertionError(
          input.length + " bytes take " + least / 1_000_000 + " ms of processor time");
    }
  }
}
