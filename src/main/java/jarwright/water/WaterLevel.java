package jarwright.water;

import jarwright.plan.Canner;
import jarwright.process.JarSize;
import jarwright.process.TestedProcess;
import jarwright.quantity.Fraction;
import jarwright.quantity.Length;
import jarwright.quantity.Rounding;
import jarwright.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Works out the water of a load. Covering and boiling over are judged by opposite ends of the jars'
 * dimensions, so that neither can happen with any jar that is made.
 */
public final class WaterLevel {
  /** Common practice: so much stays free for the rolling boil. */
  private static final Length BELOW_RIM = Length.inches(Fraction.ONE);

  /** AIB 539 (2015) Guide 1: two to three inches of water in a pressure canner. */
  private static final Length PRESSURE_LEAST = Length.inches(Fraction.of(2));

  private static final Length PRESSURE_MOST = Length.inches(Fraction.of(3));

  /** Common practice: half an inch of the canner's water may boil away before it is topped up. */
  private static final Length BOILED_OFF = Length.inches(Fraction.of(1, 2));

  /** Common practice: racks stand 10 to 25 mm high; the tallest is taken where none is given. */
  static final Length TALL_RACK = Length.millimetres(25);

  private static final double MM3_PER_ML = 1_000;

  private final JarBook jars;

  public WaterLevel(JarBook jars) {
    this.jars = jars;
  }

  /**
   * Advice for a load.
   *
   * @param standing jars in the canner, jars of water among them
   */
  public WaterAdvice advise(Canner canner, JarSize jar, int standing, TestedProcess process) {
    if (process.isPressure()) {
      return pressure(canner);
    }
    WaterAdvice.Cover cover = new WaterAdvice.Cover(WaterOverLids.of(process), BELOW_RIM);
    Optional<JarDimensions> known = jars.of(jar);
    List<String> missing = new ArrayList<>();
    if (canner.insideDiameter().isEmpty()) {
      missing.add("inside-diameter");
    }
    if (canner.insideHeight().isEmpty()) {
      missing.add("inside-height");
    }
    if (known.isEmpty()) {
      missing.add("jar");
    }
    return missing.isEmpty()
        ? boiling(cover, canner, known.orElseThrow(), standing)
        : new WaterAdvice.Unmeasured(cover, missing);
  }

  private static WaterAdvice boiling(
      WaterAdvice.Cover cover, Canner canner, JarDimensions jar, int standing) {
    Length insideHeight = canner.insideHeight().orElseThrow();
    double rack = Doubles.millimetres(canner.rackHeight().orElse(TALL_RACK));
    double over = rack + Doubles.millimetres(cover.aboveLids());
    Length highestMark =
        Doubles.eighthsOfAnInch(
            Doubles.millimetres(insideHeight) - Doubles.millimetres(cover.belowRim()),
            Rounding.DOWN);
    double highest = Doubles.millimetres(highestMark);
    double tallest = Math.min(jar.heightMm().high(), highest - over);
    if (tallest < jar.heightMm().low()) {
      double room = over + Doubles.millimetres(cover.belowRim());
      return new WaterAdvice.TooShallow(
          cover,
          insideHeight,
          Doubles.eighthsOfAnInch(room + jar.heightMm().low(), Rounding.UP),
          Doubles.eighthsOfAnInch(room + jar.heightMm().high(), Rounding.UP));
    }
    double area = area(canner.insideDiameter().orElseThrow());
    Range pushedUp = jar.displacementMl();
    double toCover = area * (over + tallest) / MM3_PER_ML - standing * pushedUp.low();
    double toRim = area * highest / MM3_PER_ML - standing * pushedUp.high();
    Volume before = enoughOrMost(Math.max(0, toCover), Math.max(0, toRim));
    double put = Doubles.of(before.inMillilitres());
    double kettle =
        Math.max(0, toCover - put) + area * Doubles.millimetres(BOILED_OFF) / MM3_PER_ML;
    return new WaterAdvice.Covering(
        cover,
        before,
        Doubles.eighthsOfAnInch(put * MM3_PER_ML / area, Rounding.DOWN),
        Doubles.eighthsOfAnInch(over + tallest, Rounding.UP),
        highestMark,
        Doubles.quarterQuarts(kettle, Rounding.UP),
        Doubles.eighthsOfAnInch(tallest, Rounding.DOWN),
        tallest < jar.heightMm().high(),
        canner.rackHeight().isEmpty());
  }

  /** Enough to cover where the rim allows it, else what the rim allows: the kettle has the rest. */
  private static Volume enoughOrMost(double toCover, double toRim) {
    Volume enough = Doubles.quarterQuarts(toCover, Rounding.UP);
    return Doubles.of(enough.inMillilitres()) <= toRim
        ? enough
        : Doubles.quarterQuarts(toRim, Rounding.DOWN);
  }

  private static WaterAdvice pressure(Canner canner) {
    return new WaterAdvice.Pressure(
        PRESSURE_LEAST,
        PRESSURE_MOST,
        canner
            .insideDiameter()
            .map(WaterLevel::area)
            .map(
                area ->
                    new WaterAdvice.Pressure.Volumes(
                        Doubles.quarterQuarts(
                            area * Doubles.millimetres(PRESSURE_LEAST) / MM3_PER_ML, Rounding.UP),
                        Doubles.quarterQuarts(
                            area * Doubles.millimetres(PRESSURE_MOST) / MM3_PER_ML,
                            Rounding.DOWN))));
  }

  private static double area(Length diameter) {
    double mm = Doubles.millimetres(diameter);
    return Math.PI / 4 * mm * mm;
  }
}
