package jarwright.page;

import jarwright.quantity.AmountWords;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.math.BigDecimal;

/**
 * Writes amounts in a print-out's own language: the key {@code unit.cups} words the unit, {@code
 * unit.tsp.several} more than one of it, {@code unit.cups.brief} where there is no room. A unit
 * without a key keeps its English word, as {@code mL} does. With a key {@code
 * unit.volumes-need-metric} no US volume stands alone.
 */
public final class UnitWords implements AmountWords {
  private static final String KEY = "unit.";

  private final Wording words;
  private final boolean brief;

  private UnitWords(Wording words, boolean brief) {
    this.words = words;
    this.brief = brief;
  }

  /** The units and the words of a print-out. */
  public static Style style(Units units, Wording words) {
    return new Style(units, new UnitWords(words, false));
  }

  /** The same for a figure that stands alone, where a long word has no room. */
  public static Style brief(Units units, Wording words) {
    return new Style(units, new UnitWords(words, true));
  }

  @Override
  public String word(String english) {
    String key = KEY + english;
    if (brief && words.has(key + ".brief")) {
      return words.text(key + ".brief");
    }
    return words.has(key) ? words.text(key) : english;
  }

  @Override
  public String several(String english) {
    String key = KEY + english + ".several";
    boolean shorter = brief && words.has(KEY + english + ".brief");
    return !shorter && words.has(key) ? words.text(key) : word(english);
  }

  @Override
  public String number(BigDecimal exact) {
    return words.number(exact);
  }

  @Override
  public boolean volumesNeedMetric() {
    return words.has(KEY + "volumes-need-metric");
  }
}
