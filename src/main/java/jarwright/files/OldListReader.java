package jarwright.files;

import jarwright.lot.UseBy;
import jarwright.pantry.LotFacts;
import jarwright.pantry.OldJars;
import jarwright.pantry.OldList;
import jarwright.pantry.Ticked;
import jarwright.pantry.ToldProcess;
import jarwright.pantry.Vouched;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.AcidKind;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.Product;
import jarwright.quantity.Altitude;
import jarwright.quantity.GaugePressure;
import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * Reads a list of jars that were not made with the program, a row for those that are alike.
 *
 * <p>Columns: {@code product} and {@code jars}, how many, are needed. What is known besides: {@code
 * size} as the process tables name it, {@code pack}, {@code packed} (a day, a month as 2025-08 or a
 * year), {@code use-by}, {@code shelf}, {@code from}, {@code lids}, {@code process} (in words) and
 * {@code note}. Where somebody vouches for the jars: {@code vouched-by} and {@code source}, and
 * what is compared with the tables: {@code method}, {@code minutes}, {@code pressure}, {@code
 * altitude} and {@code acid}.
 */
public final class OldListReader {
  /** All columns. */
  public static final List<String> COLUMNS =
      List.of(
          "product",
          "jars",
          "size",
          "pack",
          "packed",
          "use-by",
          "shelf",
          "from",
          "lids",
          "process",
          "note",
          "vouched-by",
          "source",
          "method",
          "minutes",
          "pressure",
          "altitude",
          "acid");

  private static final List<String> TOLD = List.of("minutes", "pressure", "altitude", "acid");
  private static final int MOST_JARS = 9_999;
  private static final int MOST_MINUTES = 999;
  private static final Pattern YEAR = Pattern.compile("\\d{4}");
  private static final Pattern MONTH = Pattern.compile("\\d{4}-\\d{2}");
  private static final String DATES = "write 2025-08-24, 2025-08 or 2025, or leave it empty";

  private final Map<String, Product> products;
  private final LocalDate today;
  private final int months;
  private final Problems problems = new Problems();

  private record Days(LocalDate first, LocalDate last, String said) {}

  private OldListReader(Map<String, Product> products, LocalDate today, int months) {
    this.products = products;
    this.today = today;
    this.months = months;
  }

  /**
   * Reads a file.
   *
   * @param products those of the tables by what they may be called: small id and small name
   * @param months to the use-by date where the list gives none
   * @throws Refused with every problem in it
   */
  public static List<OldJars> read(
      Path file, Map<String, Product> products, LocalDate today, int months)
      throws IOException, Refused {
    return new OldListReader(products, today, months).rows(TextFile.read(file));
  }

  private List<OldJars> rows(TextFile file) throws Refused {
    List<OldJars> rows = new ArrayList<>();
    List<Written> items = CsvTree.read(file, COLUMNS, Map.of(), problems).items();
    for (Written row : items) {
      row(new Fields((Written.Keys) row, "a row", COLUMNS, Map.of(), problems))
          .ifPresent(rows::add);
    }
    if (items.isEmpty() && problems.isEmpty()) {
      problems.add(file.at(1, 1), "there is no row below the header", "write a row for each food");
    }
    problems.refuse();
    return rows;
  }

  private Optional<OldJars> row(Fields fields) {
    RecordWords words = new RecordWords(fields);
    fields.require("product", "write what is in the jars");
    fields.require("jars", "write how many jars there are");
    Optional<String> product = words.text("product");
    OptionalInt jars = fields.count("jars", 1, MOST_JARS);
    Optional<JarSize> size = fields.word("size", JarSize::named, JarSize.ids());
    Optional<Pack> pack = fields.word("pack", Pack::named, Pack.choices());
    Optional<Days> packed = words.read("packed", OldListReader::days, DATES);
    Optional<LocalDate> said = ClockWord.date(fields, "use-by");
    check(fields, packed, said);
    Optional<Vouched> vouched = vouched(fields, words);
    if (product.isEmpty() || jars.isEmpty()) {
      return Optional.empty();
    }
    Optional<Product> known = Optional.ofNullable(products.get(Fields.plain(product.get())));
    Optional<LocalDate> worked = packed.map(d -> UseBy.after(d.first(), months).date());
    LotFacts facts =
        new LotFacts(
            known.map(Product::id).orElse(product.get()),
            known.map(Product::name).orElse(product.get()),
            pack.map(Pack::id).orElse(""),
            size.map(JarSize::id).orElse(""),
            packed.map(Days::first),
            said.or(() -> worked),
            words.text("shelf").orElse(""),
            words.text("from").orElse(""),
            words.text("lids").orElse(""),
            words.text("note").orElse(""),
            false);
    return Optional.of(
        new OldJars(
            facts,
            packed.map(Days::last),
            said.isPresent(),
            process(words.text("process").or(() -> way(fields)), packed),
            vouched,
            jars.getAsInt()));
  }

