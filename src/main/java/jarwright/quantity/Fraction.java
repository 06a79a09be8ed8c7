package jarwright.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An exact rational number in lowest terms, the number behind every amount.
 *
 * <p>Text form is the kitchen's: {@code 1/4}, {@code 2}, {@code 1-1/2}.
 */
public record Fraction(BigInteger numerator, BigInteger denominator)
    implements Comparable<Fraction> {
  public static final Fraction ZERO = of(0);
  public static final Fraction ONE = of(1);

  private static final int LONGEST_TEXT = 24;
  private static final Pattern MIXED = Pattern.compile("(?:(\\d+)[- ])?(\\d+)/(\\d+)");
  private static final Pattern DECIMAL = Pattern.compile("\\d+(?:\\.\\d+)?|\\.\\d+");

  /** Reduces to lowest terms with a positive denominator; a zero denominator is refused. */
  public Fraction {
    Objects.requireNonNull(numerator, "numerator");
    if (denominator.signum() == 0) {
      throw new IllegalArgumentException("a fraction cannot have 0 below the line");
    }
    BigInteger common = numerator.gcd(denominator);
    if (denominator.signum() < 0) {
      common = common.negate();
    }
    if (!common.equals(BigInteger.ONE) && common.signum() != 0) {
      numerator = numerator.divide(common);
      denominator = denominator.divide(common);
    }
  }

  /** By hand, as {@link #hashCode}: at every start, what Java makes for a record costs more. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Fraction that
        && numerator.equals(that.numerator)
        && denominator.equals(that.denominator);
  }

  @Override
  public int hashCode() {
    return numerator.hashCode() * 31 + denominator.hashCode();
  }

  public static Fraction of(long whole) {
    return of(whole, 1);
  }

  public static Fraction of(long numerator, long denominator) {
    return new Fraction(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  /**
   * Reads {@code 3}, {@code 2.5}, {@code 1/4}, {@code 1-1/2} or {@code 1 1/2}, with an optional
   * minus sign before it.
   *
   * @throws IllegalArgumentException naming the text when it is none of these
   */
  public static Fraction parse(String text) {
    String trimmed = text.trim();
    boolean negative = trimmed.startsWith("-");
    String digits = negative ? trimmed.substring(1) : trimmed;
    if (digits.length() <= LONGEST_TEXT) {
      Matcher mixed = MIXED.matcher(digits);
      if (mixed.matches()) {
        Fraction part =
            new Fraction(new BigInteger(mixed.group(2)), new BigInteger(mixed.group(3)));
        Fraction whole = mixed.group(1) == null ? ZERO : integer(new BigInteger(mixed.group(1)));
        return signed(whole.plus(part), negative);
      }
      if (DECIMAL.matcher(digits).matches()) {
        BigDecimal decimal = new BigDecimal(digits);
        Fraction value = new Fraction(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
        return signed(value, negative);
      }
    }
    throw new IllegalArgumentException(
        "\"" + Shown.of(text) + "\" is not a number like 3, 2.5, 1/4 or 1-1/2");
  }

  private static Fraction integer(BigInteger whole) {
    return new Fraction(whole, BigInteger.ONE);
  }

  private static Fraction signed(Fraction value, boolean negative) {
    return negative ? ZERO.minus(value) : value;
  }

  public Fraction plus(Fraction other) {
    return new Fraction(
        numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
        denominator.multiply(other.denominator));
  }

  public Fraction minus(Fraction other) {
    return plus(new Fraction(other.numerator.negate(), other.denominator));
  }

  public Fraction times(Fraction other) {
    return new Fraction(
        numerator.multiply(other.numerator), denominator.multiply(other.denominator));
  }

  public Fraction times(long factor) {
    return times(of(factor));
  }

  public Fraction dividedBy(Fraction other) {
    return new Fraction(
        numerator.multiply(other.denominator), denominator.multiply(other.numerator));
  }

  /** The largest whole number not above this one. */
  public BigInteger floor() {
    if (isWhole()) {
      return numerator;
    }
    BigInteger towardsZero = numerator.divide(denominator);
    return signum() < 0 ? towardsZero.subtract(BigInteger.ONE) : towardsZero;
  }

  /** The smallest whole number not below this one. */
  public BigInteger ceiling() {
    return isWhole() ? numerator : floor().add(BigInteger.ONE);
  }

  public int signum() {
    return numerator.signum();
  }

  public boolean isWhole() {
    return denominator.equals(BigInteger.ONE);
  }

  @Override
  public int compareTo(Fraction other) {
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }

  /** Kitchen form, which {@link #parse} reads back to an equal value. */
  @Override
  public String toString() {
    if (isWhole()) {
      return numerator.toString();
    }
    if (numerator.signum() < 0) {
      return "-" + new Fraction(numerator.negate(), denominator);
    }
    BigInteger[] parts = numerator.divideAndRemainder(denominator);
    String part = parts[1] + "/" + denominator;
    return parts[0].signum() == 0 ? part : parts[0] + "-" + part;
  }
}
