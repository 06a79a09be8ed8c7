package jarwright.quantity;

import java.math.BigDecimal;

/**
 * How amounts are written on a print-out.
 *
 * @param alone whether a US volume may stand without its metric one in any language, as half of a
 *     text that gives both
 */
public record Style(Units units, AmountWords words, boolean alone) {
  public Style(Units units, AmountWords words) {
    this(units, words, false);
  }

  public static Style english(Units units) {
    return new Style(units, AmountWords.ENGLISH);
  }

  /** These words with the amounts of one system alone, for a text that puts the other beside it. */
  public Style only(Units one) {
    return new Style(one, words, true);
  }

  /** The number with the unit's word. */
  String named(Object number, String unit) {
    return number + " " + words.word(unit);
  }

  /** A number known to be a multiple of a decimal step, with the unit's word. */
  String decimal(Fraction number, String unit) {
    BigDecimal exact =
        new BigDecimal(number.numerator())
            .divide(new BigDecimal(number.denominator()))
            .stripTrailingZeros();
    return words.number(exact) + " " + words.word(unit);
  }

  String join(String us, String metric) {
    return units.join(us, metric);
  }

  /** As {@link #join}, with both where the language wants a US volume explained. */
  public String joinVolumes(String us, String metric) {
    boolean both = units == Units.US && !alone && words.volumesNeedMetric();
    return (both ? Units.BOTH : units).join(us, metric);
  }
}
