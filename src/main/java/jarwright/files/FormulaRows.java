package jarwright.files;

import jarwright.process.Formula;
import jarwright.process.FormulaLine;
import jarwright.process.JarSize;
import jarwright.process.JarYield;
import jarwright.quantity.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads recipes.csv: the rows of a product with the same yield are one formula. */
final class FormulaRows {
  static final List<String> COLUMNS =
      List.of("product_id", "yield_text", "ingredient", "quantity", "unit", "note");

  private static final Pattern YIELD =
      Pattern.compile(
          "(?:about )?(\\d{1,2})(?: (?:to|or) (\\d{1,2}))? (?:wide-mouth )?"
              + "(half-pint|pint|quart|12-ounce)(?:s| jars?)?(?: from 4 cups of juice)?");

  /** Formulas whose jars the guide does not count. */
  private static final List<String> UNCOUNTED =
      List.of("", "per quart of soft jelly", "per gallon of container");

  private static final Pattern QUANTITY =
      Pattern.compile("(\\d+(?:-\\d/\\d)?|\\d/\\d)(?:(?: to |-)(\\d+(?:-\\d/\\d)?))?");
  private static final String TO_TASTE = "to taste";
  private static final Map<String, String> UNITS_ALIKE =
      Map.of("cups", "cup", "quart", "qt", "quarts", "qt", "pieces", "piece");
  private static final List<String> UNITS =
      List.of(
          "tsp", "Tbsp", "cup", "pint", "qt", "gal", "oz", "lb", "each", "clove", "stick", "drop",
          "head", "can", "box", "cube", "piece", "pouch", "per jar");

  private record Key(String product, String yield) {
    /** By hand, as {@link #hashCode}: at every start, what Java makes for a record costs more. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Key that && product.equals(that.product) && yield.equals(that.yield);
    }

    @Override
    public int hashCode() {
      return product.hashCode() * 31 + yield.hashCode();
    }
  }

  private FormulaRows() {}

  static List<Formula> formulas(TableText table) {
    Map<Key, List<FormulaLine>> lines = new LinkedHashMap<>();
    table.read(
        row ->
            lines
                .computeIfAbsent(
                    new Key(row.get("product_id"), row.get("yield_text")), k -> new ArrayList<>())
                .add(line(row)));
    return table.read(FormulaRows::key).stream()
        .distinct()
        .map(
            key ->
                new Formula(
                    key.product(),
                    key.yield(),
                    jars(key.yield()),
                    lines.getOrDefault(key, List.of())))
        .toList();
  }

  private static Key key(TableText.Row row) {
    Key key = new Key(row.get("product_id"), row.get("yield_text"));
    jars(key.yield());
    return key;
  }

  private static Optional<JarYield> jars(String text) {
    if (UNCOUNTED.contains(text)) {
      return Optional.empty();
    }
    Matcher yield = YIELD.matcher(text);
    if (!yield.matches()) {
      throw new IllegalArgumentException(
          "yield_text \"" + text + "\" is not like \"about 8 to 9 pints\" nor one of " + UNCOUNTED);
    }
    int fewest = Integer.parseInt(yield.group(1));
    int most = yield.group(2) == null ? fewest : Integer.parseInt(yield.group(2));
    return Optional.of(new JarYield(fewest, most, JarSize.named(yield.group(3)).orElseThrow()));
  }

  private static FormulaLine line(TableText.Row row) {
    String ingredient = row.get("ingredient");
    if (ingredient.isBlank()) {
      throw new IllegalArgumentException("an amount of nothing");
    }
    String unit = UNITS_ALIKE.getOrDefault(row.get("unit"), row.get("unit"));
    if (!UNITS.contains(unit)) {
      throw new IllegalArgumentException("unit \"" + unit + "\" is none of " + UNITS);
    }
    String quantity = row.get("quantity");
    if (quantity.equals(TO_TASTE)) {
      return new FormulaLine(ingredient, Fraction.ZERO, Fraction.ZERO, unit, row.get("note"));
    }
    Matcher range = QUANTITY.matcher(quantity);
    if (!range.matches()) {
      throw new IllegalArgumentException(
          "quantity \"" + quantity + "\" is not like 1-1/2 or 2 to 3");
    }
    Fraction least = Fraction.parse(range.group(1));
    Fraction most = range.group(2) == null ? least : Fraction.parse(range.group(2));
    if (most.signum() == 0) {
      throw new IllegalArgumentException("quantity \"" + quantity + "\" is nothing");
    }
    return new FormulaLine(ingredient, least, most, unit, row.get("note"));
  }
}
