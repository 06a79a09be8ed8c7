package jarwright.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A volume in US kitchen measures or metric ones. The US gallon is 231 cubic inches exactly (NIST
 * Handbook 44, Appendix C), which makes a teaspoon 4.92892159375 mL.
 */
public record Volume(Fraction amount, Unit unit) implements Comparable<Volume> {
  private static final Fraction HUNDRED = Fraction.of(100);
  private static final Fraction LITRES_FROM = Fraction.of(1_000);

  /** Units of volume, based on the millilitre. */
  public enum Unit implements jarwright.quantity.Unit {
    TSP(1, "tsp", "teaspoon", "teaspoons", "t"),
    TBSP(3, "Tbsp", "tablespoon", "tablespoons", "T"),
    FL_OZ(6, "fl-oz", "fl oz", "fluid ounce", "fluid ounces"),
    CUP(48, "cup", "cups"),
    PINT(96, "pint", "pints", "pt"),
    QUART(192, "quart", "quarts", "qt"),
    GALLON(768, "gal", "gallon", "gallons"),
    ML(Fraction.ONE, "mL", "ml", "millilitre", "millilitres", "milliliter", "milliliters"),
    L(LITRES_FROM, "L", "l", "litre", "litres", "liter", "liters");

    private final Fraction inBase;
    private final List<String> spellings;

    Unit(int teaspoons, String... spellings) {
      // 231 in³ × (25.4 mm)³ / 768 teaspoons in a gallon
      this(Fraction.of(231L * 127 * 127 * 127, 768L * 125 * 1_000).times(teaspoons), spellings);
    }

    Unit(Fraction inBase, String... spellings) {
      this.inBase = inBase;
      this.spellings = List.of(spellings);
    }

    @Override
    public List<String> spellings() {
      return spellings;
    }

    @Override
    public Fraction inBase() {
      return inBase;
    }

    /** The unit that is spelled so, as {@link #parse} takes it. */
    public static Optional<Unit> named(String spelling) {
      return Arrays.stream(values()).filter(u -> AmountText.matches(u, spelling)).findFirst();
    }

    public boolean isMetric() {
      return this == ML || this == L;
    }
  }

  public static Volume of(Fraction amount, Unit unit) {
    return new Volume(amount, unit);
  }

  /**
   * Reads {@code 1/4 tsp}, {@code 2 Tbsp}, {@code 1-1/2 cups}, {@code 250 mL}.
   *
   * @throws IllegalArgumentException when number or unit is missing or unknown
   */
  public static Volume parse(String text) {
    AmountText.Parsed<Unit> parsed = AmountText.parse("a volume", text, Unit.values());
    return new Volume(parsed.amount(), parsed.unit());
  }

  /** The exact volume in millilitres. */
  public Fraction inMillilitres() {
    return amount.times(unit.inBase());
  }

  /** The exact number of the given unit. */
  public Fraction in(Unit other) {
    return inMillilitres().dividedBy(other.inBase());
  }

  public Volume times(Fraction factor) {
    return new Volume(amount.times(factor), unit);
  }

  public Volume plus(Volume other) {
    return new Volume(amount.plus(other.in(unit)), unit);
  }

  @Override
  public int compareTo(Volume other) {
    return inMillilitres().compareTo(other.inMillilitres());
  }

  /** Kitchen measures and metric; metric is rounded to what a spoon or a jug can measure. */
  public String text(Style style, Rounding rounding) {
    String metric = metric(style, rounding);
    return style.joinVolumes(unit.isMetric() ? metric : KitchenMeasure.text(this, style), metric);
  }

  private String metric(Style style, Rounding rounding) {
    Fraction millilitres = inMillilitres();
    if (millilitres.compareTo(LITRES_FROM) >= 0) {
      Fraction litres = millilitres.dividedBy(LITRES_FROM);
      return style.decimal(rounding.toStep(litres, Fraction.of(1, 20)), "L");
    }
    return style.decimal(rounding.toStep(millilitres, measurable(millilitres)), "mL");
  }

  /** The step that a metric spoon, a syringe or a jug of the size can measure. */
  private static Fraction measurable(Fraction millilitres) {
    if (millilitres.compareTo(Fraction.of(5)) < 0) {
      return Fraction.of(1, 4);
    }
    if (millilitres.compareTo(Fraction.of(10)) < 0) {
      return Fraction.of(1, 2);
    }
    return millilitres.compareTo(HUNDRED) < 0 ? Fraction.of(5, 2) : Fraction.of(5);
  }

  @Override
  public String toString() {
    return amount + " " + unit.spellings().get(0);
  }
}
