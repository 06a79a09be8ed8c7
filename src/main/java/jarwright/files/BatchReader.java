package jarwright.files;

import jarwright.ask.Saying;
import jarwright.plan.Amount;
import jarwright.plan.BatchPlan;
import jarwright.plan.Cover;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.AcidKind;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.Product;
import jarwright.quantity.GaugePressure;
import jarwright.quantity.Mass;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Reads one batch of a plan. */
final class BatchReader {
  static final String PRODUCT = "product";
  static final List<String> KEYS =
      List.of(
          PRODUCT,
          "pack",
          "jar",
          "jars",
          "produce",
          "method",
          "pressure",
          "acid",
          "salt",
          "syrup",
          "date",
          "start",
          "finish",
          "hands",
          "canner",
          "from",
          "shelf",
          "lids",
          "note");
  static final Map<String, String> OF_THE_KITCHEN =
      KitchenReader.KEYS.stream()
          .collect(
              Collectors.toMap(
                  k -> k, k -> "write it under kitchen: in the plan, or into kitchen.yaml"));
  private static final int MOST_HANDS = 20;

  private final ProductFinder products;
  private final PlanWords words;
  private final boolean soundKitchen;
  private final Problems problems;

  /**
   * @param soundKitchen whether the kitchen was understood; else what is wrong with its canners has
   *     been told
   */
  BatchReader(ProductFinder products, PlanWords words, boolean soundKitchen, Problems problems) {
    this.products = products;
    this.words = words;
    this.soundKitchen = soundKitchen;
    this.problems = problems;
  }

  /**
   * The batch, or none where anything in it was not understood.
   *
   * @param plan name of the plan's file, without its folder
   * @param kitchen places of the kitchen's keys
   */
  Optional<BatchPlan> read(
      Written.Keys written, String plan, int position, Map<String, Place> kitchen)
      throws IOException, Refused {
    int before = problems.count();
    Fields fields = new Fields(written, "a batch", KEYS, OF_THE_KITCHEN, problems);
    fields.require(PRODUCT, "write product: and what it is, as plums-halved-or-whole");
    fields.require("jar", "write jar: pint or jar: quart");
    fields.require("date", "write the day of packing, like date: 2026-08-24");
    Optional<Product> product = products.find(fields, PRODUCT);
    Optional<Pack> pack = PackWord.read(fields, "pack", words);
    Optional<JarSize> jar = new JarWord(words).read(fields, "jar");
    Optional<Amount> amount = amount(fields);
    Optional<Method> method = MethodWord.read(fields, "method", words);
    Optional<GaugePressure> pressure = fields.amount("pressure", GaugePressure::parse, "10 psi");
    Optional<AcidKind> acid = AcidWord.read(fields, "acid", words);
    Optional<Boolean> salt = fields.yesOrNo("salt");
    Optional<Cover> cover =
        words.word(fields, "syrup", Saying.Sense.COVER, Cover::named, Cover.ids());
    Optional<LocalDate> date = ClockWord.date(fields, "date");
    Optional<LocalTime> start = ClockWord.time(fields, "start");
    Optional<LocalTime> finish = ClockWord.time(fields, "finish");
    if (start.isPresent() && finish.isPresent() && !finish.get().isAfter(start.get())) {
      fields.problem(
          "finish",
          finish.get() + " is not after the start at " + start.get(),
          "a batch starts and ends on its date; leave one of the two out");
    }
    OptionalInt hands = fields.count("hands", 1, MOST_HANDS);
    Optional<String> canner =
        soundKitchen ? CannerWord.read(fields, "canner") : fields.text("canner");
    BatchPlan.Notes notes =
        new BatchPlan.Notes(
            fields.text("from").orElse(""),
            fields.text("shelf").orElse(""),
            fields.text("lids").orElse(""),
            fields.text("note").orElse(""));
    boolean misread = problems.count() > before;
    if (misread || product.isEmpty() || jar.isEmpty() || amount.isEmpty() || date.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Place> places = fields.places();
    kitchen.forEach(places::putIfAbsent);
    return Optional.of(
        new BatchPlan(
            plan,
            position,
            places,
            product.get(),
            pack,
            jar.get(),
            amount.get(),
            method,
            pressure,
            acid,
            salt,
            cover,
            date.get(),
            start,
            finish,
            hands,
            canner,
            notes));
  }

  private Optional<Amount> amount(Fields fields) {
    if (fields.has("jars") == fields.has("produce")) {
      if (fields.has("jars")) {
        fields.problem(
            "produce", "a batch has jars: or produce:, and this one has both", "keep one of them");
      } else {
        problems.add(
            fields.place(), "the batch does not say how much", "add jars: 14 or produce: 18 kg");
      }
    }
    OptionalInt jars = fields.count("jars", 1, Amount.MOST_JARS);
    Optional<Mass> produce = fields.amount("produce", Mass::parse, "18 kg or 40 lb");
    if (produce.isPresent() && produce.get().amount().signum() <= 0) {
      fields.problem("produce", "takes more than nothing", "write it like 18 kg");
      return Optional.empty();
    }
    if (jars.isPresent()) {
      return Optional.of(new Amount.Jars(jars.getAsInt()));
    }
    return produce.map(Amount.Produce::new);
  }
}
