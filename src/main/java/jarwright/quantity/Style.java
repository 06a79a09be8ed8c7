package jarwright.quantity;

import java.util.function.UnaryOperator;

/**
 * How amounts are written on a print-out.
 *
 * @param word the print-out language's word for an English unit word, as {@code cups}, {@code in},
 *     {@code to}
 */
public record Style(Units units, UnaryOperator<String> word) {
  public static Style english(Units units) {
    return new Style(units, UnaryOperator.identity());
  }

  /** The number with the unit's word. */
  String named(Object number, String unit) {
    return number + " " + word.apply(unit);
  }

  String join(String us, String metric) {
    return units.join(us, metric);
  }
}
