package jarwright.quantity;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Splits "420 m" into its number and its unit; shared by the parsers of all amounts. */
final class AmountText {
  /** Commas in groups of three from the right; any other comma is left for the number to refuse. */
  private static final Pattern GROUPED =
      Pattern.compile("-?[1-9]\\d{0,2}(?:,\\d{3})+(?:\\.\\d+|[ -]\\d+/\\d+)?");

  private AmountText() {}

  record Parsed<U>(Fraction amount, U unit) {}

  /**
   * Reads a number followed by one of the given units.
   *
   * @param kind the kind of amount, for the message: "an altitude"
   * @throws IllegalArgumentException when the number or the unit is missing or unknown
   */
  static <U extends Unit> Parsed<U> parse(String kind, String text, U[] units) {
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
        return new Parsed<>(Fraction.parse(ungrouped(number)), candidate);
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

  private static boolean matches(Unit candidate, String unit) {
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

  /** A value known to be a multiple of a decimal step, as digits: {@code 2.5}, {@code 1,378}. */
  static String digits(Fraction value) {
    BigDecimal exact =
        new BigDecimal(value.numerator())
            .divide(new BigDecimal(value.denominator()))
            .stripTrailingZeros();
    return String.format(Locale.ROOT, "%,." + Math.max(0, exact.scale()) + "f", exact);
  }
}
