package jarwright.cli;

import jarwright.files.CountReader;
import jarwright.files.VerdictTable;
import jarwright.pantry.Difference;
import jarwright.pantry.Entry;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.pantry.StockTake;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.cli.Options;

/** Compares a stock-take with the ledger; records what it shows only when told to. */
final class CountCommand implements Command {
  private static final String APPLY = "apply";

  @Override
  public String name() {
    return "count";
  }

  @Override
  public String arguments() {
    return "FILE [--apply]";
  }

  @Override
  public String summary() {
    return "compare a stock-take, the filled-in shelf --format csv";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.flag(APPLY, "record the differences in the ledger"))
        .addOption(Books.byOption())
        .addOption(CommonOptions.withValue(null, PlanRun.KITCHEN, "FILE", "the kitchen's file"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    if (call.arguments().size() != 1) {
      throw new Usage(
          "count needs one file: jarwright shelf --format csv > count.csv, fill in the column"
              + " counted, and jarwright count count.csv");
    }
    Path file = call.surroundings().resolve(call.arguments().get(0));
    Books books = Books.open(call);
    Pantry before = books.pantry();
    StockTake count = CountReader.read(file, before);
    List<Difference> differences = count.against(before, books.now());
    JarText jars = new JarText(new VerdictText(Units.BOTH), VerdictTable.read(), books.now());
    CountText text = new CountText(count, differences, before, jars);
    List<LedgerEvent> events = new ArrayList<>();
    boolean recordable = differences.stream().anyMatch(d -> d.step().isPresent());
    if (call.has(APPLY) && recordable) {
      events.addAll(books.record(now -> entries(count, now, books)));
    }
    call.out().print(text.of());
    if (!events.isEmpty()) {
      call.tell(Events.recorded(events));
    } else if (recordable) {
      call.tell("nothing was recorded; --apply records it");
    }
  }

  /** What another program has written meanwhile is taken into account. */
  private static List<Entry> entries(StockTake count, Pantry now, Books books) {
    return StockTake.entries(count.against(now, books.now()), books.now(), books.by());
  }
}
