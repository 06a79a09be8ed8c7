package jarwright.quantity;

/**
 * A measure, or a range of one, as a recipe text writes it. Rounded to the nearest step: figures
 * that safety hangs on are never written by this class.
 */
record AmountRange(Writer low, Writer high) {
  /** Writes one end of the range. */
  interface Writer {
    String text(Style style);
  }

  /**
   * The range in a unit of volume, mass, length or temperature.
   *
   * @throws IllegalArgumentException when the unit is none of theirs
   */
  static AmountRange of(Fraction low, Fraction high, String unit) {
    return new AmountRange(writer(low, unit), writer(high, unit));
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
    return style.join(
        range(new Style(Units.US, style.word())), range(new Style(Units.METRIC, style.word())));
  }

  /** {@code 1/2 to 1 in}: the unit once where both ends have the same. */
  private String range(Style style) {
    String from = low.text(style);
    String to = high.text(style);
    if (from.equals(to)) {
      return from;
    }
    String unit = to.substring(to.lastIndexOf(' '));
    String start = from.endsWith(unit) ? from.substring(0, from.length() - unit.length()) : from;
    return start + " " + style.word().apply("to") + " " + to;
  }
}
