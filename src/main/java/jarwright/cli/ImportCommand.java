package jarwright.cli;

import jarwright.files.OldListReader;
import jarwright.files.ProcessTables;
import jarwright.lot.UseBy;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.LotFacts;
import jarwright.pantry.OldJars;
import jarwright.pantry.OldList;
import jarwright.pantry.Vouched;
import jarwright.plan.Kitchen;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.Product;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.cli.Options;

/** Brings a list of jars that were not made with the program into the ledger. */
final class ImportCommand implements Command {
  @Override
  public String name() {
    return "import";
  }

  @Override
  public String arguments() {
    return "FILE";
  }

  @Override
  public String summary() {
    return "bring in a list of jars made elsewhere or before";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(VouchedLots.byOption())
        .addOption(VouchedLots.sourceOption())
        .addOption(VouchedLots.acidOption())
        .addOption(Books.byOption())
        .addOption(CommonOptions.withValue(null, PlanRun.KITCHEN, "FILE", "the kitchen's file"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    if (call.arguments().size() != 1) {
      throw new Usage(
          "import needs one CSV file with the columns product and jars; it may have "
              + String.join(", ", OldListReader.COLUMNS.subList(2, OldListReader.COLUMNS.size())));
    }
    Optional<Vouched> word = VouchedLots.of(call);
    String name = call.arguments().get(0);
    Path file = call.surroundings().resolve(name);
    Books books = Books.openOrBegin(call);
    int months = books.kitchen().map(Kitchen::monthsToUseBy).orElse(UseBy.USUAL_MONTHS);
    List<OldJars> rows =
        OldListReader.read(file, products(), books.now().toLocalDate(), months).stream()
            .map(r -> r.orVouched(word))
            .toList();
    List<OldList.Placed> placed = new ArrayList<>();
    placed(name, rows, books.events());
    Files.createDirectories(call.pantry());
    List<LedgerEvent> events =
        books.correct(
            before -> {
              placed.addAll(placed(name, rows, before));
              return OldList.entries(placed, books.now(), books.by());
            });
    new ImportText(books).print(call, placed);
    if (!events.isEmpty()) {
      call.tell(Events.recorded(events));
    }
  }

  private static List<OldList.Placed> placed(
      String name, List<OldJars> rows, List<LedgerEvent> before) throws Refused {
    Problems problems = new Problems();
    List<OldList.Placed> placed = new ArrayList<>();
    List<Optional<OldList.Placed>> places = OldList.place(rows, before);
    for (int i = 0; i < rows.size(); i++) {
      LotFacts facts = rows.get(i).facts();
      if (places.get(i).isPresent()) {
        placed.add(places.get(i).get());
      } else {
        problems.add(
            Place.wholeFile(name),
            facts.shownName()
                + ": no letter is left for a lot of "
                + facts.packed().map(Object::toString).orElse("a day that is not known"),
            "put jars that are alike into one row, or give the month alone, as 2025-08");
      }
    }
    problems.refuse();
    return placed;
  }

  /** By what a list may call them: their ids, and their names. */
  private static Map<String, Product> products() throws IOException, Refused {
    Map<String, Product> products = new HashMap<>();
    for (Product product : ProcessTables.ofProgram().products()) {
      products.put(product.id(), product);
      products.put(
          product.name().strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-"), product);
    }
    return products;
  }
}
