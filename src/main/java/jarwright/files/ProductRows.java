package jarwright.files;

import jarwright.process.ProduceNeed;
import jarwright.process.Product;
import jarwright.quantity.Fraction;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the rows of products.csv, each for itself. */
final class ProductRows {
  static final List<String> COLUMNS =
      List.of(
          "product_id",
          "name",
          "guide",
          "category",
          "headspace_in",
          "acid_per_pint",
          "acid_per_quart",
          "salt_per_quart",
          "lb_per_7_quarts",
          "lb_per_9_pints",
          "bushel_lb",
          "bushel_yield_qt_min",
          "bushel_yield_qt_max",
          "lb_per_quart",
          "prep",
          "note");
  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*+");
  private static final Pattern RANGE = Pattern.compile("([0-9.]+)(?:-([0-9.]+))?");

  /** Figures of products that are put up in pints only, which the quart columns cannot hold. */
  private static final Pattern PER_PINT = Pattern.compile("(?:^|; )lb_per_pint=([0-9.]+)");

  private static final Pattern PINT_YIELD =
      Pattern.compile("(?:^|; )bushel_yield_pt=(\\d+)-(\\d+)");

  private ProductRows() {}

  static Product product(TableText.Row row) {
    String id = row.get("product_id");
    if (!ID.matcher(id).matches()) {
      throw new IllegalArgumentException(
          "product_id \"" + id + "\" is not small-words-and-hyphens");
    }
    if (row.get("name").isBlank() || row.get("category").isBlank()) {
      throw new IllegalArgumentException("a product needs its name and category");
    }
    int guide = row.number("guide");
    if (guide < 2 || guide > 7) {
      throw new IllegalArgumentException("tables stand in guides 2 to 7, not " + guide);
    }
    return new Product(
        id,
        row.get("name"),
        guide,
        row.get("category"),
        ProductRules.headspace(row.get("headspace_in")),
        ProductRules.acid(row.get("acid_per_pint"), row.get("acid_per_quart")),
        ProductRules.salt(row.get("salt_per_quart")),
        produce(row),
        row.get("note"));
  }

  private static ProduceNeed produce(TableText.Row row) {
    Optional<Fraction> perPint = noted(PER_PINT, row).map(m -> Fraction.parse(m.group(1)));
    return new ProduceNeed(
        larger(row.get("lb_per_7_quarts")),
        larger(row.get("lb_per_9_pints")),
        larger(row.get("lb_per_quart")).or(() -> perPint.map(p -> p.times(2))),
        container(row));
  }

  /** The larger end of a printed range, so that nobody runs short. */
  private static Optional<Fraction> larger(String cell) {
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    Matcher range = RANGE.matcher(cell);
    if (!range.matches()) {
      throw new IllegalArgumentException("weight \"" + cell + "\" is not like 17.5 or 17-19");
    }
    Fraction from = positive(range.group(1));
    Fraction to = range.group(2) == null ? from : positive(range.group(2));
    if (to.compareTo(from) < 0) {
      throw new IllegalArgumentException("range \"" + cell + "\" is upside down");
    }
    return Optional.of(to);
  }

  private static Optional<ProduceNeed.Container> container(TableText.Row row) {
    List<String> cells =
        List.of(
            row.get("bushel_lb"), row.get("bushel_yield_qt_min"), row.get("bushel_yield_qt_max"));
    Optional<Matcher> pints = noted(PINT_YIELD, row);
    if (cells.stream().allMatch(String::isEmpty) && pints.isEmpty()) {
      return Optional.empty();
    }
    Fraction fewest = pints.map(m -> quarts(m.group(1))).orElseGet(() -> positive(cells.get(1)));
    Fraction most = pints.map(m -> quarts(m.group(2))).orElseGet(() -> positive(cells.get(2)));
    if (most.compareTo(fewest) < 0) {
      throw new IllegalArgumentException("the yield of a container is upside down");
    }
    return Optional.of(new ProduceNeed.Container(positive(cells.get(0)), fewest, most));
  }

  private static Fraction quarts(String pints) {
    return Fraction.parse(pints).dividedBy(Fraction.of(2));
  }

  private static Fraction positive(String cell) {
    Fraction value = Fraction.parse(cell);
    if (value.signum() <= 0) {
      throw new IllegalArgumentException("\"" + cell + "\" is nothing");
    }
    return value;
  }

  private static Optional<Matcher> noted(Pattern pattern, TableText.Row row) {
    return Optional.of(pattern.matcher(row.get("note"))).filter(Matcher::find);
  }
}
