package jarwright.quantity;

import java.math.BigDecimal;
import java.util.Locale;

/** How a language writes numbers and the words of units. */
public interface AmountWords {
  /** The guide's own English. */
  AmountWords ENGLISH = new AmountWords() {};

  /**
   * The language's word for an English one.
   *
   * @param english a unit or {@code to}, as {@code cups}, {@code in}
   */
  default String word(String english) {
    return english;
  }

  /** The word of a unit of which there is more than one, where it is not {@link #word}. */
  default String several(String english) {
    return word(english);
  }

  /** A number with its decimal and thousands signs: {@code 2.5}, {@code 1,378}. */
  default String number(BigDecimal exact) {
    return String.format(Locale.ROOT, "%,." + Math.max(0, exact.scale()) + "f", exact);
  }

  /**
   * Whether a US volume never stands without its metric one: the name of a quart is a quarter in
   * other languages, and cups and spoons differ from country to country.
   */
  default boolean volumesNeedMetric() {
    return false;
  }
}
