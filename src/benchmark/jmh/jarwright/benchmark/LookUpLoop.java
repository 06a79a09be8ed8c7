package jarwright.benchmark;

import jarwright.files.ProcessTables;
import jarwright.problem.Refused;
import jarwright.process.Answer;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.ProcessBook;
import jarwright.process.Setting;
import jarwright.quantity.Altitude;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A tested process by its altitude, which goes round in steps of 7 feet. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LookUpLoop {
  private static final int HIGHEST = 10_000;

  private ProcessBook book;
  private int feet;

  @Setup
  public void read() throws IOException, Refused {
    book = ProcessTables.ofProgram().book();
  }

  @Benchmark
  public Answer lookUp() {
    feet = (feet + 7) % HIGHEST;
    return book.lookUp(
        new Setting(
            book.product("plums-halved-or-whole").orElseThrow(),
            Method.BOILING_WATER,
            Pack.RAW,
            JarSize.QUART,
            Altitude.feet(feet)));
  }
}
