package jarwright.files;

import java.util.regex.Pattern;

/** Numbers as they are written where a comma stands before the decimals. */
final class DecimalComma {
  private static final Pattern POINT_BEFORE_THREE = Pattern.compile("\\d\\.\\d{3}(?!\\d)");
  private static final Pattern BETWEEN_DIGITS = Pattern.compile("(?<=\\d),(?=\\d)");

  private DecimalComma() {}

  /**
   * The same amount with a decimal point.
   *
   * @throws IllegalArgumentException where a point may mean thousands or decimals: nobody can tell
   */
  static String toPoint(String text) {
    if (POINT_BEFORE_THREE.matcher(text).find()
        || (text.contains(".") && BETWEEN_DIGITS.matcher(text).find())) {
      throw new IllegalArgumentException(
          "\"" + Fields.shown(text) + "\" may mean thousands or decimals here");
    }
    return BETWEEN_DIGITS.matcher(text).replaceAll(".");
  }
}
