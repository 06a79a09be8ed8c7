package jarwright.process;

import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Volume;
import java.util.Optional;

/**
 * How an ingredient of a formula is bought.
 *
 * @param what its name in the shop; empty where there is nothing to buy, as for water
 * @param weighing what is bought for a measure of it cut up, where a weight is published
 * @param piece what it is counted or packed by, where that is not the formula's unit
 */
public record Purchase(
    String what, Aisle aisle, Optional<Weighing> weighing, Optional<Piece> piece) {

  /** Nothing to buy: it is at hand, or made of what is bought. */
  public boolean isNothing() {
    return what.isEmpty();
  }

  /**
   * A piece or package.
   *
   * @param mass of one, as 3 oz of a pouch; empty where the formula counts them itself
   */
  public record Piece(Optional<Mass> mass, String unit) {}

  /**
   * A published weight for a measure.
   *
   * @param measured what is measured, a volume cut up or a weight trimmed
   * @param bought the weight that it was before cutting and trimming
   */
  public record Weighing(Measured measured, Mass bought) {
    /** What is bought for so much; none where that is measured otherwise than the weight was. */
    public Optional<Mass> of(Fraction amount, String unit) {
      return measured
          .in(unit)
          .map(one -> Mass.pounds(bought.inPounds().times(amount).dividedBy(one)));
    }
  }

  /** A volume or a weight. */
  public sealed interface Measured {
    /** How many of a unit it is; none where the unit is of the other kind or of neither. */
    Optional<Fraction> in(String unit);

    /** A volume. */
    record ByVolume(Volume volume) implements Measured {
      @Override
      public Optional<Fraction> in(String unit) {
        return Volume.Unit.named(unit).map(volume::in);
      }
    }

    /** A weight. */
    record ByMass(Mass mass) implements Measured {
      @Override
      public Optional<Fraction> in(String unit) {
        return Mass.Unit.named(unit).map(u -> mass.inGrams().dividedBy(u.inBase()));
      }
    }
  }
}
