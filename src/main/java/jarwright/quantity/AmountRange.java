package jarwright.quantity;

/**
 * A measure, or a range of one, as a recipe text writes it. Rounded to the nearest step: figures
 * that safety depends on are never written by this class.
 *
 * @param volume whether the measure is one of volume
 */
record AmountRange(Writer low, Writer high, boolean volume) {
  /** Stands between the measures of one amount. */
  private static final String MEASURES = "+";

  /** Writes one end of the range. */
  interface Writer {
    String text(Style style);
  }

  /**
   * The range in a unit of volume, mass, length or temperature.
   *
   * @throws IllegalArgumentException when the unit is none of theirs, or the range is upside down
   */
  static AmountRange of(Fraction low, Fraction high, String unit) {
    if (high.compareTo(low) < 0) {
      throw new IllegalArgumentException("a range runs from less to more");
    }
    return new AmountRange(
        writer(low, unit), writer(high, unit), known(unit, Volume.Unit.values()));
  }

  private static Writer writer(Fraction amount, String unit) {
    String text = amount + " " + unit;
    if (known(unit, Temperature.Scale.values())) {
      Temperature temperature = Temperature.parse(text);
      return style -> temperature.text(style, Rounding.NEAREST);
    }
    if (known(unit, Length.Unit.values())) {
      Length length = Length.parse(text);
      return style -> length.text(style, Rounding.NEAREST);
    }
    if (known(unit, Mass.Unit.values())) {
      Mass mass = Mass.parse(text);
      return style -> mass.text(style, Rounding.NEAREST);
    }
    if (known(unit, Volume.Unit.values())) {
      Volume volume = Volume.parse(text);
      return style -> volume.text(style, Rounding.NEAREST);
    }
    throw new IllegalArgumentException("\"" + unit + "\" is not a unit of a recipe text");
  }

  private static boolean known(String unit, Unit[] units) {
    for (Unit candidate : units) {
      if (candidate.spellings().contains(unit)) {
        return true;
      }
    }
    return false;
  }

  String text(Style style) {
    String us = range(style.only(Units.US));
    String metric = range(style.only(Units.METRIC));
    return volume ? style.joinVolumes(us, metric) : style.join(us, metric);
  }

  /** {@code 1/2 to 1 in}: the unit once where both ends are one measure of the same. */
  private String range(Style style) {
    String from = low.text(style);
    String to = high.text(style);
    if (from.equals(to)) {
      return from;
    }
    String unit = to.substring(to.indexOf(' '));
    boolean shared = from.endsWith(unit) && from.indexOf(MEASURES) < 0;
    String start = shared ? from.substring(0, from.length() - unit.length()) : from;
    return start + " " + style.words().word("to") + " " + to;
  }
}
