package jarwright.files;

import java.util.regex.Pattern;

/**
 * Text as it stands in a cell of the ledger: on one line, and harmless when a spreadsheet opens it.
 *
 * <p>A spreadsheet computes cells that begin with {@code = + - @}, a tab or a carriage return
 * (OWASP, "CSV Injection"), and one that parts cells at semicolons looks for them after those too.
 * Nothing is lost: {@code in(out(text))} is the text, for every text.
 */
final class Cell {
  private static final String FORMULA_STARTS = "=+-@'\uFF1D\uFF0B\uFF0D\uFF20";

  /** Lots of a day's fifth batch, as 260824E-5, would be taken for numbers. */
  private static final Pattern LIKE_A_POWER = Pattern.compile("\\d+[Ee]-?\\d+");

  private static final String ESCAPED = "\\\n\r\t;";
  private static final String LETTERS = "\\nrts";
  private static final int UNICODE_LENGTH = 6;

  private Cell() {}

  static String out(String text) {
    StringBuilder cell = new StringBuilder(text.length() + 8);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      int named = ESCAPED.indexOf(c);
      if (named >= 0) {
        cell.append('\\').append(LETTERS.charAt(named));
      } else if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || isAlone(text, i)) {
        cell.append("\\u").append(hex(c));
      } else {
        cell.append(c);
      }
    }
    boolean computed = cell.length() > 0 && FORMULA_STARTS.indexOf(cell.charAt(0)) >= 0;
    return computed || LIKE_A_POWER.matcher(cell).matches() ? "'" + cell : cell.toString();
  }

  /**
   * The text again.
   *
   * @throws IllegalArgumentException where the cell was not written by {@link #out}
   */
  static String in(String cell) {
    String escaped = cell.startsWith("'") ? cell.substring(1) : cell;
    if (escaped.indexOf('\\') < 0) {
      return escaped;
    }
    StringBuilder text = new StringBuilder(escaped.length());
    int i = 0;
    while (i < escaped.length()) {
      char c = escaped.charAt(i);
      char letter = i + 1 < escaped.length() ? escaped.charAt(i + 1) : ' ';
      if (c != '\\') {
        text.append(c);
        i++;
      } else if (letter == 'u' && i + UNICODE_LENGTH <= escaped.length()) {
        text.append((char) Integer.parseInt(escaped.substring(i + 2, i + UNICODE_LENGTH), 16));
        i += UNICODE_LENGTH;
      } else if (LETTERS.indexOf(letter) >= 0) {
        text.append(ESCAPED.charAt(LETTERS.indexOf(letter)));
        i += 2;
      } else {
        throw new IllegalArgumentException("\"\\" + letter + "\" stands for nothing");
      }
    }
    return text.toString();
  }

  /** Half of a surrogate pair, which UTF-8 cannot write. */
  private static boolean isAlone(String text, int i) {
    char c = text.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
    }
    return Character.isLowSurrogate(c)
        && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
  }

  private static String hex(char c) {
    String digits = Integer.toHexString(c);
    return "0".repeat(4 - digits.length()) + digits;
  }
}
