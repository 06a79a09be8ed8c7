package jarwright.benchmark;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import java.time.LocalDate;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** A jar's name read from what is printed on it, and written. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LotCodeLoop {
  private final JarId jar = new LotCode(LocalDate.of(2026, 8, 24), 'A').jar(3);
  private final String printed = jar.toString();

  @Benchmark
  public JarId parse() {
    return JarId.parse(printed);
  }

  @Benchmark
  public String format() {
    return jar.toString();
  }
}
