package jarwright.cli;

import jarwright.files.OldListReader;
import jarwright.files.ProcessTables;
import jarwright.lot.UseBy;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.LotFacts;
import jarwright.pantry.OldJars;
import jarwright.pantry.OldList;
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
  /** CDC, Home-Canned Foods: "If there is any doubt if safe canning guidelines were followed". */
  private static final String UNVOUCHED =
      "Nothing shows that these jars were made by a tested process. Vegetables, meat, fish, soups"
          + " and other low-acid food that was not pressure-canned by one can hold the toxin of"
          + " botulism, which cannot be seen, smelled or tasted: if there is any doubt, do not"
          + " taste it, throw it away (CDC, Home-Canned Foods).";

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
    String name = call.arguments().get(0);
    Path file = call.surroundings().resolve(name);
    Books books = Books.openOrBegin(call);
    int months = books.kitchen().map(Kitchen::monthsToUseBy).orElse(UseBy.USUAL_MONTHS);
    List<OldJars> rows = OldListReader.read(file, products(), books.now().toLocalDate(), months);
    List<OldList.Placed> placed = new ArrayList<>();
    placed(name, rows, books.events());
    Files.createDirectories(call.pantry());
    List<LedgerEvent> events =
        books.correct(
            before -> {
              placed.addAll(placed(name, rows, before));
              return OldList.entries(placed, books.now(), books.by());
            });
    print(call, placed);
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
                + facts.packed().map(Object::toString).orElse("a day that nobody knows"),
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

  private static void print(Call call, List<OldList.Placed> placed) {
    List<OldList.Placed> fresh = placed.stream().filter(OldList.Placed::isNew).toList();
    List<OldList.Placed> known = placed.stream().filter(p -> !p.isNew()).toList();
    fresh.forEach(p -> call.out().println(line(p)));
    if (!known.isEmpty()) {
      call.out().println("In the ledger already, and left as it is there:");
      known.forEach(p -> call.out().println("  " + line(p)));
      call.out().println("A row that is other jars of the same kind needs another note.");
    }
    if (!fresh.isEmpty()) {
      call.out().print(Indented.of("", "", UNVOUCHED));
      call.out().println(Help.CAUTION);
    }
  }

  private static String line(OldList.Placed placed) {
    LotFacts facts = placed.row().facts();
    return placed.lot()
        + "  "
        + ShelfText.jars(placed.row().jars())
        + " of "
        + JarText.food(facts)
        + facts.packed().map(d -> ", packed " + d).orElse(", nobody knows when packed")
        + facts.useBy().map(d -> ", use by " + d).orElse(", use first")
        + (facts.shelf().isEmpty() ? "" : ", " + facts.shelf())
        + "; process not known";
  }
}
