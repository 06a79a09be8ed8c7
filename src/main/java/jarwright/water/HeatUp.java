package jarwright.water;

import jarwright.plan.Canner;
import jarwright.plan.Energy;
import jarwright.process.JarSize;
import jarwright.process.Pack;
import jarwright.quantity.Altitude;
import jarwright.quantity.Volume;
import java.util.Map;
import java.util.Optional;

/**
 * Estimates how long a canner takes to get hot: the heat that water, jars, food and pot take up,
 * over what the burner gives to the pot. Each figure is a range, and so is the answer.
 */
public final class HeatUp {
  /** kJ/(kg K): water, food from sweet corn to water, glass, pots of steel to aluminium. */
  private static final double WATER = 4.19;

  private static final Range FOOD = new Range(3.35, WATER);
  private static final double GLASS = 0.80;
  private static final Range POT = new Range(0.50, 0.90);

  /** kg; common practice. */
  private static final Range POT_MASS = new Range(1.5, 5);

  private static final Range PRESSURE_CANNER_MASS = new Range(3, 9);

  /** Grams of glass for a millilitre of content where no mass is published: from the quart jar. */
  private static final Range GLASS_FOR_ML = new Range(0.42, 0.54);

  /** Which part of the food has warmed through when the water boils; common practice. */
  private static final Range WARMED = new Range(0.3, 0.7);

  /** Heat lost over the water and the sides on the way; common practice. */
  private static final Range LOSS = new Range(1.0, 1.2);

  /** Part of a burner's power that reaches the pot: two published tables for each, which differ. */
  private static final Map<Energy, Range> EFFICIENCY =
      Map.of(
          Energy.ELECTRIC, new Range(0.74, 0.80),
          Energy.INDUCTION, new Range(0.84, 0.90),
          Energy.GAS, new Range(0.40, 0.44));

  private static final Range ANY_EFFICIENCY = new Range(0.40, 0.90);

  /** kW; common practice below, and above it a burner can harm the canner (USDA). */
  private static final Range ANY_POWER = new Range(1.2, 3.5);

  /** AIB 539 (2015) Guide 1: 140 °F for raw pack, 180 °F for hot pack. */
  private static final double PREHEAT_RAW = 60;

  private static final double PREHEAT_HOT = 82.2;

  /** °C; common practice: what comes from the tap, and food in the filled jar. */
  private static final Range TAP = new Range(10, 25);

  private static final Range RAW_FOOD = new Range(20, 60);
  private static final Range HOT_FOOD = new Range(75, 95);

  /** USDA: a pressure canner steams after 12 to 15 minutes and cools down in 20 to 60. */
  private static final Estimate TO_STEAM = new Estimate(12, 15);

  private static final Estimate TO_PRESSURE = new Estimate(3, 5);
  private static final Estimate COOL_DOWN = new Estimate(20, 60);

  /** Litres; common practice. */
  private static final Range ANY_WATER = new Range(7, 14);

  private static final Range ANY_PRESSURE_WATER = new Range(2.5, 5);

  private static final double SECONDS = 60;
  private static final double GRAMS = 1_000;
  private static final double MILLILITRES = 1_000;
  private static final double WATTS = 1_000;

  private final JarBook jars;

  public HeatUp(JarBook jars) {
    this.jars = jars;
  }

  /** Whether an estimate for the canner has to assume its power or what heats it. */
  public static boolean assumesPower(Canner canner) {
    return canner.watts().isEmpty() || canner.energy().isEmpty();
  }

  /**
   * Litres of water in a canner that is filled as advised; where that could not be reckoned, from
   * the least to the most that the usual canners hold.
   */
  public static Range litres(WaterAdvice advice) {
    return advice.fold(
        covering ->
            new Range(litres(covering.before()), litres(covering.before().plus(covering.kettle()))),
        tooShallow -> ANY_WATER,
        unmeasured -> ANY_WATER,
        pressure ->
            pressure
                .volumes()
                .map(v -> new Range(litres(v.from()), litres(v.to())))
                .orElse(ANY_PRESSURE_WATER));
  }

