package jarwright.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A mass of produce, sugar or salt. One pound is 0.45359237 kg exactly. */
public record Mass(Fraction amount, Unit unit) implements Comparable<Mass> {
  private static final Fraction KILOGRAM = Fraction.of(1_000);
  private static final Fraction FINE_TO = Fraction.of(100);
  private static final Fraction COARSE_FROM = KILOGRAM.times(5);

  /** Units of mass, based on the gram. */
  public enum Unit implements jarwright.quantity.Unit {
    G(Fraction.ONE, "g", "gram", "grams"),
    KG(KILOGRAM, "kg", "kilo", "kilos", "kilogram", "kilograms"),
    OZ(Fraction.of(45_359_237, 1_600_000), "oz", "ounce", "ounces"),
    LB(Fraction.of(45_359_237, 100_000), "lb", "lbs", "pound", "pounds");

    private final Fraction inBase;
    private final List<String> spellings;

    Unit(Fraction inBase, String... spellings) {
      this.inBase = inBase;
      this.spellings = List.of(spellings);
    }

    /** The unit that is spelled so, as {@link #parse} takes it. */
    public static Optional<Unit> named(String spelling) {
      return Arrays.stream(values()).filter(u -> AmountText.matches(u, spelling)).findFirst();
    }

    public boolean isMetric() {
      return this == G || this == KG;
    }

    @Override
    public List<String> spellings() {
      return spellings;
    }

    @Override
    public Fraction inBase() {
      return inBase;
    }
  }

  public static Mass pounds(Fraction pounds) {
    return new Mass(pounds, Unit.LB);
  }

  /**
   * Reads {@code 18 kg}, {@code 12-1/4 lb}, {@code 24 oz}.
   *
   * @throws IllegalArgumentException when number or unit is missing or unknown
   */
  public static Mass parse(String text) {
    AmountText.Parsed<Unit> parsed = AmountText.parse("a mass", text, Unit.values());
    return new Mass(parsed.amount(), parsed.unit());
  }

  /** The exact mass in grams. */
  public Fraction inGrams() {
    return amount.times(unit.inBase());
  }

  /** The exact mass in pounds. */
  public Fraction inPounds() {
    return inGrams().dividedBy(Unit.LB.inBase());
  }

  public Mass times(Fraction factor) {
    return new Mass(amount.times(factor), unit);
  }

  public Mass plus(Mass other) {
    return new Mass(amount.plus(other.inGrams().dividedBy(unit.inBase())), unit);
  }

  @Override
  public int compareTo(Mass other) {
    return inGrams().compareTo(other.inGrams());
  }

  /** Quarter pounds or quarter ounces, and grams, twentieths or tenths of a kilogram. */
  public String text(Style style, Rounding rounding) {
    return style.join(us(style, rounding), metric(style, rounding));
  }

  private String us(Style style, Rounding rounding) {
    Fraction pounds = inPounds();
    if (unit != Unit.OZ && pounds.compareTo(Fraction.ONE) >= 0) {
      return style.named(rounding.toStep(pounds, Fraction.of(1, 4)), "lb");
    }
    return style.named(rounding.toStep(pounds.times(16), Fraction.of(1, 4)), "oz");
  }

  private String metric(Style style, Rounding rounding) {
    Fraction grams = inGrams();
    if (grams.compareTo(KILOGRAM) >= 0) {
      Fraction kilograms = grams.dividedBy(KILOGRAM);
      Fraction step = Fraction.of(1, grams.compareTo(COARSE_FROM) < 0 ? 20 : 10);
      return style.decimal(rounding.toStep(kilograms, step), "kg");
    }
    Fraction step = grams.compareTo(FINE_TO) < 0 ? Fraction.ONE : Fraction.of(5);
    return style.decimal(rounding.toStep(grams, step), "g");
  }

  @Override
  public String toString() {
    return amount + " " + unit.spellings().get(0);
  }
}
