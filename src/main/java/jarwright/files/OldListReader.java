package jarwright.files;

import jarwright.lot.UseBy;
import jarwright.pantry.LotFacts;
import jarwright.pantry.OldJars;
import jarwright.pantry.OldList;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.JarSize;
import jarwright.process.Pack;
import jarwright.process.Product;
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
 * year), {@code use-by}, {@code shelf}, {@code from}, {@code lids}, {@code process} (in words;
 * nobody vouches for it) and {@code note}.
 */
public final class OldListReader {
  /** All columns. */
  public static final List<String> COLUMNS =
      List.of(
          "product", "jars", "size", "pack", "packed", "use-by", "shelf", "from", "lids", "process",
          "note");

  private static final int MOST_JARS = 9_999;
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
            process(words.text("process"), packed),
            jars.getAsInt()));
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
