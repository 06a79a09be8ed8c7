package jarwright.cli;

import jarwright.files.AltitudeWord;
import jarwright.files.OneLine;
import jarwright.files.PlanReader;
import jarwright.files.ProcessListing;
import jarwright.files.ProcessTables;
import jarwright.files.UntestedRows;
import jarwright.plan.Kitchen;
import jarwright.problem.Nearest;
import jarwright.problem.Place;
import jarwright.problem.Refused;
import jarwright.process.AltitudeBand;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.ProductSearch;
import jarwright.process.TableRow;
import jarwright.process.UntestedSearch;
import jarwright.quantity.Altitude;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.cli.Options;

/** Looks the tested processes up. */
final class ProcessCommand implements Command {
  private static final String PRODUCT = "product";
  private static final String PACK = "pack";
  private static final String JAR = "jar";
  private static final String METHOD = "method";
  private static final String ALTITUDE = "altitude";
  private static final String FORMAT = "format";
  private static final String ALL = "all";
  private static final List<String> FORMATS = List.of("text", "csv", "json");
  private static final int MOST_TABLES = 6;

  @Override
  public String name() {
    return "process";
  }

  @Override
  public String arguments() {
    return "[WORD…]";
  }

  @Override
  public String summary() {
    return "look tested processes up, as in: process raw peaches quart";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.withValue(null, PRODUCT, "ID", "this product alone"))
        .addOption(CommonOptions.withValue(null, PACK, "PACK", "raw or hot"))
        .addOption(CommonOptions.withValue(null, JAR, "JAR", String.join(", ", JarSize.ids())))
        .addOption(CommonOptions.withValue(null, METHOD, "METHOD", String.join(", ", Method.ids())))
        .addOption(CommonOptions.withValue(null, ALTITUDE, "ALTITUDE", "as 420 m or 5,400 ft"))
        .addOption(CommonOptions.withValue(null, FORMAT, "FORMAT", String.join(", ", FORMATS)))
        .addOption(CommonOptions.flag(ALL, "every row there is"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    String format = oneOf(call, FORMAT, FORMATS).orElse(FORMATS.get(0));
    if (asked(call).length() > OneLine.LONGEST) {
      throw new Usage("process takes words of " + OneLine.LONGEST + " characters or fewer in all");
    }
    ProcessWords words = ProcessWords.of(call.arguments());
    Wish wish = wish(call, words);
    ProcessTables tables = ProcessTables.ofProgram();
    List<Product> known = tables.products();
    ProcessRefusal refusal = new ProcessRefusal(new UntestedSearch(UntestedRows.read(), known));
    List<Product> products = new ArrayList<>(products(call, known, words, refusal));
    ProcessBook book = call.has(ALL) ? tables.book() : tables.bookOf(ids(products));
    Filter filter = new Filter(book, wish);
    List<TableRow> rows = new ArrayList<>();
    if (call.has(ALL)) {
      book.rows().stream().filter(r -> filter.fits(product(book, r), r)).forEach(rows::add);
    } else {
      for (Product product : products) {
        book.rows(product.id()).stream().filter(r -> filter.fits(product, r)).forEach(rows::add);
      }
    }
    if (rows.isEmpty()) {
      throw refusal.of(asked(call), products, book);
    }
    products.removeIf(p -> rows.stream().noneMatch(r -> r.productId().equals(p.id())));
    switch (format) {
      case "csv" -> call.out().print(ProcessListing.csv(rows));
      case "json" -> call.out().print(ProcessListing.json(rows, altitude(call)));
      default -> {
        print(call, products, rows, filter);
        refusal.caution(call.value(PRODUCT).orElse(words.product())).ifPresent(call.out()::println);
        call.out().println(Help.CAUTION);
      }
    }
  }

  private static Set<String> ids(List<Product> products) {
    return products.stream().map(Product::id).collect(Collectors.toSet());
  }

  private static Product product(ProcessBook book, TableRow row) {
    return book.product(row.productId()).orElseThrow();
  }

  /** All that was asked for, as words. */
  private static String asked(Call call) {
    List<String> asked = new ArrayList<>(call.arguments());
    for (String option : List.of(PRODUCT, METHOD, PACK, JAR)) {
      call.value(option).ifPresent(asked::add);
    }
    return String.join(" ", asked);
  }

  /** What a row must be to be shown; an empty wish fits all. */
  private record Wish(Optional<Pack> pack, Optional<JarSize> jar, List<Method> methods) {}

  private record Filter(ProcessBook book, Wish wish) {
    boolean fits(Product product, TableRow row) {
      return wish.pack().map(row.pack()::covers).orElse(true)
          && wish.jar().map(j -> row.jar() == book.printedFor(product, j)).orElse(true)
          && (wish.methods().isEmpty() || wish.methods().contains(row.method()));
    }

    /** The jar asked for, where another size's time serves it. */
    Optional<JarSize> served(Product product) {
      return wish.jar().filter(j -> book.printedFor(product, j) != j);
    }
  }

  private static Wish wish(Call call, ProcessWords words) throws Usage {
    Optional<Pack> pack = oneOf(call, PACK, Pack.choices()).flatMap(Pack::named);
    Optional<JarSize> jar = oneOf(call, JAR, JarSize.ids()).flatMap(JarSize::named);
    Optional<Method> method = oneOf(call, METHOD, Method.ids()).flatMap(Method::named);
    return new Wish(
        pack.or(words::pack), jar.or(words::jar), method.map(List::of).orElse(words.methods()));
  }

  private static List<Product> products(
      Call call, List<Product> known, ProcessWords words, ProcessRefusal refusal)
      throws Usage, Refused {
    if (call.has(ALL)) {
      return known;
    }
    if (call.value(PRODUCT).isPresent()) {
      String id = call.value(PRODUCT).get();
      List<String> ids = known.stream().map(Product::id).toList();
      return List.of(
          known.stream()
              .filter(p -> p.id().equals(id))
              .findFirst()
              .orElseThrow(
                  () ->
                      new Usage(
                          "there is no product \""
                              + id
                              + "\""
                              + Nearest.to(id, ids)
                                  .map(n -> "; did you mean " + n + "?")
                                  .orElse(""))));
    }
    refusal.check(asked(call), words.product());
    if (words.product().isEmpty()) {
      throw new Usage("process needs words, as in: jarwright process raw peaches quart; or --all");
    }
    List<Product> found = new ProductSearch(known).find(words.product());
    if (found.isEmpty()) {
      throw new Refused(
          Place.wholeFile(words.product()),
          "no product of the tables has such a name",
          "what has no tested process is not safe to can: freeze or refrigerate it, and ask your"
              + " local extension service");
    }
    return found;
  }

  private void print(Call call, List<Product> products, List<TableRow> rows, Filter filter)
      throws Refused, IOException {
    Optional<Altitude> altitude = altitude(call);
    boolean listed = products.size() > MOST_TABLES;
    if (listed) {
      call.out()
          .println(products.size() + " products; add a word, or ask for one with --product ID:");
    }
    for (Product product : products) {
      List<TableRow> own = rows.stream().filter(r -> r.productId().equals(product.id())).toList();
      if (listed) {
        call.out().println(product.id() + "  " + product.name());
      } else {
        call.out().println(new ProcessText(product, altitude).text(own, filter.served(product)));
      }
    }
    if (altitude.isPresent() && !listed) {
      call.out().println("* your altitude, " + altitude.get().text(Style.english(Units.BOTH)));
      if (altitude.get().compareTo(AltitudeBand.DISPUTED_ABOVE) > 0) {
        call.out()
            .println(
                "Above "
                    + AltitudeBand.DISPUTED_ABOVE.text(Style.english(Units.US))
                    + " no dial-gauge pressure is tested, and one state service boils longer"
                    + " than the guide: ask yours.");
      }
    }
  }

  /** The option's altitude, else the household's. */
  private Optional<Altitude> altitude(Call call) throws Refused, IOException {
    if (call.value(ALTITUDE).isPresent()) {
      String text = call.value(ALTITUDE).get();
      return Optional.of(AltitudeWord.read(Place.wholeFile(name()), "--" + ALTITUDE, text));
    }
    Optional<Path> kitchen = PlanRun.kitchenFile(call);
    return kitchen.isPresent()
        ? Optional.of(PlanReader.readKitchen(kitchen.get())).map(Kitchen::altitude)
        : Optional.empty();
  }

  private static Optional<String> oneOf(Call call, String option, List<String> known) throws Usage {
    Optional<String> word = call.value(option);
    if (word.isPresent() && !known.contains(word.get())) {
      throw new Usage("--" + option + " " + word.get() + ": " + Nearest.remedy(word.get(), known));
    }
    return word;
  }
}
