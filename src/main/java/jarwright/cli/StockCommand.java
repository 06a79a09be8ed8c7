package jarwright.cli;

import jarwright.files.LabelStockListing;
import jarwright.files.LabelStocks;
import jarwright.files.PlanReader;
import jarwright.label.AlignmentSheet;
import jarwright.label.StockTable;
import jarwright.page.LabelStock;
import jarwright.plan.Kitchen;
import jarwright.problem.Nearest;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;

/** The label stocks there are, by their geometry; and the page that brings a printer in line. */
final class StockCommand implements Command {
  private static final String FORMAT = "format";
  private static final String TEST = "test";
  private static final List<String> FORMATS = List.of("text", "csv", "json");

  @Override
  public String name() {
    return "stock";
  }

  @Override
  public String arguments() {
    return "[NAME] [--test FILE.pdf]";
  }

  @Override
  public String summary() {
    return "list label stocks, or print a page to align the printer";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.withValue(null, TEST, "FILE.pdf", "the alignment page"))
        .addOption(CommonOptions.withValue(null, FORMAT, "FORMAT", String.join(", ", FORMATS)))
        .addOption(SheetOptions.language())
        .addOption(CommonOptions.withValue(null, PlanRun.KITCHEN, "FILE", "the kitchen's file"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    if (call.arguments().size() > 1) {
      throw new Usage("stock takes one name, as in: jarwright stock a4-21up --test align.pdf");
    }
    String format = call.value(FORMAT).orElse(FORMATS.get(0));
    if (!FORMATS.contains(format)) {
      throw new Usage("--format " + format + ": " + Nearest.remedy(format, FORMATS));
    }
    Optional<String> name = call.arguments().stream().findFirst();
    if (call.has(TEST)) {
      test(call, name);
      return;
    }
    LabelStocks all = LabelStocks.read(call.pantry());
    List<LabelStock> stocks = name.isPresent() ? List.of(all.named(name.get())) : all.all();
    switch (format) {
      case "csv" -> call.out().print(LabelStockListing.csv(stocks));
      case "json" -> call.out().print(LabelStockListing.json(stocks));
      default -> call.out().print(table(stocks));
    }
  }

  private static void test(Call call, Optional<String> name) throws Usage, Refused, IOException {
    Optional<Path> kitchenFile = PlanRun.kitchenFile(call);
    Optional<Kitchen> kitchen =
        kitchenFile.isPresent()
            ? Optional.of(PlanReader.readKitchen(kitchenFile.get()))
            : Optional.empty();
    SheetOptions options = new SheetOptions(call, kitchen);
    LabelStock stock = options.stock(name);
    Path file = call.path(TEST).orElseThrow();
    LocalDate today = LocalDate.now(call.surroundings().clock());
    PdfFile.write(
        file,
        AlignmentSheet.of(stock, options.registration(), options.words(), today),
        Optional.empty());
    call.tell("wrote " + file + " for " + stock.id() + ": print it at full size, on plain paper");
  }

  private static String table(List<LabelStock> stocks) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(StockTable.HEADINGS);
    rows.addAll(StockTable.rows(stocks));
    int[] widths = new int[StockTable.HEADINGS.size()];
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    StringBuilder out = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
    return out.toString();
  }
}
