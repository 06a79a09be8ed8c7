package jarwright.quantity;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/** Amounts as kitchens have them, and odder ones, for properties that hold for all. */
class Amounts extends DomainContextBase {
  private static final int BIG = 1_000_000;
  private static final int FINEST = 640;

  @Provide
  Arbitrary<Fraction> fractions() {
    return Combinators.combine(
            Arbitraries.integers().between(-BIG, BIG), Arbitraries.integers().between(1, FINEST))
        .as(Fraction::of)
        .edgeCases(edges -> edges.includeOnly(Fraction.ZERO, Fraction.ONE, Fraction.of(-1, 2)));
  }

  @Provide
  Arbitrary<Rounding> roundings() {
    return Arbitraries.of(Rounding.class);
  }

  @Provide
  Arbitrary<Volume> volumes() {
    return Combinators.combine(positive(), Arbitraries.of(Volume.Unit.class)).as(Volume::new);
  }

  @Provide
  Arbitrary<Mass> masses() {
    return Combinators.combine(positive(), Arbitraries.of(Mass.Unit.class))
        .as(Mass::new)
        .edgeCases(edges -> edges.none());
  }

  @Provide
  Arbitrary<Length> lengths() {
    return Combinators.combine(fractions(), Arbitraries.of(Length.Unit.class))
        .as(Length::new)
        .edgeCases(edges -> edges.none());
  }

  @Provide
  Arbitrary<GaugePressure> pressures() {
    return Combinators.combine(positive(), Arbitraries.of(GaugePressure.Unit.class))
        .as(GaugePressure::new)
        .edgeCases(edges -> edges.none());
  }

  @Provide
  Arbitrary<Temperature> temperatures() {
    return Combinators.combine(fractions(), Arbitraries.of(Temperature.Scale.class))
        .as(Temperature::new)
        .edgeCases(edges -> edges.none());
  }

  @Provide
  Arbitrary<Altitude> altitudes() {
    Arbitrary<Integer> hundredths =
        Arbitraries.integers().between(-40_000, 880_000).edgeCases(edges -> edges.none());
    Arbitrary<Altitude> metres =
        hundredths.map(h -> new Altitude(Fraction.of(h, 100), Altitude.Unit.M));
    Arbitrary<Altitude> feet =
        hundredths.map(h -> new Altitude(Fraction.of(h, 100), Altitude.Unit.FT));
    return Arbitraries.oneOf(metres, feet);
  }

  /** From an eighth of a spoon to a lorry load. */
  private static Arbitrary<Fraction> positive() {
    return Combinators.combine(
            Arbitraries.integers().between(1, BIG), Arbitraries.integers().between(1, FINEST))
        .as(Fraction::of)
        .edgeCases(edges -> edges.includeOnly(Fraction.ONE, Fraction.of(1, FINEST)));
  }
}
