package jarwright.quantity;

import java.util.List;

/**
 * The power of a burner or element. One Btu (International Table) is 1055.05585262 J exactly (ISO
 * 80000-5), spread over an hour of 3,600 s.
 */
public record Power(Fraction amount, Unit unit) implements Comparable<Power> {
  /** Units of power, based on the watt. */
  public enum Unit implements jarwright.quantity.Unit {
    W(Fraction.ONE, "W", "watt", "watts"),
    KW(Fraction.of(1_000), "kW", "kilowatt", "kilowatts"),
    BTU_PER_HOUR(
        Fraction.of(105_505_585_262L, 360_000_000_000L), "BTU/h", "BTU/hr", "BTUh", "BTU", "Btu/h");

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

  /**
   * Reads {@code 2400 W}, {@code 2.4 kW} or {@code 9,000 BTU/h}.
   *
   * @throws IllegalArgumentException when number or unit is missing or unknown
   */
  public static Power parse(String text) {
    AmountText.Parsed<Unit> parsed = AmountText.parse("a power", text, Unit.values());
    return new Power(parsed.amount(), parsed.unit());
  }

  /** The exact power in watts. */
  public Fraction inWatts() {
    return amount.times(unit.inBase());
  }

  @Override
  public int compareTo(Power other) {
    return inWatts().compareTo(other.inWatts());
  }

  @Override
  public String toString() {
    return amount + " " + unit.spellings().get(0);
  }
}
