package jarwright.files;

import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.Aisle;
import jarwright.process.Buying;
import jarwright.process.Pack;
import jarwright.process.Purchase;
import jarwright.process.Supply;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Volume;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads how things are bought: the ingredients of formulas, the published weights of a cup of food
 * cut up, and what products take besides.
 */
public final class BuyingTables {
  private static final String INGREDIENTS = "buying.csv";
  private static final String WEIGHTS = "cup-weights.csv";
  private static final String SUPPLIES = "supplies.csv";
  private static final String ANY = "any";
  private static final Fraction HUNDRED = Fraction.of(100);

  private final Problems faults = new Problems();
  private final Map<String, Purchase.Weighing> weighings = new HashMap<>();

  private BuyingTables() {}

  /**
   * The tables that are part of the program.
   *
   * @throws Refused with every fault found in them, worded as the program's own
   * @throws IOException where the program's own file is damaged
   */
  public static Buying read() throws IOException, Refused {
    return new BuyingTables().all();
  }

  private Buying all() throws IOException, Refused {
    TableText weights = table(WEIGHTS, "form", "measure", "weight", "refuse_percent", "source");
    weights.read(this::weighing);
    Map<String, Purchase> purchases = new HashMap<>();
    TableText ingredients = table(INGREDIENTS, "ingredient", "buy", "aisle", "weighed_as", "piece");
    ingredients.read(row -> purchase(row, purchases));
    List<Supply> supplies =
        table(SUPPLIES, "product_id", "pack", "buy", "aisle", "amount", "per", "optional", "source")
            .read(BuyingTables::supply);
    faults.refuse();
    return new Buying(purchases, supplies);
  }

  private TableText table(String file, String... columns) throws IOException {
    return new TableText(file, ProcessTables.resource(file), List.of(columns), faults);
  }

  /** What is bought is more than what is measured by the part that is refuse. */
  private Purchase.Weighing weighing(TableText.Row row) {
    String measure = row.get("measure");
    String unit = measure.substring(measure.lastIndexOf(' ') + 1);
    Purchase.Measured measured =
        Volume.Unit.named(unit).isPresent()
            ? new Purchase.Measured.ByVolume(Volume.parse(measure))
            : new Purchase.Measured.ByMass(Mass.parse(measure));
    Fraction used = HUNDRED.minus(Fraction.of(row.number("refuse_percent"))).dividedBy(HUNDRED);
    Mass bought = Mass.parse(row.get("weight")).times(Fraction.ONE.dividedBy(used));
    Purchase.Weighing weighing = new Purchase.Weighing(measured, bought);
    if (weighings.put(row.get("form"), weighing) != null || row.get("source").isEmpty()) {
      throw new IllegalArgumentException("a form stands twice, or has no source");
    }
    return weighing;
  }

  private Purchase purchase(TableText.Row row, Map<String, Purchase> purchases) {
    boolean nothing = row.get("buy").isEmpty();
    String form = row.get("weighed_as");
    if (!form.isEmpty() && !weighings.containsKey(form)) {
      throw new IllegalArgumentException("no weight is printed for \"" + form + "\"");
    }
    Purchase purchase =
        new Purchase(
            row.get("buy"),
            nothing ? Aisle.GROCERY : row.word("aisle", Aisle::named, Aisle.ids()),
            Optional.ofNullable(weighings.get(form)),
            piece(row.get("piece")));
    if (purchases.put(row.get("ingredient"), purchase) != null) {
      throw new IllegalArgumentException("an ingredient stands twice");
    }
    return purchase;
  }

  private static Optional<Purchase.Piece> piece(String cell) {
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    int word = cell.lastIndexOf(' ');
    return Optional.of(
        new Purchase.Piece(
            word < 0 ? Optional.empty() : Optional.of(Mass.parse(cell.substring(0, word))),
            cell.substring(word + 1)));
  }

  private static Supply supply(TableText.Row row) {
    String amount = row.get("amount");
    Supply.Per per = per(row.get("per"));
    boolean share = per == Supply.Per.SHARE;
    Optional<Mass> mass =
        per == Supply.Per.WEIGHT
            ? Optional.of(Mass.parse(row.get("per")))
            : Optional.of(amount).filter(a -> a.endsWith("lb")).map(Mass::parse);
    return new Supply(
        row.get("product_id"),
        row.get("pack").equals(ANY)
            ? Optional.empty()
            : Optional.of(row.word("pack", Pack::named, Pack.choices())),
        row.get("buy"),
        row.word("aisle", Aisle::named, Aisle.ids()),
        per,
        share ? Fraction.parse(amount) : Fraction.ONE,
        Optional.of(amount)
            .filter(a -> !a.isEmpty() && !share && !a.endsWith("lb"))
            .map(Volume::parse),
        mass,
        !row.get("optional").isEmpty());
  }

  private static Supply.Per per(String cell) {
    return switch (cell) {
      case "share" -> Supply.Per.SHARE;
      case "quart" -> Supply.Per.QUART;
      case "jar" -> Supply.Per.JAR;
      case "gallon" -> Supply.Per.GALLON;
      case "cover" -> Supply.Per.COVER;
      case "enough" -> Supply.Per.ENOUGH;
      case "jars" -> Supply.Per.JARS;
      case "taste" -> Supply.Per.TASTE;
      default -> Supply.Per.WEIGHT;
    };
  }
}
