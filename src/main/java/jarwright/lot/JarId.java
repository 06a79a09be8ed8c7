package jarwright.lot;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One jar of a lot, as in {@code 260824A-T/03}.
 *
 * @param number from 1
 */
public record JarId(LotCode lot, int number) implements Comparable<JarId> {
  private static final int TWO_DIGITS = 10;
  private static final Pattern FORM = Pattern.compile("(.+)/(\\d{2,6})");

  public JarId {
    if (number < 1) {
      throw new IllegalArgumentException("jars are numbered from 1, not " + number);
    }
  }

  /**
   * Reads {@code 260824A-T/03}.
   *
   * @throws MistypedCode when the lot is mistyped or the number missing
   */
  public static JarId parse(String text) {
    Matcher form = FORM.matcher(text.strip());
    if (!form.matches()) {
      throw new MistypedCode(
          "\""
              + LotCode.shown(text)
              + "\" is mistyped: a jar is its lot, /, and two or more digits");
    }
    int number = Integer.parseInt(form.group(2));
    if (number == 0) {
      throw new MistypedCode("\"" + LotCode.shown(text) + "\" is mistyped: jars count from 01");
    }
    return new JarId(LotCode.parse(form.group(1)), number);
  }

  @Override
  public int compareTo(JarId other) {
    int byLot = lot.compareTo(other.lot);
    return byLot != 0 ? byLot : Integer.compare(number, other.number);
  }

  @Override
  public String toString() {
    return lot + (number < TWO_DIGITS ? "/0" : "/") + number;
  }
}
