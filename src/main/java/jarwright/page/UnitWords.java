package jarwright.page;

import jarwright.quantity.Style;
import jarwright.quantity.Units;

/** Writes amounts in a print-out's own language: the key {@code unit.cups} words the unit. */
public final class UnitWords {
  private static final String KEY = "unit.";

  private UnitWords() {}

  /** A unit without a key of its own keeps its English word, as {@code mL} does. */
  public static Style style(Units units, Wording words) {
    return new Style(units, unit -> words.has(KEY + unit) ? words.text(KEY + unit) : unit);
  }
}
