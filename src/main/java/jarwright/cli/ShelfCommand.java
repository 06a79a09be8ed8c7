package jarwright.cli;

import jarwright.files.ShelfListing;
import jarwright.page.Sheet;
import jarwright.pantry.Advice;
import jarwright.pantry.Jar;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.Remark;
import jarwright.pantry.Spot;
import jarwright.pantry.Standing;
import jarwright.pantry.StockLine;
import jarwright.plan.Kitchen;
import jarwright.problem.Nearest;
import jarwright.problem.Place;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import jarwright.shelf.ShelfSheet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;

/** What is on the shelves, and what a year brought: as text, for a spreadsheet, or on paper. */
final class ShelfCommand implements Command {
  private static final String DUE = "due";
  private static final String PLACE = "place";
  static final String YEAR = "year";
  private static final String FORMAT = "format";
  static final String OUT = "output";
  private static final String TEMPLATES = "templates";
  private static final int MOST_REMARKS = 3;
  private static final List<String> FORMATS = List.of("text", "csv", "json");

  @Override
  public String name() {
    return "shelf";
  }

  @Override
  public String arguments() {
    return "[--due] [--place TEXT] [--year [YYYY]] [-o FILE.pdf]";
  }

  @Override
  public String summary() {
    return "what is on the shelves, first to use first; what a year brought";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.flag(DUE, "only what is to be used or seen to first"))
        .addOption(
            CommonOptions.withValue(null, PLACE, "TEXT", "only places with this in the name"))
        .addOption(
            Option.builder()
                .longOpt(YEAR)
                .hasArg()
                .optionalArg(true)
                .argName("YYYY")
                .desc("the book of a year, this one if left out")
                .get())
        .addOption(
            CommonOptions.withValue(
                null,
                FORMAT,
                "FORMAT",
                String.join(", ", FORMATS) + "; csv is for jarwright count"))
        .addOption(CommonOptions.withValue("o", OUT, "FILE.pdf", "print it: inventory or year"))
        .addOption(SheetOptions.language())
        .addOption(CommonOptions.withValue(null, TEMPLATES, "DIR", "your own templates first"))
        .addOption(CommonOptions.withValue(null, PlanRun.KITCHEN, "FILE", "the kitchen's file"));
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    String format = checked(call);
    Books books = Books.open(call);
    if (call.has(YEAR)) {
      ShelfYear.show(call, books, format);
    } else {
      stock(call, books, format);
    }
  }

  private static String checked(Call call) throws Usage {
    String format = call.value(FORMAT).orElse(FORMATS.get(0));
    if (!FORMATS.contains(format)) {
      throw new Usage("--format " + format + ": " + Nearest.remedy(format, FORMATS));
    }
    if (!call.arguments().isEmpty()) {
      throw new Usage(
          "shelf takes options only, not "
              + NamedJars.shown(call.arguments().get(0))
              + "; --place TEXT for one shelf");
    }
    if (call.has(OUT) && call.has(FORMAT)) {
      throw new Usage("-o prints a PDF; leave --format out, or the -o");
    }
    if (call.value(OUT).filter(f -> !f.toLowerCase(Locale.ROOT).endsWith(".pdf")).isPresent()) {
      throw new Usage("-o takes a file whose name ends in .pdf");
    }
    if (call.has(YEAR) && (call.has(DUE) || call.has(PLACE))) {
      throw new Usage("--year tells of the whole household; leave --due and --place out");
    }
    return format;
  }

  private static void stock(Call call, Books books, String format)
      throws Usage, Refused, IOException {
    Pantry pantry = books.pantry();
    remarks(call, pantry.remarks());
    Optional<String> place = call.value(PLACE);
    List<Jar> jars = pantry.here().filter(j -> place.isEmpty() || isAt(j, place.get())).toList();
    if (place.isPresent() && jars.isEmpty()) {
      throw new Refused(
          Place.wholeFile("--place " + NamedJars.shown(place.get())),
          "no jar stands at such a place",
          places(pantry));
    }
    List<StockLine> lines =
        StockLine.of(jars.stream(), books.now()).stream()
            .filter(l -> !call.has(DUE) || l.word().isDue())
            .toList();
    if (call.has(OUT)) {
      print(call, books, jars.stream().filter(j -> !call.has(DUE) || isDue(j, books)));
      return;
    }
    switch (format) {
      case "csv" -> call.out().print(ShelfListing.csv(lines));
      case "json" -> call.out().print(ShelfListing.json(lines));
      default -> text(call, books, pantry, lines);
    }
  }

  private static void remarks(Call call, List<Remark> remarks) {
    remarks.stream().limit(MOST_REMARKS).forEach(r -> call.tell("ledger.csv, " + r));
    if (remarks.size() > MOST_REMARKS) {
      call.tell("ledger.csv, " + (remarks.size() - MOST_REMARKS) + " more such remarks");
    }
  }

  private static boolean isDue(Jar jar, Books books) {
    return Advice.word(jar, books.now()).isDue();
  }

  private static boolean isAt(Jar jar, String place) {
    String wanted = place.strip().toLowerCase(Locale.ROOT);
    return Spot.of(jar.standing()).name().toLowerCase(Locale.ROOT).contains(wanted);
  }

  private static String places(Pantry pantry) {
    TreeSet<Spot> there = new TreeSet<>();
    pantry.here().forEach(j -> there.add(Spot.of(j.standing())));
    List<String> names = there.stream().map(Spot::name).filter(n -> !n.isEmpty()).toList();
    return names.isEmpty() ? "there are no named places" : "known: " + String.join(", ", names);
  }

  private static void text(Call call, Books books, Pantry pantry, List<StockLine> lines) {
    ShelfText text = new ShelfText(new VerdictText(Units.BOTH).wording(), lines);
    List<String> parts = new ArrayList<>();
    if (lines.isEmpty()) {
      parts.add(call.has(DUE) ? "Nothing is due this month or next.\n" : "You have no jars yet.\n");
    }
    parts.add(text.due());
    if (!call.has(DUE)) {
      parts.add(text.byPlace());
    }
    parts.add(unsealed(pantry));
    if (!lines.isEmpty()) {
      parts.add(
          ShelfText.jars(ShelfText.count(lines))
              + (call.has(DUE) ? " due" : " in the house")
              + " on "
              + books.now().toLocalDate()
              + "\n");
      parts.add(Help.CAUTION + "\n");
    }
    call.out().print(String.join("\n", parts.stream().filter(p -> !p.isEmpty()).toList()));
  }

  /** Lots of which nobody has recorded yet how they came out. */
  private static String unsealed(Pantry pantry) {
    List<String> lots =
        pantry.lots().stream()
            .filter(l -> !l.open().isEmpty())
            .map(Lot::code)
            .map(Object::toString)
            .toList();
    return lots.isEmpty()
        ? ""
        : Indented.of(
            "",
            "  ",
            "Results not recorded yet: " + String.join(", ", lots) + ". Run: jarwright seal LOT");
  }

  private static void print(Call call, Books books, Stream<Jar> jars)
      throws Usage, Refused, IOException {
    SheetOptions options = new SheetOptions(call, books.kitchen());
    ProductNames names = new ProductNames(options.words().language());
    ShelfSheet sheet = new ShelfSheet(options.words(), names::of);
    write(
        call,
        sheet.of(
            jars.filter(j -> !(j.standing() instanceof Standing.Planned)),
            books.kitchen().map(Kitchen::household).orElse(""),
            books.now(),
            options.paper()));
  }

  static void write(Call call, Sheet sheet) throws IOException {
    Path file = call.path(OUT).orElseThrow();
    PdfFile.write(file, sheet, call.path(TEMPLATES));
    call.tell("wrote " + file);
  }
}
