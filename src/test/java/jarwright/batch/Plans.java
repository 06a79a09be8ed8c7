package jarwright.batch;

import jarwright.lot.LotCode;
import jarwright.plan.Amount;
import jarwright.plan.BatchPlan;
import jarwright.plan.Canner;
import jarwright.plan.Cover;
import jarwright.plan.Kitchen;
import jarwright.plan.Paper;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import jarwright.problem.Problems;
import jarwright.process.AcidKind;
import jarwright.process.Book;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.quantity.Altitude;
import jarwright.quantity.Fraction;
import jarwright.quantity.GaugePressure;
import jarwright.quantity.Length;
import jarwright.quantity.Mass;
import jarwright.quantity.Units;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** A plan of an invented household, written key by key as its file would be. */
final class Plans {
  static final LocalDate DAY = LocalDate.of(2026, 8, 24);
  static final LotCode LOT = new LotCode(DAY, 'A');
  static final Canner BIG_POT = canner("big pot", Method.BOILING_WATER);
  static final Canner DIAL_POT = canner("dial pot", Method.DIAL_GAUGE);
  static final Canner WEIGHT_POT = canner("weight pot", Method.WEIGHTED_GAUGE);

  private final Map<String, String> keys;
  private final List<Canner> canners;

  private Plans(Map<String, String> keys, List<Canner> canners) {
    this.keys = keys;
    this.canners = canners;
  }

  /**
   * @param keys {@code key: value} separated by semicolons, as {@code product: figs; jar: pint};
   *     seven jars at 0 ft unless said
   */
  static Plans of(String keys, Canner... canners) {
    Map<String, String> written = new HashMap<>(Map.of("altitude", "0 ft", "months", "12"));
    for (String key : keys.split("; *")) {
      String[] parts = key.split(": *", 2);
      written.put(parts[0], parts[1]);
    }
    return new Plans(written, List.of(canners));
  }

  static Canner canner(String name, Method method, String... weights) {
    return new Canner(
        name,
        method,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        Map.of(),
        List.of(weights).stream().map(GaugePressure::parse).toList());
  }

  /** The batch, where nothing is wrong with the plan. */
  Batch batch() {
    Problems problems = new Problems();
    return reckon(problems).orElseThrow(() -> new AssertionError("refused: " + problems.list()));
  }

  /** {@code key: what. remedy} of every problem. */
  List<String> refusals() {
    Problems problems = new Problems();
    if (reckon(problems).isPresent() != problems.isEmpty()) {
      throw new AssertionError("a batch with problems, or neither: " + problems.list());
    }
    return problems.list().stream().map(Plans::line).toList();
  }

  private static String line(Problem problem) {
    return problem.where().text() + ": " + problem.what() + ". " + problem.remedy();
  }

  Optional<Batch> reckon(Problems problems) {
    return new BatchReckoner(Book.get(), kitchen()).reckon(plan(), LOT, problems);
  }

  private Kitchen kitchen() {
    return new Kitchen(
        "",
        Altitude.parse(keys.get("altitude")),
        Paper.A4,
        Units.BOTH,
        "en",
        canners,
        Optional.empty(),
        Length.millimetres(0),
        Length.millimetres(0),
        Fraction.ONE,
        Optional.empty(),
        Integer.parseInt(keys.get("months")),
        OptionalInt.empty(),
        Optional.empty());
  }

  private BatchPlan plan() {
    Map<String, Place> places = new HashMap<>();
    places.put("", new Place("plan.yaml", 1, 1, "batch"));
    keys.keySet().forEach(key -> places.put(key, new Place("plan.yaml", 1, 1, key)));
    return new BatchPlan(
        "plan",
        1,
        places,
        Book.product(keys.get("product")),
        key("pack").flatMap(Pack::named),
        JarSize.named(keys.get("jar")).orElseThrow(),
        amount(),
        key("method").flatMap(Method::named),
        key("pressure").map(GaugePressure::parse),
        key("acid").flatMap(AcidKind::named),
        key("salt").map(s -> s.equals("yes")),
        key("syrup").flatMap(Cover::named),
        DAY,
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        key("canner"),
        new BatchPlan.Notes("", "", "", ""));
  }

  private Amount amount() {
    return keys.containsKey("produce")
        ? new Amount.Produce(Mass.parse(keys.get("produce")))
        : new Amount.Jars(key("jars").map(Integer::parseInt).orElse(7));
  }

  private Optional<String> key(String name) {
    return Optional.ofNullable(keys.get(name));
  }
}
