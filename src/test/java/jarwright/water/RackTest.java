package jarwright.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.DayBook;
import jarwright.plan.Canner;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.water.Places.Basis;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class RackTest {
  private static final Rack RACK = rack(Published.BOOK);

  private static Rack rack(DayBook book) {
    return new Rack(book.jars(), book.packing(), book.loads());
  }

  private static Canner pot(String diameter) {
    return Canners.canner(Method.BOILING_WATER, diameter, "30 cm", "15 mm", 0, null);
  }

  private static Canner pressure(String diameter, String height) {
    return Canners.canner(Method.DIAL_GAUGE, diameter, height, "15 mm", 0, null);
  }

  /** AIB 539 (2015) Guide 1: most canners hold seven quarts or eight to nine pints. */
  @Test
  void theStandardCannerHoldsSevenQuartsOrNinePints() {
    assertEquals(7, RACK.places(Canners.STANDARD, JarSize.QUART).total());
    assertEquals(9, RACK.places(Canners.STANDARD, JarSize.PINT).total());
    assertEquals(9, RACK.places(Canners.STANDARD, JarSize.HALF_PINT).total());
  }

  /** The same guide: small pressure canners hold four quarts. */
  @Test
  void aSmallPotHoldsFewerByTheWidestJarsThatAreMade() {
    Places places = RACK.places(pot("24 cm"), JarSize.QUART);
    assertEquals(4, places.total());
    assertEquals(Basis.GEOMETRY, places.basis());
    assertEquals(5, places.withSlimJars());
  }

  @Test
  void neverMoreThanTheGuidesLoadUnlessPlacesAreStated() {
    Places wide = RACK.places(pot("50 cm"), JarSize.QUART);
    assertEquals(new Places(7, 1, Basis.GUIDE, 7), wide);
    Canner counted = Canners.holding(pot("50 cm"), Map.of(JarSize.QUART, 14));
    assertEquals(new Places(14, 1, Basis.STATED, 14), RACK.places(counted, JarSize.QUART));
    assertEquals(9, RACK.places(counted, JarSize.PINT).total());
  }

  @Test
  void withoutMeasuresTheGuidesLoadIsTaken() {
    Canner unknown = Canners.canner(Method.BOILING_WATER, "", "", "", 0, null);
    assertEquals(new Places(7, 1, Basis.GUIDE, 7), RACK.places(unknown, JarSize.QUART));
    Places twelve = RACK.places(pot("33 cm"), JarSize.TWELVE_OUNCE);
    assertEquals(new Places(9, 1, Basis.GUIDE, 9), twelve);
  }

  /** The same guide: some large pressure canners hold 18 pints in two layers, but 7 quarts. */
  @Test
  void aTallPressureCannerTakesTwoLayersOfPintsButNotOfQuarts() {
    Canner tall = pressure("32 cm", "40 cm");
    assertEquals(18, RACK.places(tall, JarSize.PINT).total());
    assertEquals(2, RACK.places(tall, JarSize.PINT).layers());
    assertEquals(7, RACK.places(tall, JarSize.QUART).total());
    assertEquals(9, RACK.places(pressure("32 cm", "31 cm"), JarSize.PINT).total());
    Canner deep = Canners.canner(Method.BOILING_WATER, "32 cm", "60 cm", "15 mm", 0, null);
    assertEquals(1, RACK.places(deep, JarSize.PINT).layers());
  }

  @Test
  void aJarThatDoesNotFitHasNoPlace() {
    assertEquals(0, RACK.places(pot("9 cm"), JarSize.QUART).total());
    assertTrue(RACK.widthFor(JarSize.QUART).orElseThrow().toString().startsWith("4 in"));
    assertEquals(0, RACK.places(pressure("32 cm", "15 cm"), JarSize.QUART).total());
  }

  @Property
  void aWiderCannerNeverHoldsFewer(@ForAll @IntRange(min = 50, max = 600) int mm) {
    for (JarSize jar : JarSize.values()) {
      int here = RACK.places(pot(mm + " mm"), jar).total();
      assertTrue(RACK.places(pot(mm + 1 + " mm"), jar).total() >= here);
      assertTrue(RACK.places(pot(mm + " mm"), jar).withSlimJars() >= here);
      assertTrue(here <= 9);
    }
  }
}
