package jarwright.quantity;

import java.util.List;

/** A length: headspace, dimensions of jars and canners. One inch is 25.4 mm exactly. */
public record Length(Fraction amount, Unit unit) implements Comparable<Length> {
  private static final Fraction CENTIMETRES_FROM = Fraction.of(100);

  /** Units of length, based on the millimetre. */
  public enum Unit implements jarwright.quantity.Unit {
    MM(Fraction.ONE, "mm"),
    CM(Fraction.of(10), "cm"),
    IN(Fraction.of(127, 5), "in", "inch", "inches");

    private final Fraction inBase;
    private final List<String> spellings;

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
  }

  public static Length inches(Fraction inches) {
    return new Length(inches, Unit.IN);
  }

  public static Length millimetres(long millimetres) {
    return new Length(Fraction.of(millimetres), Unit.MM);
  }

  /**
   * Reads {@code 1/2 in}, {@code 33 cm} or {@code 15 mm}.
   *
   * @throws IllegalArgumentException when number or unit is missing or unknown
   */
  public static Length parse(String text) {
    AmountText.Parsed<Unit> parsed = AmountText.parse("a length", text, Unit.values());
    return new Length(parsed.amount(), parsed.unit());
  }

  /** The exact length in millimetres. */
  public Fraction inMillimetres() {
    return amount.times(unit.inBase());
  }

  /** The exact length in inches. */
  public Fraction inInches() {
    return inMillimetres().dividedBy(Unit.IN.inBase());
  }

  public Length plus(Length other) {
    return new Length(inMillimetres().plus(other.inMillimetres()), Unit.MM);
  }

  @Override
  public int compareTo(Length other) {
    return inMillimetres().compareTo(other.inMillimetres());
  }

  /** Inches in eighths (as written when written in inches), metric in whole mm or half cm. */
  public String text(Style style, Rounding rounding) {
    return style.join(style.named(usNumber(rounding), "in"), metric(style, rounding));
  }

  private Fraction usNumber(Rounding rounding) {
    return unit == Unit.IN ? amount : rounding.toStep(inInches(), Fraction.of(1, 8));
  }

  private String metric(Style style, Rounding rounding) {
    if (unit != Unit.IN) {
      Fraction tenths = rounding.toStep(amount, Fraction.of(1, 10));
      return style.decimal(tenths, unit.spellings().get(0));
    }
    Fraction millimetres = inMillimetres();
    if (millimetres.compareTo(CENTIMETRES_FROM) < 0) {
      return style.decimal(rounding.toStep(millimetres, Fraction.ONE), "mm");
    }
    Fraction centimetres = millimetres.dividedBy(Unit.CM.inBase());
    return style.decimal(rounding.toStep(centimetres, Fraction.of(1, 2)), "cm");
  }

  @Override
  public String toString() {
    return amount + " " + unit.spellings().get(0);
  }
}
