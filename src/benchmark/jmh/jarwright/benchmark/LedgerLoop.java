package jarwright.benchmark;

import jarwright.files.FoodTables;
import jarwright.files.LedgerFile;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.pantry.PantryFold;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.infra.Blackhole;

/** An event of a ledger of two thousand: its line checked and read, and the event added up. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LedgerLoop {
  private static final int EVENTS = 2_000;

  private Path folder;
  private LedgerFile ledger;
  private List<LedgerEvent> events;

  @Setup
  public void write() throws IOException, Refused {
    folder = Files.createTempDirectory("ledger");
    ledger = LedgerFile.in(folder);
    ledger.append(IntStream.range(0, EVENTS).mapToObj(Stock::event).toList());
    events = ledger.read().events();
  }

  @TearDown
  public void remove() throws IOException {
    for (String name : folder.toFile().list()) {
      Files.delete(folder.resolve(name));
    }
    Files.delete(folder);
  }

  @Benchmark
  @OperationsPerInvocation(EVENTS)
  public void read(Blackhole eyes) throws IOException, Refused {
    ledger.read().each(eyes::consume);
  }

  @Benchmark
  @OperationsPerInvocation(EVENTS)
  public Pantry fold() {
    PantryFold fold = new PantryFold(List.of(), FoodTables::own);
    events.forEach(fold::add);
    return fold.pantry();
  }
}
