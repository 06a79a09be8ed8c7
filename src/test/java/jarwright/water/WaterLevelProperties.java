package jarwright.water;

import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.DayBook;
import jarwright.plan.Canner;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.quantity.Length;
import jarwright.quantity.Volume;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Whatever jar of its size is made: the water never boils over the rim, and it can be covered. */
class WaterLevelProperties {
  private static final double INCH = 25.4;
  private static final double NOISE = 1e-6;

  private static final DayBook BOOK = Published.BOOK;

  @Provide
  Arbitrary<JarSize> jars() {
    return Arbitraries.of(JarSize.HALF_PINT, JarSize.PINT, JarSize.QUART);
  }

  @Property
  void waterStandsBetweenTheBounds(
      @ForAll @IntRange(min = 120, max = 450) int diameter,
      @ForAll @IntRange(min = 140, max = 450) int height,
      @ForAll @IntRange(min = 3, max = 40) int rack,
      @ForAll("jars") JarSize jar,
      @ForAll @IntRange(min = 1, max = 12) int wanted,
      @ForAll @IntRange(min = 5, max = 85) int minutes) {
    JarDimensions made = BOOK.jars().of(jar).orElseThrow();
    int jars = Math.min(wanted, BOOK.packing().most(diameter, made.diameterMm().high()));
    Canner canner =
        Canners.canner(
            Method.BOILING_WATER, diameter + " mm", height + " mm", rack + " mm", 0, null);
    double cover = (minutes >= 30 ? 2 : 1) * INCH;
    double area = Math.PI / 4 * diameter * diameter / 1_000;
    WaterAdvice advice =
        new WaterLevel(BOOK.jars()).advise(canner, jar, jars, Canners.boiling(minutes));
    advice.fold(
        covering -> {
          double before = millilitres(covering.before());
          double kettle = millilitres(covering.kettle());
          double most = made.displacementMl().high();
          double least = made.displacementMl().low();
          double room = mm(covering.to()) - cover - rack;
          double tallest = Math.min(made.heightMm().high(), room);
          assertTrue((before + jars * most) / area <= height - INCH + NOISE, "boils over");
          assertTrue(
              (before + kettle + jars * least) / area >= rack + tallest + cover - NOISE,
              "cannot be covered");
          assertTrue(mm(covering.from()) >= rack + tallest + cover - NOISE, "mark too low");
          assertTrue(mm(covering.to()) <= height - INCH + NOISE, "mark too high");
          assertTrue(mm(covering.to()) > height - INCH - INCH / 8 - NOISE, "mark too low");
          assertTrue(covering.from().compareTo(covering.to()) <= 0, "marks cross");
          assertTrue(mm(covering.depth()) <= before / area + NOISE);
          assertTrue(covering.measureJars() || tallest >= made.heightMm().high() - NOISE);
          assertTrue(tallest >= made.heightMm().low() - NOISE);
          return true;
        },
        shallow -> {
          double needed = rack + made.heightMm().low() + cover + INCH;
          assertTrue(height < needed + INCH / 8, "refused though deep enough");
          assertTrue(mm(shallow.least()) >= needed - NOISE);
          assertTrue(mm(shallow.sure()) >= rack + made.heightMm().high() + cover + INCH - NOISE);
          return true;
        },
        unmeasured -> fail("all was measured"),
        pressure -> fail("no pressure canner"));
  }

  @Property
  void pressureWaterLiesBetweenTwoAndThreeInches(
      @ForAll @IntRange(min = 150, max = 450) int diameter) {
    Canner canner = Canners.canner(Method.DIAL_GAUGE, diameter + " mm", "", "", 0, null);
    double area = Math.PI / 4 * diameter * diameter / 1_000;
    WaterAdvice advice =
        new WaterLevel(BOOK.jars()).advise(canner, JarSize.PINT, 9, Canners.pressure(20));
    advice.fold(
        covering -> fail("no boiling water"),
        shallow -> fail("no boiling water"),
        unmeasured -> fail("it was measured"),
        pressure -> {
          var volumes = pressure.volumes().orElseThrow();
          assertTrue(millilitres(volumes.from()) / area >= 2 * INCH - NOISE);
          assertTrue(millilitres(volumes.to()) / area <= 3 * INCH + NOISE);
          assertTrue(volumes.from().compareTo(volumes.to()) <= 0);
          return true;
        });
  }

  private static boolean fail(String why) {
    throw new AssertionError(why);
  }

  private static double millilitres(Volume volume) {
    return Doubles.of(volume.inMillilitres());
  }

  private static double mm(Length length) {
    return Doubles.millimetres(length);
  }
}
