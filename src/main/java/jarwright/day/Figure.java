package jarwright.day;

import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.util.function.Function;

/**
 * An amount to act on, as it is printed.
 *
 * @param main set big
 * @param also the same in the household's other units, set beside it; may be empty
 */
public record Figure(String main, String also) {

  /** A figure that is the same in all units. */
  public static Figure of(String main) {
    return new Figure(main, "");
  }

  /**
   * An amount in the units that the household reads: kitchen measures first where it reads both.
   */
  public static Figure of(Units units, Wording words, Function<Style, String> amount) {
    Style style = UnitWords.brief(units, words);
    String main = amount.apply(style.only(units == Units.METRIC ? Units.METRIC : Units.US));
    if (amount.apply(style).equals(main)) {
      return of(main);
    }
    return new Figure(main, amount.apply(style.only(Units.METRIC)));
  }

  /** On one line: {@code 1/2 in (13 mm)}. */
  @Override
  public String toString() {
    return also.isEmpty() ? main : main + " (" + also + ")";
  }
}
