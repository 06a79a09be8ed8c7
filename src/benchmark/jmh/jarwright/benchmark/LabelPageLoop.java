package jarwright.benchmark;

import jarwright.files.LabelStocks;
import jarwright.label.LabelsSheet;
import jarwright.page.LabelStock;
import jarwright.page.Registration;
import jarwright.page.Sheet;
import jarwright.problem.Refused;
import jarwright.render.Printer;
import jarwright.render.WordBundle;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A label of ten full pages, from its template to its bytes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LabelPageLoop {
  private static final int LABELS = 300;

  private final Printer printer = new Printer(Optional.empty());
  private Sheet sheet;

  @Setup
  public void lay() throws IOException, Refused {
    LabelStock stock =
        LabelStocks.builtIn().all().stream()
            .filter(s -> s.id().equals(PrintLabels.STOCK))
            .findFirst()
            .orElseThrow();
    sheet =
        LabelsSheet.of(
            Jars.labels(LABELS),
            stock,
            Registration.TRUE,
            LabelsSheet.Use.USUAL,
            WordBundle.load("en"),
            LocalDate.of(2026, 8, 24));
  }

  @Benchmark
  @OperationsPerInvocation(LABELS)
  public void print() throws IOException {
    printer.pdf(sheet, OutputStream.nullOutputStream());
  }
}
