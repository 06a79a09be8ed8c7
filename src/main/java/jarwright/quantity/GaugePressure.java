package jarwright.quantity;

import java.util.List;

/**
 * Pressure above that of the air, as a canner's gauge or weight shows it. One psi is
 * 4.4482216152605 N over 0.00064516 m² exactly.
 */
public record GaugePressure(Fraction amount, Unit unit) implements Comparable<GaugePressure> {
  /** Units of pressure, based on the psi in which the tables are printed. */
  public enum Unit implements jarwright.quantity.Unit {
    PSI(Fraction.ONE, "psi", "lb/in2", "pounds"),
    KPA(Fraction.of(6_451_600_000_000L, 44_482_216_152_605L), "kPa");

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

  public static GaugePressure psi(long psi) {
    return new GaugePressure(Fraction.of(psi), Unit.PSI);
  }

  /**
   * Reads {@code 11 psi} or {@code 76 kPa}.
   *
   * @throws IllegalArgumentException when number or unit is missing or unknown
   */
  public static GaugePressure parse(String text) {
    AmountText.Parsed<Unit> parsed = AmountText.parse("a pressure", text, Unit.values());
    return new GaugePressure(parsed.amount(), parsed.unit());
  }

  public Fraction inPsi() {
    return amount.times(unit.inBase());
  }

  @Override
  public int compareTo(GaugePressure other) {
    return inPsi().compareTo(other.inPsi());
  }

  /**
   * Psi first, as gauges, weights and the tables show it, with kPa beside for those who read metric
   * units.
   */
  public String text(Style style) {
    String psi = psi(style);
    return style.units() == Units.US ? psi : Units.BOTH.join(psi, kilopascals(style));
  }

  /** Whole psi, rounded up: a pressure on paper is the least that must be held. */
  public String psi(Style style) {
    return whole(inPsi(), "psi", style);
  }

  /** Whole kPa, rounded up like {@link #psi(Style)}. */
  public String kilopascals(Style style) {
    return whole(inPsi().dividedBy(Unit.KPA.inBase()), "kPa", style);
  }

  private static String whole(Fraction exact, String unit, Style style) {
    return style.decimal(Rounding.UP.toStep(exact, Fraction.ONE), unit);
  }

  @Override
  public String toString() {
    return amount + " " + unit.spellings().get(0);
  }
}
