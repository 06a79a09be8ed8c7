package jarwright.page;

import java.util.Locale;

/** A character that the typeface cannot print; printing an empty box instead would mislead. */
public final class UnprintableText extends PrintFault {
  private static final long serialVersionUID = 1L;

  private final int codePoint;
  private final String text;

  /**
   * The first character that cannot be printed.
   *
   * @param where the template and line, as {@code labels.ftl:12}
   * @param codePoint the character
   * @param text the words it stands in
   */
  public UnprintableText(String where, int codePoint, String text) {
    super(
        String.format(
            Locale.ROOT,
            "%s: the typeface cannot print \"%s\" (U+%04X) in \"%s\"; write it in other letters",
            where,
            Character.toString(codePoint),
            codePoint,
            text));
    this.codePoint = codePoint;
    this.text = text;
  }

  /** The character. */
  public int codePoint() {
    return codePoint;
  }

  /** The words it stands in. */
  public String text() {
    return text;
  }
}