  private static double litres(Volume volume) {
    return Doubles.of(volume.inMillilitres()) / MILLILITRES;
  }

  /** From tap water to the temperature at which jars of the pack go in. */
  public Estimate preheat(Canner canner, Range waterLitres, Pack pack) {
    double to = pack == Pack.RAW ? PREHEAT_RAW : PREHEAT_HOT;
    Range kilojoules =
        new Range(
            filled(canner, waterLitres).low() * (to - TAP.high()),
            filled(canner, waterLitres).high() * (to - TAP.low()));
    return minutes(kilojoules, canner);
  }

  /**
   * From loading to a full rolling boil; for a pressure canner to a steady jet of steam, for which
   * never less than the published planning figure is reckoned.
   *
   * @param standing jars in the canner
   */
  public Estimate toBoil(
      Canner canner, Range waterLitres, JarSize jar, int standing, Pack pack, Altitude altitude) {
    double boiling = BoilingPoint.celsius(altitude);
    double water = pack == Pack.RAW ? PREHEAT_RAW : PREHEAT_HOT;
    Range food = pack == Pack.RAW ? RAW_FOOD : HOT_FOOD;
    Range glass = glassKilograms(jar);
    double content = Doubles.of(jar.volume().inMillilitres()) / MILLILITRES;
    Range kilojoules =
        new Range(
            LOSS.low()
                * (heat(filled(canner, waterLitres).low(), water, boiling)
                    + heat(standing * GLASS * glass.low(), water, boiling)
                    + heat(standing * FOOD.low() * content * WARMED.low(), food.high(), boiling)),
            LOSS.high()
                * (heat(filled(canner, waterLitres).high(), water, boiling)
                    + heat(standing * GLASS * glass.high(), food.low(), boiling)
                    + heat(standing * FOOD.high() * content * WARMED.high(), food.low(), boiling)));
    Estimate physics = minutes(kilojoules, canner);
    return canner.method().isPressure()
        ? new Estimate(
            Math.max(physics.min(), TO_STEAM.min()), Math.max(physics.max(), TO_STEAM.max()))
        : physics;
  }

  /** From the weight on to the pressure of the process. */
  public static Estimate toPressure() {
    return TO_PRESSURE;
  }

  /** From heat off to no pressure, nothing done to hasten it. */
  public static Estimate coolDown() {
    return COOL_DOWN;
  }

  /** kJ/K of a canner and its water. */
  private static Range filled(Canner canner, Range litres) {
    Range mass = canner.method().isPressure() ? PRESSURE_CANNER_MASS : POT_MASS;
    return new Range(
        WATER * litres.low() + POT.low() * mass.low(),
        WATER * litres.high() + POT.high() * mass.high());
  }

  private Range glassKilograms(JarSize jar) {
    Optional<Range> grams = jars.of(jar).flatMap(JarDimensions::emptyGrams);
    double content = Doubles.of(jar.volume().inMillilitres());
    return grams
        .map(g -> new Range(g.low() / GRAMS, g.high() / GRAMS))
        .orElse(
            new Range(GLASS_FOR_ML.low() * content / GRAMS, GLASS_FOR_ML.high() * content / GRAMS));
  }

  private static double heat(double kilojoulesPerKelvin, double from, double to) {
    return kilojoulesPerKelvin * Math.max(0, to - from);
  }

  private static Estimate minutes(Range kilojoules, Canner canner) {
    Range power =
        canner.watts().isPresent() ? Range.exactly(canner.watts().getAsInt() / WATTS) : ANY_POWER;
    Range efficiency = canner.energy().map(EFFICIENCY::get).orElse(ANY_EFFICIENCY);
    double fast = kilojoules.low() / (power.high() * efficiency.high()) / SECONDS;
    double slow = kilojoules.high() / (power.low() * efficiency.low()) / SECONDS;
    return new Estimate((int) Math.floor(fast), (int) Math.ceil(slow));
  }
}
