package jarwright.files;

import java.text.Normalizer;

/** Free text in one line, as it may be written and printed. */
public final class OneLine {
  /** Characters that a text may have. */
  public static final int LONGEST = 200;

  /** Some keyboards and file systems write é as e and an accent, which would print as two signs. */
  private static final char FIRST_ACCENT = '\u0300';

  private OneLine() {}

  /** The text with single spaces for all gaps, and each letter with its accent one character. */
  public static String of(String text) {
    String line = text.strip().replaceAll("[\\s\\u0085\\u2028\\u2029]+", " ");
    boolean isPlain = line.chars().allMatch(c -> c < FIRST_ACCENT);
    return isPlain ? line : Normalizer.normalize(line, Normalizer.Form.NFC);
  }

  /** Whether each of its characters can be seen, and none steers a terminal or turns the line. */
  public static boolean isPrintable(String text) {
    return text.codePoints().allMatch(OneLine::isPrintable);
  }

  private static boolean isPrintable(int codePoint) {
    int type = Character.getType(codePoint);
    return type != Character.CONTROL
        && type != Character.FORMAT
        && type != Character.SURROGATE
        && type != Character.PRIVATE_USE
        && type != Character.UNASSIGNED;
  }
}
