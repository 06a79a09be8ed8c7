package jarwright.process;

import jarwright.quantity.Fraction;
import jarwright.quantity.Volume;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Jar sizes, smallest first, by the names that the process tables use. */
public enum JarSize {
  HALF_PINT("half-pint", Fraction.of(1, 2)),
  TWELVE_OUNCE("12-ounce", Fraction.of(3, 4)),
  PINT("pint", Fraction.ONE),
  ONE_AND_A_HALF_PINT("1-1/2-pint", Fraction.of(3, 2)),
  QUART("quart", Fraction.of(2)),
  HALF_GALLON("half-gallon", Fraction.of(4));

  private final String id;
  private final Fraction pints;

  JarSize(String id, Fraction pints) {
    this.id = id;
    this.pints = pints;
  }

  public String id() {
    return id;
  }

  /** Nominal content in pints. */
  public Fraction pints() {
    return pints;
  }

  /** Nominal content in quarts. */
  public Fraction quarts() {
    return pints.dividedBy(QUART.pints);
  }

  public Volume volume() {
    return Volume.of(pints, Volume.Unit.PINT);
  }

  /** The largest size that holds less. */
  public static Optional<JarSize> below(Volume content) {
    return Arrays.stream(values())
        .filter(j -> j.volume().compareTo(content) < 0)
        .reduce((smaller, larger) -> larger);
  }

  public static Optional<JarSize> named(String id) {
    return Arrays.stream(values()).filter(j -> j.id.equals(id)).findFirst();
  }

  public static List<String> ids() {
    return Arrays.stream(values()).map(JarSize::id).toList();
  }

  @Override
  public String toString() {
    return id;
  }
}
