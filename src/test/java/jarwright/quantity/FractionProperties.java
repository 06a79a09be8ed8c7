package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Domain(Amounts.class)
@Domain(DomainContext.Global.class)
class FractionProperties {
  @Property
  void textReadsBackToAnEqualNumber(@ForAll Fraction a) {
    assertEquals(a, Fraction.parse(a.toString()));
  }

  @Property
  void isEqualToWhatIsNeitherMoreNorLess(@ForAll Fraction a, @ForAll Fraction b) {
    assertEquals(a.compareTo(b) == 0, a.equals(b));
    assertEquals(a, a.plus(b).minus(b));
    assertEquals(a.hashCode(), a.plus(b).minus(b).hashCode());
  }

  @Property
  void sumsAndProductsDoNotDependOnOrder(@ForAll Fraction a, @ForAll Fraction b) {
    assertEquals(a.plus(b), b.plus(a));
    assertEquals(a.times(b), b.times(a));
  }

  @Property
  void sumsAndProductsDoNotDependOnGrouping(
      @ForAll Fraction a, @ForAll Fraction b, @ForAll Fraction c) {
    assertEquals(a.plus(b).plus(c), a.plus(b.plus(c)));
    assertEquals(a.times(b).times(c), a.times(b.times(c)));
    assertEquals(a.times(b.plus(c)), a.times(b).plus(a.times(c)));
  }

  @Property
  void minusUndoesPlusAndDividedByUndoesTimes(@ForAll Fraction a, @ForAll Fraction b) {
    assertEquals(a, a.plus(b).minus(b));
    if (b.signum() != 0) {
      assertEquals(a, a.times(b).dividedBy(b));
    }
  }

  @Property
  void soManyTimesIsThatManyAddedUp(@ForAll Fraction a, @ForAll @IntRange(max = 12) int times) {
    Fraction sum = Fraction.ZERO;
    for (int i = 0; i < times; i++) {
      sum = sum.plus(a);
    }
    assertEquals(sum, a.times(times));
  }

  @Property
  void orderIsThatOfTheDifference(@ForAll Fraction a, @ForAll Fraction b) {
    assertEquals(a.minus(b).signum(), Integer.signum(a.compareTo(b)));
    assertEquals(a.compareTo(b) == 0, a.equals(b));
  }

  @Property
  void floorAndCeilingEncloseTheNumberWithinOne(@ForAll Fraction a) {
    Fraction floor = new Fraction(a.floor(), java.math.BigInteger.ONE);
    Fraction ceiling = new Fraction(a.ceiling(), java.math.BigInteger.ONE);
    assertTrue(floor.compareTo(a) <= 0 && a.minus(floor).compareTo(Fraction.ONE) < 0);
    assertTrue(ceiling.compareTo(a) >= 0 && ceiling.minus(a).compareTo(Fraction.ONE) < 0);
    assertEquals(a.isWhole(), floor.equals(ceiling));
  }
}
