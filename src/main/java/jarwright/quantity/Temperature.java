package jarwright.quantity;

import java.util.List;

/** A temperature on the Fahrenheit or the Celsius scale. */
public record Temperature(Fraction degrees, Scale scale) implements Comparable<Temperature> {
  private static final Fraction FREEZING_F = Fraction.of(32);
  private static final Fraction F_PER_C = Fraction.of(9, 5);

  /** The scale; the two are related exactly by F = C × 9/5 + 32. */
  public enum Scale implements Unit {
    F("F", "°F"),
    C("C", "°C");

    private final List<String> spellings;

    Scale(String... spellings) {
      this.spellings = List.of(spellings);
    }

    @Override
    public List<String> spellings() {
      return spellings;
    }

    @Override
    public Fraction inBase() {
      return this == F ? Fraction.ONE : F_PER_C;
    }
  }

  public static Temperature fahrenheit(long degrees) {
    return new Temperature(Fraction.of(degrees), Scale.F);
  }

  /**
   * Reads {@code 180 F}, {@code 82 °C}.
   *
   * @throws IllegalArgumentException when number or scale is missing or unknown
   */
  public static Temperature parse(String text) {
    AmountText.Parsed<Scale> parsed = AmountText.parse("a temperature", text, Scale.values());
    return new Temperature(parsed.amount(), parsed.unit());
  }

  public Fraction inFahrenheit() {
    return scale == Scale.F ? degrees : degrees.times(F_PER_C).plus(FREEZING_F);
  }

  public Fraction inCelsius() {
    return scale == Scale.C ? degrees : degrees.minus(FREEZING_F).dividedBy(F_PER_C);
  }

  @Override
  public int compareTo(Temperature other) {
    return inFahrenheit().compareTo(other.inFahrenheit());
  }

  /** Whole degrees: {@code 180 °F (83 °C)} when rounded up. */
  public String text(Style style, Rounding rounding) {
    return style.join(
        style.decimal(rounding.toStep(inFahrenheit(), Fraction.ONE), "°F"),
        style.decimal(rounding.toStep(inCelsius(), Fraction.ONE), "°C"));
  }

  @Override
  public String toString() {
    return degrees + " " + scale.spellings().get(0);
  }
}
