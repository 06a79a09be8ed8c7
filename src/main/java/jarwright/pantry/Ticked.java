package jarwright.pantry;

import java.util.List;
import java.util.Locale;

/** What stands in a yes-or-no box of a checklist. */
public enum Ticked {
  YES,
  NO,
  /** Left empty: nobody can say. */
  BLANK;

  private static final List<String> YES_WORDS = List.of("yes", "y", "true", "x", "1", "ok");
  private static final List<String> NO_WORDS = List.of("no", "n", "false", "0");

  public static Ticked of(boolean yes) {
    return yes ? YES : NO;
  }

  /**
   * Reads yes, no, or nothing, and what people and spreadsheets write for them.
   *
   * @throws IllegalArgumentException naming the text when it is none of these
   */
  public static Ticked parse(String text) {
    String word = text.strip().toLowerCase(Locale.ROOT);
    if (word.isEmpty() || word.equals("?")) {
      return BLANK;
    }
    if (YES_WORDS.contains(word)) {
      return YES;
    }
    if (NO_WORDS.contains(word)) {
      return NO;
    }
    throw new IllegalArgumentException("\"" + Shown.of(text) + "\" is neither yes nor no");
  }

  /** {@code yes}, {@code no}, or empty text. */
  public String word() {
    return this == BLANK ? "" : name().toLowerCase(Locale.ROOT);
  }
}
