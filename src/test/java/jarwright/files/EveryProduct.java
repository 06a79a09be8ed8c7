package jarwright.files;

import jarwright.batch.Batch;
import jarwright.batch.BatchReckoner;
import jarwright.lot.LotCode;
import jarwright.plan.Amount;
import jarwright.plan.BatchPlan;
import jarwright.plan.Cover;
import jarwright.plan.Kitchen;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.Pack;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.TableRow;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** A batch of every product that has a tested process, in an invented kitchen, for tests. */
public final class EveryProduct {
  static final LocalDate DAY = LocalDate.of(2026, 8, 24);
  static final Kitchen KITCHEN = kitchen();

  private EveryProduct() {}

  private static Kitchen kitchen() {
    String text =
        """
        household: Lindqvist-Amari "lower" kitchen
        altitude: 420 m
        paper: a4
        canners:
          - {name: boiling-water, method: boiling-water}
          - {name: dial-gauge, method: dial-gauge}
          - {name: weighted-gauge, method: weighted-gauge}
        """;
    try {
      Problems problems = new Problems();
      TextFile file = TextFile.of("kitchen.yaml", text.getBytes(StandardCharsets.UTF_8));
      Written.Keys keys = (Written.Keys) YamlTree.read(file, problems);
      return new KitchenReader(keys, new PlanWords(ProcessTables.ofProgram()), problems)
          .read()
          .orElseThrow();
    } catch (IOException | Refused e) {
      throw new AssertionError(e);
    }
  }

  /** A lot for each; the letters repeat. */
  public static List<Batch> batches() throws Exception {
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
        Optional.of(true),
        plain ? Cover.named("light") : Optional.empty(),
        DAY,
        Optional.of(LocalTime.of(8, 30)),
        Optional.empty(),
        OptionalInt.of(2),
        Optional.of(row.method().id()),
        new BatchPlan.Notes("stall \\ \"Novak\"", "cellar: B3", "", "# ñ, it's"));
  }
}
