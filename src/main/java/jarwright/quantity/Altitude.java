package jarwright.quantity;

import java.math.BigDecimal;
import java.util.List;

/**
 * A height above sea level. There is no default unit: 1,000 m and 1,000 ft need different
 * processes.
 *
 * <p>One foot is 0.3048 m exactly (international foot, 1959).
 */
public record Altitude(Fraction amount, Unit unit) implements Comparable<Altitude> {
  private static final Fraction LOWEST_METRES = Fraction.of(-500);
  private static final Fraction HIGHEST_METRES = Fraction.of(9_000);

  private static final Altitude WHOLE_BELOW = metres(50);

  /** Units of altitude, based on the metre. */
  public enum Unit implements jarwright.quantity.Unit {
    M(Fraction.ONE, "m", "metre", "metres", "meter", "meters"),
    FT(Fraction.of(381, 1_250), "ft", "foot", "feet");

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
   * Refuses what no kitchen stands on: the lowest land is the shore of the Dead Sea at about -430
   * m, the highest the top of Mount Everest at 8,849 m.
   */
  public Altitude {
    Fraction metres = amount.times(unit.inBase());
    if (metres.compareTo(LOWEST_METRES) < 0 || metres.compareTo(HIGHEST_METRES) > 0) {
      throw new IllegalArgumentException(
          "an altitude is from "
              + LOWEST_METRES
              + " m to "
              + HIGHEST_METRES
              + " m, not "
              + amount
              + " "
              + unit.spellings().get(0));
    }
  }

  public static Altitude feet(long feet) {
    return new Altitude(Fraction.of(feet), Unit.FT);
  }

  public static Altitude metres(long metres) {
    return new Altitude(Fraction.of(metres), Unit.M);
  }

  /**
   * Reads {@code 420 m} or {@code 5,400 ft}.
   *
   * @throws UnclearAmount when a point stands before exactly three digits, or in an altitude so low
   *     that the point more likely parts thousands: {@code 2.4 m} may be 2,400 m. Such an altitude
   *     is written in whole metres or feet.
   * @throws IllegalArgumentException when number or unit is missing or unknown
   */
  public static Altitude parse(String text) {
    AmountText.Written<Unit> written = AmountText.split("an altitude", text, Unit.values());
    Altitude altitude = new Altitude(written.amount(), written.unit());
    boolean low = altitude.compareTo(WHOLE_BELOW) < 0;
    if (written.isLikeThousands() || (low && written.hasPoint())) {
      throw altitude.unclear(written);
    }
    return altitude;
  }

  /**
   * Offers the decimal rounded up, as the tables round it too, and the thousands where they are.
   */
  private UnclearAmount unclear(AmountText.Written<Unit> written) {
    String decimal = written.named(written.asDecimal());
    String whole = written.named(new BigDecimal(amount.ceiling()));
    String thousands = written.named(written.asThousands());
    Fraction metres = inMetres().times(1_000);
    if (metres.compareTo(LOWEST_METRES) < 0 || metres.compareTo(HIGHEST_METRES) > 0) {
      return new UnclearAmount(
          written.text(),
          "may have its point in the wrong place",
          "check the altitude, and write it in whole " + unit.spellings().get(0) + ", as " + whole);
    }
    return UnclearAmount.of(written.text(), List.of(decimal, thousands), List.of(whole, thousands));
  }

  /** The exact altitude in metres. */
  public Fraction inMetres() {
    return amount.times(unit.inBase());
  }

  /** The exact altitude in feet. */
  public Fraction inFeet() {
    return unit == Unit.FT ? amount : inMetres().dividedBy(Unit.FT.inBase());
  }

  /**
   * The next whole foot at or above this altitude: the tables print whole feet, and a kitchen
   * between two bands belongs to the higher one.
   */
  public int feetRoundedUp() {
    return inFeet().ceiling().intValueExact();
  }

  @Override
  public int compareTo(Altitude other) {
    return inMetres().compareTo(other.inMetres());
  }

  /** Whole feet and metres, each rounded up. */
  public String text(Style style) {
    return style.join(
        style.decimal(Rounding.UP.toStep(inFeet(), Fraction.ONE), "ft"),
        style.decimal(Rounding.UP.toStep(inMetres(), Fraction.ONE), "m"));
  }

  @Override
  public String toString() {
    return amount + " " + unit.spellings().get(0);
  }
}