  /** A method that is none of the program's is kept in words, by which it may be refused. */
  private static Optional<String> way(Fields fields) {
    return fields.text("method").filter(t -> method(fields).isEmpty());
  }

  private static Optional<Method> method(Fields fields) {
    return fields
        .plainWord("method")
        .flatMap(w -> w.contains("bath") ? Optional.of(Method.BOILING_WATER) : Method.named(w));
  }

  private Optional<Vouched> vouched(Fields fields, RecordWords words) {
    OptionalInt minutes = fields.count("minutes", 1, MOST_MINUTES);
    ToldProcess told =
        new ToldProcess(
            method(fields),
            minutes.isPresent() ? Optional.of(minutes.getAsInt()) : Optional.empty(),
            words.read("pressure", GaugePressure::parse, "write it like 11 psi"),
            words.read("altitude", Altitude::parse, "write it like 420 m or 1,400 ft"),
            acid(fields, words));
    Optional<String> who = words.text("vouched-by");
    Optional<String> source = words.text("source");
    if (who.isPresent() && source.isPresent()) {
      return Optional.of(new Vouched(who.get(), source.get(), told));
    }
    if (who.isPresent() || source.isPresent()) {
      fields.problem(
          who.isPresent() ? "vouched-by" : "source",
          "somebody vouches for jars by a name and a source",
          "fill in both: who says it in vouched-by, and which tested process in source");
    } else {
      TOLD.stream()
          .filter(fields::has)
          .findFirst()
          .ifPresent(
              key ->
                  fields.problem(
                      key,
                      "it is compared with the tables only where somebody vouches for it",
                      "fill in vouched-by and source too, or write it under process"));
    }
    return Optional.empty();
  }

  private static Ticked acid(Fields fields, RecordWords words) {
    Optional<String> word = fields.plainWord("acid");
    boolean named = word.flatMap(w -> AcidKind.named(w.replace('-', ' '))).isPresent();
    return named ? Ticked.YES : words.ticked("acid");
  }

  /** What is known in words; a month or a year would else be lost, since its first day is kept. */
  private static String process(Optional<String> process, Optional<Days> packed) {
    String when =
        packed
            .filter(d -> !d.first().equals(d.last()))
            .map(d -> "packed in " + d.said())
            .orElse("");
    String how = process.map(p -> "process: " + p).orElse("");
    return when + (when.isEmpty() || how.isEmpty() ? "" : "; ") + how;
  }

  private void check(Fields fields, Optional<Days> packed, Optional<LocalDate> useBy) {
    if (packed.isPresent() && packed.get().first().isAfter(today)) {
      fields.problem("packed", "lies ahead of today, " + today, "write when they were packed");
    }
    if (packed.isPresent() && useBy.isPresent() && useBy.get().isBefore(packed.get().first())) {
      fields.problem("use-by", "lies before the day of packing", "one of the two is mistyped");
    }
    if (packed.isPresent()
        && useBy.isPresent()
        && useBy.get().isAfter(UseBy.after(packed.get().last(), UseBy.MOST_MONTHS).date())) {
      fields.problem(
          "use-by",
          "is more than " + UseBy.MOST_MONTHS + " months after the day of packing",
          "leave it empty for " + months + " months");
    }
  }

  private static Days days(String text) {
    try {
      if (YEAR.matcher(text).matches()) {
        LocalDate first = LocalDate.of(Integer.parseInt(text), 1, 1);
        return kept(new Days(first, first.plusYears(1).minusDays(1), text));
      }
      if (MONTH.matcher(text).matches()) {
        YearMonth month = YearMonth.parse(text);
        return kept(new Days(month.atDay(1), month.atEndOfMonth(), text));
      }
    } catch (DateTimeException e) {
      throw noDate(text, e);
    }
    LocalDate day = day(text);
    return kept(new Days(day, day, text));
  }

  private static Days kept(Days days) {
    if (days.first().isBefore(OldList.DAY_NOT_KNOWN)) {
      throw new IllegalArgumentException(
          "\"" + days.said() + "\" lies before 2000: such jars are not to be eaten");
    }
    return days;
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw noDate(text, e);
    }
  }

  private static IllegalArgumentException noDate(String text, DateTimeException cause) {
    return new IllegalArgumentException("\"" + Fields.shown(text) + "\" is no date", cause);
  }
}
