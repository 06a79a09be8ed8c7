package jarwright.day;

import jarwright.batch.Batch;
import jarwright.batch.BatchReckoner;
import jarwright.files.GelPointTable;
import jarwright.files.ProcessTables;
import jarwright.files.StepTables;
import jarwright.lot.LotCode;
import jarwright.page.Wording;
import jarwright.plan.Amount;
import jarwright.plan.BatchPlan;
import jarwright.plan.Canner;
import jarwright.plan.Cover;
import jarwright.plan.Kitchen;
import jarwright.plan.Paper;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.AcidKind;
import jarwright.process.GelPoints;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.PreparationStep;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.quantity.Altitude;
import jarwright.quantity.Fraction;
import jarwright.quantity.GaugePressure;
import jarwright.quantity.Length;
import jarwright.quantity.Mass;
import jarwright.quantity.Units;
import jarwright.render.WordBundle;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A batch of an invented household, as a plan would ask for it: one load of jars unless said
 * otherwise, acid where the tables require it.
 */
public final class PlannedBatch {
  private static final ProcessBook BOOK = load(() -> ProcessTables.ofProgram().book());
  private static final GelPoints GEL = load(GelPointTable::read);
  private static final Map<String, List<PreparationStep>> STEPS = new HashMap<>();
  public static final Wording WORDS = WordBundle.load("en");
  public static final LocalDate DAY = LocalDate.of(2026, 8, 24);

  private final Product product;
  private final Method method;
  private Optional<Pack> pack = Optional.empty();
  private JarSize jar = JarSize.PINT;
  private int jars;
  private Optional<Mass> produce = Optional.empty();
  private Optional<AcidKind> acid;
  private Optional<GaugePressure> pressure = Optional.empty();
  private Optional<Cover> cover = Optional.empty();
  private Optional<Boolean> salt = Optional.empty();
  private Optional<Figure> water = Optional.empty();
  private Altitude altitude = Altitude.metres(420);
  private Units units = Units.BOTH;

  private PlannedBatch(String product, Method method) {
    this.product = BOOK.product(product).orElseThrow();
    this.method = method;
    this.acid = this.product.acid().choices().stream().findFirst();
  }

  public static ProcessBook book() {
    return BOOK;
  }

  public static PlannedBatch of(String product, Method method, Pack pack, JarSize jar) {
    PlannedBatch batch = new PlannedBatch(product, method);
    batch.pack = Optional.of(pack);
    batch.jar = jar;
    batch.jars = capacity(jar);
    return batch;
  }

  public PlannedBatch jars(int count) {
    jars = count;
    return this;
  }

  /** So much produce instead of jars. */
  public PlannedBatch produce(String weight) {
    produce = Optional.of(Mass.parse(weight));
    return this;
  }

  public PlannedBatch at(String where) {
    altitude = Altitude.parse(where);
    return this;
  }

  public PlannedBatch acid(AcidKind kind) {
    acid = Optional.of(kind);
    return this;
  }

  public PlannedBatch pressure(Optional<GaugePressure> held) {
    pressure = held;
    return this;
  }

  public PlannedBatch cover(String id) {
    cover = Cover.named(id);
    return this;
  }

  public PlannedBatch salted() {
    salt = Optional.of(true);
    return this;
  }

  public PlannedBatch shownIn(Units shown) {
    units = shown;
    return this;
  }

  public PlannedBatch water(Figure toPutIn) {
    water = Optional.of(toPutIn);
    return this;
  }

  /** The batch, which every case here has. */
  public Batch batch() {
    Problems problems = new Problems();
    Optional<Batch> batch =
        new BatchReckoner(BOOK, kitchen()).reckon(plan(), new LotCode(DAY, 'A'), problems);
    return batch.orElseThrow(() -> new AssertionError(problems.list().toString()));
  }

  /** Its checklist, in English. */
  public List<Section> sections() {
    return sections(WORDS);
  }

  public List<Section> sections(Wording words) {
    String language = words.language();
    List<PreparationStep> steps =
        STEPS.computeIfAbsent(
            language + " " + product.id(), id -> load(() -> StepTables.read(product, language)));
    CannerFigures canner = new CannerFigures(loads(), water);
    return new Checklist(batch(), steps, GEL, canner, words).sections();
  }

  private List<Integer> loads() {
    List<Integer> loads = new ArrayList<>();
    for (int left = jars; left > 0; left -= capacity(jar)) {
      loads.add(Math.min(capacity(jar), left));
    }
    return loads;
  }

  private static int capacity(JarSize jar) {
    return jar.compareTo(JarSize.PINT) > 0 ? 7 : 9;
  }

  private BatchPlan plan() {
    return new BatchPlan(
        "sheet",
        1,
        Map.of("", new Place("sheet.yaml", 1, 1, "")),
        product,
        pack,
        jar,
        produce.<Amount>map(Amount.Produce::new).orElseGet(() -> new Amount.Jars(jars)),
        Optional.of(method),
        pressure,
        acid,
        salt,
        cover,
        DAY,
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        new BatchPlan.Notes("", "", "", ""));
  }

  private Kitchen kitchen() {
    List<Canner> canners =
        Stream.of(Method.values())
            .map(
                m ->
                    new Canner(
                        m.id(),
                        m,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalInt.empty(),
                        Optional.empty(),
                        Map.of(),
                        List.of()))
            .toList();
    return new Kitchen(
        "Fernhollow kitchen",
        altitude,
        Paper.LETTER,
        units,
        "en",
        canners,
        Optional.empty(),
        Length.millimetres(0),
        Length.millimetres(0),
        Fraction.ONE,
        Optional.empty(),
        12,
        OptionalInt.empty(),
        Optional.empty());
  }

  private interface Reading<T> {
    T read() throws IOException, Refused;
  }

  private static <T> T load(Reading<T> reading) {
    try {
      return reading.read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (Refused e) {
      throw new AssertionError(e.problems().toString(), e);
    }
  }
}
