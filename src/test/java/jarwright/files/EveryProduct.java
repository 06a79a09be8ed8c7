package jarwright.files;

import jarwright.batch.Batch;
import jarwright.batch.BatchReckoner;
import jarwright.lot.LotCode;
import jarwright.plan.Amount;
import jarwright.plan.BatchPlan;
import jarwright.plan.Canner;
import jarwright.plan.Cover;
import jarwright.plan.Kitchen;
import jarwright.plan.Paper;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.TableRow;
import jarwright.quantity.Altitude;
import jarwright.quantity.Fraction;
import jarwright.quantity.Length;
import jarwright.quantity.Units;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** A batch of every product that has a tested process, in an invented kitchen, for tests. */
final class EveryProduct {
  static final LocalDate DAY = LocalDate.of(2026, 8, 24);
  static final Kitchen KITCHEN =
      new Kitchen(
          "Lindqvist-Amari \"lower\" kitchen",
          Altitude.metres(420),
          Paper.A4,
          Units.BOTH,
          "en",
          Arrays.stream(Method.values()).map(EveryProduct::canner).toList(),
          Optional.empty(),
          Length.millimetres(0),
          Length.millimetres(0),
          Fraction.ONE,
          Optional.empty(),
          12,
          OptionalInt.empty(),
          Optional.empty());

  private EveryProduct() {}

  private static Canner canner(Method method) {
    return new Canner(
        method.id(),
        method,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        Map.of(),
        List.of());
  }

  /** A lot for each; the letters repeat. */
  static List<Batch> batches() throws Exception {
    ProcessBook book = ProcessTables.ofProgram().book();
    List<Batch> batches = new ArrayList<>();
    for (Product product : book.products()) {
      Optional<TableRow> row =
          book.rows(product.id()).stream()
              .filter(r -> r.band().holds(KITCHEN.altitude().feetRoundedUp()))
              .filter(r -> r.process().isPresent())
              .findFirst();
      if (row.isPresent()) {
        batches.add(batch(book, row.get(), product, batches.size()));
      }
    }
    return batches;
  }

  private static Batch batch(ProcessBook book, TableRow row, Product product, int number) {
    Problems problems = new Problems();
    LotCode lot = new LotCode(DAY, (char) ('A' + number % 26));
    Optional<Batch> batch =
        new BatchReckoner(book, KITCHEN)
            .reckon(plan("all.yaml", number + 1, product, row), lot, problems);
    return batch.orElseThrow(() -> new AssertionError(problems.list().toString()));
  }

  static BatchPlan plan(String file, int position, Product product, TableRow row) {
    boolean plain = product.category().equals("fruit");
    return new BatchPlan(
        file,
        position,
        Map.of("", Place.wholeFile(file)),
        product,
        Optional.of(row.pack() == Pack.RAW_OR_HOT ? Pack.HOT : row.pack()),
        row.jar(),
        new Amount.Jars(9),
        Optional.of(row.method()),
        row.process().orElseThrow().pressure(),
        product.acid().choices().stream().findFirst(),
        true,
        plain ? Cover.named("light") : Optional.empty(),
        DAY,
        Optional.of(LocalTime.of(8, 30)),
        Optional.empty(),
        OptionalInt.of(2),
        Optional.of(row.method().id()),
        new BatchPlan.Notes("stall \\ \"Novak\"", "cellar: B3", "", "# ñ, it's"));
  }
}
