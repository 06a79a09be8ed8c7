package jarwright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.quantity.Fraction;
import org.junit.jupiter.api.Test;

class FormulaLineTest {
  @Test
  void acidsAreKnownByName() {
    assertTrue(line("cider vinegar (5%)", "cup", "").isAcid());
    assertTrue(line("bottled lemon or lime juice", "cup", "").isAcid());
    assertFalse(line("pickling lime", "cup", "").isAcid());
    assertFalse(line("orange juice", "cup", "").isAcid());
  }

  @Test
  void amountsThatSafetyHangsOnAreFixedUnlessOptional() {
    assertTrue(line("salt", "cup", "fermentation salt; do not reduce").isFixed());
    assertTrue(line("vinegar", "cup", "").isFixed());
    assertFalse(line("lemon juice", "tsp", "optional; printed as 1-1/2 tsp per cup").isFixed());
    assertFalse(line("sugar", "cup", "").isFixed());
  }

  @Test
  void whatIsCountedByTheJarIsNotMultiplied() {
    assertEquals(Fraction.ONE, line("pork cube", "per jar", "").times(Fraction.of(3)).most());
    assertEquals(Fraction.of(3), line("onion", "each", "").times(Fraction.of(3)).most());
  }

  private static FormulaLine line(String ingredient, String unit, String note) {
    return new FormulaLine(ingredient, Fraction.ONE, Fraction.ONE, unit, note);
  }
}
