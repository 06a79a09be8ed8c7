package jarwright.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.plan.Canner;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.water.LeastCanner.TooSmall;
import jarwright.water.Places.Basis;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * A pressure canner holds four quart jars at least: NCHFP, Using Pressure Canners; AIB 539 (2015)
 * Guide 1, Recommended canners.
 */
class LeastCannerTest {
  private static final LeastCanner LEAST =
      new LeastCanner(
          new Rack(Published.BOOK.jars(), Published.BOOK.packing(), Published.BOOK.loads()));

  private static Canner canner(Method method, String across, String deep) {
    return Canners.canner(method, across, deep, "", 0, null);
  }

  private static Optional<TooSmall> measured(String across, String deep) {
    return LEAST.fault(canner(Method.WEIGHTED_GAUGE, across, deep));
  }

  private static Optional<TooSmall> counted(String across, Map<JarSize, Integer> holds) {
    return LEAST.fault(Canners.holding(canner(Method.DIAL_GAUGE, across, ""), holds));
  }

  private static Optional<TooSmall> stated(JarSize jar, int count) {
    return Optional.of(new TooSmall(Basis.STATED, jar, count, true));
  }

  @Test
  void fewerThanFourCountedQuartsAreTooFewWhateverElseIsCounted() {
    assertEquals(stated(JarSize.QUART, 3), counted("", Map.of(JarSize.QUART, 3)));
    assertEquals(
        stated(JarSize.QUART, 2), counted("33 cm", Map.of(JarSize.QUART, 2, JarSize.PINT, 18)));
    assertEquals(Optional.empty(), counted("", Map.of(JarSize.QUART, 4)));
  }

  /** Four circles need 1 + sqrt(2) times the width of one; quarts are made 86 to 99 mm wide. */
  @Test
  void fourQuartsHaveToStandSideBySide() {
    assertEquals(
        Optional.of(new TooSmall(Basis.GEOMETRY, JarSize.QUART, 3, false)),
        measured("239 mm", "30 cm"));
    assertEquals(Optional.empty(), measured("240 mm", "30 cm"));
    assertEquals(
        Optional.of(new TooSmall(Basis.GEOMETRY, JarSize.QUART, 2, true)),
        measured("20 cm", "22 cm"));
    assertEquals(
        Optional.of(new TooSmall(Basis.GEOMETRY, JarSize.QUART, 0, true)),
        measured("33 cm", "17 cm"));
  }

  @Test
  void aCountIsBelievedWhereTheNarrowestJarsWouldAllowIt() {
    assertEquals(Optional.empty(), counted("208 mm", Map.of(JarSize.QUART, 4)));
    assertEquals(
        Optional.of(new TooSmall(Basis.GEOMETRY, JarSize.QUART, 3, true)),
        counted("207 mm", Map.of(JarSize.QUART, 4)));
  }

  /** A canner for four quarts takes five pints, and four of every smaller jar. */
  @Test
  void fewSmallerJarsSayThatQuartsDoNotFit() {
    assertEquals(stated(JarSize.PINT, 4), counted("", Map.of(JarSize.PINT, 4)));
    assertEquals(Optional.empty(), counted("", Map.of(JarSize.PINT, 5)));
    assertEquals(stated(JarSize.TWELVE_OUNCE, 3), counted("", Map.of(JarSize.TWELVE_OUNCE, 3)));
    assertEquals(Optional.empty(), counted("", Map.of(JarSize.HALF_GALLON, 2)));
    assertEquals(Optional.empty(), counted("", Map.of(JarSize.PINT, 4, JarSize.QUART, 4)));
  }

  @Test
  void whatNobodyMeasuredIsNotJudged() {
    assertEquals(Optional.empty(), measured("", ""));
    assertEquals(Optional.empty(), counted("", Map.of()));
  }

  @Test
  void aPotForBoilingWaterMayBeAsSmallAsItIs() {
    Canner pot =
        Canners.holding(canner(Method.BOILING_WATER, "15 cm", ""), Map.of(JarSize.QUART, 1));
    assertEquals(Optional.empty(), LEAST.fault(pot));
  }

  @Property
  void aWiderCannerIsNeverSmaller(@ForAll @IntRange(min = 50, max = 400) int mm) {
    assertTrue(measured(mm + " mm", "").isPresent() || measured(mm + 1 + " mm", "").isEmpty());
  }

  @Property
  void noCannerPassesThatItsOwnPlacesForQuartsDoNot(@ForAll @IntRange(min = 50, max = 400) int mm) {
    Canner canner = canner(Method.DIAL_GAUGE, mm + " mm", "30 cm");
    Rack rack = new Rack(Published.BOOK.jars(), Published.BOOK.packing(), Published.BOOK.loads());
    boolean four = rack.places(canner, JarSize.QUART).total() >= LeastCanner.QUARTS;
    assertEquals(four, LEAST.fault(canner).isEmpty());
  }
}
