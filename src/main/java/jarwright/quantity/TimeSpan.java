package jarwright.quantity;

import java.util.List;

/**
 * A stretch of time as a recipe writes it, from shortest to longest.
 *
 * @param shortest in the unit
 * @param longest in the unit; the same where one figure is written
 */
public record TimeSpan(Fraction shortest, Fraction longest, Unit unit) {
  private static final Fraction YEAR = Fraction.of(366L * 86_400);

  /** Units of time, based on the second. */
  public enum Unit implements jarwright.quantity.Unit {
    S(1, "s"),
    MIN(60, "min"),
    H(3_600, "h"),
    DAYS(86_400, "days", "day"),
    WEEKS(604_800, "weeks", "week");

    private final Fraction inBase;
    private final List<String> spellings;

    Unit(int seconds, String... spellings) {
      this.inBase = Fraction.of(seconds);
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

  public TimeSpan {
    if (shortest.signum() <= 0 || longest.compareTo(shortest) < 0) {
      throw new IllegalArgumentException("a stretch of time runs from a shorter to a longer time");
    }
    if (longest.times(unit.inBase()).compareTo(YEAR) > 0) {
      throw new IllegalArgumentException("no step takes longer than a year");
    }
  }

  /** The shortest in whole minutes, never less than is written. */
  public int leastMinutes() {
    return minutes(shortest);
  }

  /** The longest in whole minutes. */
  public int mostMinutes() {
    return minutes(longest);
  }

  private int minutes(Fraction length) {
    Fraction minutes = length.times(unit.inBase()).dividedBy(Unit.MIN.inBase());
    return Rounding.UP.toStep(minutes, Fraction.ONE).numerator().intValueExact();
  }

  /** As a step's text writes it in braces: {@code 12..18 h}. */
  @Override
  public String toString() {
    String length = shortest.equals(longest) ? shortest.toString() : shortest + ".." + longest;
    return length + " " + unit.spellings().get(0);
  }

  String text(Style style) {
    boolean one = longest.compareTo(Fraction.ONE) <= 0 && unit.spellings().size() > 1;
    String word = unit.spellings().get(one ? 1 : 0);
    if (shortest.equals(longest)) {
      return style.named(shortest, word);
    }
    return style.named(shortest + " " + style.words().word("to") + " " + longest, word);
  }
}
