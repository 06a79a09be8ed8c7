package jarwright.cli;

import jarwright.ask.Heard;
import jarwright.ask.Meaning;
import jarwright.ask.Said;
import jarwright.ask.TableQuestion;
import jarwright.files.AltitudeWord;
import jarwright.files.OneLine;
import jarwright.files.PlanReader;
import jarwright.files.ProcessListing;
import jarwright.files.ProcessTables;
import jarwright.files.SayingRows;
import jarwright.page.Language;
import jarwright.page.Wording;
import jarwright.plan.Kitchen;
import jarwright.problem.Nearest;
import jarwright.problem.Place;
import jarwright.problem.Refused;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.TableRow;
import jarwright.quantity.Altitude;
import jarwright.render.WordBundle;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
  private static final Heard NOTHING_HEARD =
      new Heard(new Meaning.Nothing(), Said.NOTHING, Language.ENGLISH.tag());

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
        .addOption(
            CommonOptions.withValue(
                null,
                SheetOptions.LANGUAGE,
                "LANG",
                String.join(" or ", Language.tags()) + "; else that of the words"))
        .addOption(CommonOptions.flag(ALL, "every row there is"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    String format = oneOf(call, FORMAT, FORMATS).orElse(FORMATS.get(0));
    if (asked(call).length() > OneLine.LONGEST) {
      throw new Usage("process takes words of " + OneLine.LONGEST + " characters or fewer in all");
    }
    ProcessTables tables = ProcessTables.ofProgram();
    if (call.has(ALL)) {
      everything(call, format, tables.book());
      return;
    }
    Heard heard = SayingRows.search(tables).hear(String.join(" ", call.arguments()));
    Wording words = WordBundle.load(language(call, heard));
    ProductNames names = new ProductNames(words.language());
    ProcessRefusal refusal = new ProcessRefusal(asked(call), words, names, tables);
    Meaning.Known known = known(call, tables, heard, refusal);
    TableQuestion question = question(call, known.products(), known.others(), heard.said());
    ProcessBook book = tables.bookOf(ids(known));
    TableQuestion.Finding finding = question.ask(book);
    if (finding instanceof TableQuestion.Finding.NeedsPressure low) {
      throw refusal.of(low, book);
    }
    if (finding instanceof TableQuestion.Finding.NoSuchSetting none) {
      throw refusal.of(none, book);
    }
    TableQuestion.Finding.Rows found = (TableQuestion.Finding.Rows) finding;
    switch (format) {
      case "csv" -> call.out().print(ProcessListing.csv(found.rows()));
      case "json" ->
          call.out().print(ProcessListing.json(found.rows(), altitude(call, heard.said())));
      default -> {
        ProcessAnswer answer = new ProcessAnswer(call, question, book, words, names);
        answer.before(known, heard.said());
        answer.print(found, altitude(call, heard.said()));
        answer.after(known, refusal);
      }
    }
  }

  /** The language asked for; else that of the words, or where they are English the kitchen's. */
  private static String language(Call call, Heard heard) throws Usage, Refused, IOException {
    Optional<String> asked = SheetOptions.asked(call);
    if (asked.isPresent() || !Language.isOfTables(heard.language())) {
      return asked.orElse(heard.language());
    }
    return kitchen(call).map(Kitchen::language).orElse(heard.language());
  }

  private static void everything(Call call, String format, ProcessBook book)
      throws Usage, Refused, IOException {
    TableQuestion question = question(call, book.products(), List.of(), Said.NOTHING);
    List<TableRow> rows =
        book.rows().stream().filter(r -> question.fits(book, product(book, r), r)).toList();
    switch (format) {
      case "csv" -> call.out().print(ProcessListing.csv(rows));
      case "json" -> call.out().print(ProcessListing.json(rows, altitude(call, Said.NOTHING)));
      default -> {
        Wording words = WordBundle.load(language(call, NOTHING_HEARD));
        new ProcessAnswer(call, question, book, words, new ProductNames(words.language()))
            .print(
                new TableQuestion.Finding.Rows(book.products(), rows),
                altitude(call, Said.NOTHING));
        call.out().println(words.text("process.caution"));
      }
    }
  }

  private static Set<String> ids(Meaning.Known known) {
    return Stream.concat(known.products().stream(), known.others().stream())
        .map(Product::id)
        .collect(Collectors.toSet());
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

  /** An option goes before the same thing in the words. */
  private static TableQuestion question(
      Call call, List<Product> products, List<Product> others, Said said) throws Usage {
    Optional<Pack> pack = oneOf(call, PACK, Pack.choices()).flatMap(Pack::named);
    Optional<JarSize> jar = oneOf(call, JAR, JarSize.ids()).flatMap(JarSize::named);
    Optional<Method> method = oneOf(call, METHOD, Method.ids()).flatMap(Method::named);
    return new TableQuestion(
        products,
        others,
        pack.or(said::pack),
        jar.or(said::jar),
        method.map(List::of).orElse(said.methods()),
        jar.isPresent() ? Optional.empty() : said.untestedJar(),
        said.inHours());
  }

  private static Meaning.Known known(
      Call call, ProcessTables tables, Heard heard, ProcessRefusal refusal) throws Usage, Refused {
    if (call.value(PRODUCT).isPresent()) {
      return new Meaning.Known(
          List.of(product(call.value(PRODUCT).get(), tables.products())),
          List.of(),
          Optional.empty(),
          Map.of(),
          Optional.empty());
    }
    if (heard.food() instanceof Meaning.Known known) {
      return known;
    }
    if (heard.food() instanceof Meaning.Refused why) {
      throw refusal.of(why);
    }
    if (heard.food() instanceof Meaning.Unknown unknown) {
      throw refusal.of(unknown);
    }
    throw new Usage("process needs a food, as in: jarwright process raw peaches quart; or --all");
  }

  private static Product product(String id, List<Product> known) throws Usage {
    List<String> ids = known.stream().map(Product::id).toList();
    return known.stream()
        .filter(p -> p.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new Usage(
                    "there is no product \""
                        + id
                        + "\""
                        + Nearest.to(id, ids).map(n -> "; did you mean " + n + "?").orElse("")));
  }

  /** The option's altitude, else the one that was said, else the household's. */
  private static Optional<Altitude> altitude(Call call, Said said) throws Refused, IOException {
    Optional<String> text = call.value(ALTITUDE).or(said::altitude);
    if (text.isPresent()) {
      Place place = Place.wholeFile("process");
      return Optional.of(AltitudeWord.read(place, "--" + ALTITUDE, text.get()));
    }
    return kitchen(call).map(Kitchen::altitude);
  }

  private static Optional<Kitchen> kitchen(Call call) throws Refused, IOException {
    Optional<Path> file = PlanRun.kitchenFile(call);
    return file.isPresent() ? Optional.of(PlanReader.readKitchen(file.get())) : Optional.empty();
  }

  private static Optional<String> oneOf(Call call, String option, List<String> known) throws Usage {
    Optional<String> word = call.value(option);
    if (word.isPresent() && !known.contains(word.get())) {
      throw new Usage("--" + option + " " + word.get() + ": " + Nearest.remedy(word.get(), known));
    }
    return word;
  }
}
