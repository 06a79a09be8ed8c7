package jarwright.files;

import java.util.regex.Pattern;

/** Numbers as they are written where a comma stands before the decimals. */
final class DecimalComma {
  private static final Pattern BETWEEN_DIGITS = Pattern.compile("(?<=\\d),(?=\\d)");

  private DecimalComma() {}

  /**
   * The same amount with a decimal point. A comma before three digits becomes a point before three
   * digits, which amounts refuse.
   *
   * @throws IllegalArgumentException where point and comma stand in one number: nobody can tell
   */
  static String toPoint(String text) {
    if (text.contains(".") && BETWEEN_DIGITS.matcher(text).find()) {
      throw new IllegalArgumentException(
          "\"" + Fields.shown(text) + "\" may mean thousands or decimals here");
    }
    return BETWEEN_DIGITS.matcher(text).replaceAll(".");
  }
}
