package jarwright.quantity;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Splits "420 m" into its number and its unit; shared by the parsers of all amounts. */
final class AmountText {
  /** Commas in groups of three from the right; any other comma is left for the number to refuse. */
  private static final Pattern GROUPED =
      Pattern.compile("-?[1-9]\\d{0,2}(?:,\\d{3})+(?:\\.\\d+|[ -]\\d+/\\d+)?");

  private static final int THOUSANDS_DIGITS = 3;

  private AmountText() {}

  /** A point that parts a group of three digits; after a leading zero it can only be decimal. */
  private static final Pattern POINT_AND_THREE = Pattern.compile("-?[1-9]\\d*\\.\\d{3}");

  record Parsed<U>(Fraction amount, U unit) {}

  /** A number with its unit, not yet worked out. */
  record Written<U extends Unit>(String text, String number, U unit) {
    Fraction amount() {
      return Fraction.parse(number);
    }

    boolean hasPoint() {
      return number.indexOf('.') >= 0;
    }

    /** Whether the number may be taken for thousands by half of the world. */
    boolean isLikeThousands() {
      return POINT_AND_THREE.matcher(number).matches();
    }

    /** The number in the unit, in plain digits. */
    String named(BigDecimal amount) {
      return amount.toPlainString() + " " + unit.spellings().get(0);
    }

    BigDecimal asDecimal() {
      return new BigDecimal(number).stripTrailingZeros();
    }

    BigDecimal asThousands() {
      return new BigDecimal(number).movePointRight(THOUSANDS_DIGITS);
    }
  }

  /**
   * Reads a number followed by one of the given units.
   *
   * @param kind the kind of amount, for the message: "an altitude"
   * @throws UnclearAmount when a point stands before exactly three digits
   * @throws IllegalArgumentException when the number or the unit is missing or unknown
   */
  static <U extends Unit> Parsed<U> parse(String kind, String text, U[] units) {
    Written<U> written = split(kind, text, units);
    Fraction amount = written.amount();
    if (written.isLikeThousands()) {
      BigDecimal decimal = written.asDecimal();
      // A fourth digit: so many that nobody takes them for a group of thousands.
      BigDecimal plain =
          decimal.scale() == THOUSANDS_DIGITS ? decimal.setScale(THOUSANDS_DIGITS + 1) : decimal;
      String thousands = written.named(written.asThousands());
      throw UnclearAmount.of(
          text,
          List.of(written.named(decimal), thousands),
          List.of(written.named(plain), thousands));
    }
    return new Parsed<>(amount, written.unit());
  }

  /** Finds number and unit, as {@link #parse} does. */
  static <U extends Unit> Written<U> split(String kind, String text, U[] units) {
    String trimmed = text.strip();
    int split = trimmed.length();
    while (split > 0 && !endsNumber(trimmed.charAt(split - 1))) {
      split--;
    }
    String number = trimmed.substring(0, split).strip();
    String unit = trimmed.substring(split).strip();
    if (unit.isEmpty()) {
      throw new IllegalArgumentException(
          kind
              + " needs a number and a unit ("
              + known(units)
              + "), not \""
              + Shown.of(text)
              + "\"");
    }
    for (U candidate : units) {
      if (matches(candidate, unit)) {
        return new Written<>(text, ungrouped(number), candidate);
      }
    }
    throw new IllegalArgumentException(
        "\"" + Shown.of(unit) + "\" is not a unit for " + kind + "; known: " + known(units));
  }

  private static String ungrouped(String number) {
    return GROUPED.matcher(number).matches() ? number.replace(",", "") : number;
  }

  private static boolean endsNumber(char c) {
    return (c >= '0' && c <= '9') || c == '.';
  }

  static boolean matches(Unit candidate, String unit) {
    for (String spelling : candidate.spellings()) {
      // "T" and "t" are tablespoon and teaspoon in kitchens: one letter is compared as written.
      boolean same =
          spelling.length() == 1 ? spelling.equals(unit) : spelling.equalsIgnoreCase(unit);
      if (same) {
        return true;
      }
    }
    return false;
  }

  private static String known(Unit[] units) {
    return Arrays.stream(units).map(u -> u.spellings().get(0)).collect(Collectors.joining(", "));
  }
}
