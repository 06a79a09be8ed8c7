package jarwright.batch;

import jarwright.process.JarSize;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Volume;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BinaryOperator;

/**
 * How much of one thing is to be bought. Amounts of one kind are added up; those of another kind
 * stand beside them.
 *
 * @param pieces by the unit of the formula: {@code each}, {@code clove}, {@code pouch}
 * @param eachGallon for each gallon of water that it is stirred into
 * @param enough as much as covers the food in its bowl
 * @param fills jars that it has to fill, where no weight is printed
 * @param toTaste as the cook likes it
 */
public record Amounts(
    Optional<Weight> weight,
    Optional<Volume> volume,
    Map<String, Fraction> pieces,
    Optional<Volume> eachGallon,
    boolean enough,
    Map<JarSize, Integer> fills,
    boolean toTaste) {
  static final Amounts NONE =
      new Amounts(
          Optional.empty(), Optional.empty(), Map.of(), Optional.empty(), false, Map.of(), false);
  static final Amounts ENOUGH =
      new Amounts(
          Optional.empty(), Optional.empty(), Map.of(), Optional.empty(), true, Map.of(), false);
  static final Amounts TO_TASTE =
      new Amounts(
          Optional.empty(), Optional.empty(), Map.of(), Optional.empty(), false, Map.of(), true);

  public Amounts {
    pieces = Map.copyOf(pieces);
    fills = Map.copyOf(fills);
  }

  /**
   * A weight.
   *
   * @param most with so much nobody runs short
   * @param estimate whether it is worked out of a yield or of a measure of food cut up
   */
  public record Weight(Mass about, Mass most, boolean estimate) {
    static Weight exactly(Mass mass) {
      return new Weight(mass, mass, false);
    }

    static Weight estimated(Mass mass) {
      return new Weight(mass, mass, true);
    }

    private Weight plus(Weight other) {
      return new Weight(about.plus(other.about), most.plus(other.most), estimate || other.estimate);
    }
  }

  static Amounts of(Weight weight) {
    return new Amounts(
        Optional.of(weight), Optional.empty(), Map.of(), Optional.empty(), false, Map.of(), false);
  }

  static Amounts of(Volume volume) {
    return new Amounts(
        Optional.empty(), Optional.of(volume), Map.of(), Optional.empty(), false, Map.of(), false);
  }

  static Amounts pieces(Fraction number, String unit) {
    return new Amounts(
        Optional.empty(),
        Optional.empty(),
        Map.of(unit, number),
        Optional.empty(),
        false,
        Map.of(),
        false);
  }

  static Amounts eachGallon(Volume volume) {
    return new Amounts(
        Optional.empty(), Optional.empty(), Map.of(), Optional.of(volume), false, Map.of(), false);
  }

  static Amounts fills(JarSize jar, int count) {
    return new Amounts(
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        Optional.empty(),
        false,
        Map.of(jar, count),
        false);
  }

  /** Both together; of two strengths of a bath the stronger. */
  Amounts plus(Amounts other) {
    return new Amounts(
        either(weight, other.weight, Weight::plus),
        either(volume, other.volume, Volume::plus),
        sum(pieces, other.pieces, Fraction::plus),
        either(eachGallon, other.eachGallon, (a, b) -> a.compareTo(b) < 0 ? b : a),
        enough || other.enough,
        sum(fills, other.fills, Integer::sum),
        toTaste || other.toTaste);
  }

  private static <T> Optional<T> either(Optional<T> one, Optional<T> other, BinaryOperator<T> sum) {
    return one.isPresent() && other.isPresent()
        ? Optional.of(sum.apply(one.get(), other.get()))
        : one.or(() -> other);
  }

  private static <K, V> Map<K, V> sum(Map<K, V> one, Map<K, V> other, BinaryOperator<V> sum) {
    Map<K, V> all = new TreeMap<>(one);
    other.forEach((key, value) -> all.merge(key, value, sum));
    return all;
  }
}
