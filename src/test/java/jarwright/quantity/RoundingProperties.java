package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

@Domain(Amounts.class)
class RoundingProperties {
  private static final Fraction HALF = Fraction.of(1, 2);

  @Property
  void upIsNeverLess(@ForAll Fraction amount, @ForAll Fraction step) {
    Assume.that(step.signum() > 0);
    Fraction rounded = Rounding.UP.toStep(amount, step);
    assertTrue(rounded.compareTo(amount) >= 0);
    assertTrue(rounded.minus(amount).compareTo(step) < 0);
  }

  @Property
  void downIsNeverMore(@ForAll Fraction amount, @ForAll Fraction step) {
    Assume.that(step.signum() > 0);
    Fraction rounded = Rounding.DOWN.toStep(amount, step);
    assertTrue(rounded.compareTo(amount) <= 0);
    assertTrue(amount.minus(rounded).compareTo(step) < 0);
  }

  @Property
  void nearestIsWithinHalfAStep(@ForAll Fraction amount, @ForAll Fraction step) {
    Assume.that(step.signum() > 0);
    Fraction off = Rounding.NEAREST.toStep(amount, step).minus(amount);
    assertTrue(off.compareTo(step.times(HALF)) <= 0);
    assertTrue(off.compareTo(step.times(HALF).times(-1)) > 0, "a half goes up");
  }

  @Property
  void whatIsAMultipleOfTheStepStays(@ForAll Fraction step, @ForAll Rounding rounding) {
    Assume.that(step.signum() > 0);
    assertEquals(step.times(7), rounding.toStep(step.times(7), step));
  }

  @Property
  void theResultIsAMultipleOfTheStep(
      @ForAll Fraction amount, @ForAll Fraction step, @ForAll Rounding rounding) {
    Assume.that(step.signum() > 0);
    assertTrue(rounding.toStep(amount, step).dividedBy(step).isWhole());
  }

  @Example
  void aHalfGoesUp() {
    assertEquals(Fraction.of(3), Rounding.NEAREST.toStep(Fraction.of(5, 2), Fraction.ONE));
    assertEquals(Fraction.of(-2), Rounding.NEAREST.toStep(Fraction.of(-5, 2), Fraction.ONE));
  }
}
