package jarwright.pantry;

import jarwright.problem.Nearest;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How much liquid a jar lost in the canner. */
public enum Liquid {
  NONE("none"),
  SOME("some"),
  HALF_OR_MORE("half-or-more");

  private final String word;

  Liquid(String word) {
    this.word = word;
  }

  /**
   * Reads {@code none}, {@code some}, {@code half-or-more} or {@code half}.
   *
   * @throws IllegalArgumentException naming the text when it is none of these
   */
  public static Liquid parse(String text) {
    String typed = text.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    for (Liquid liquid : values()) {
      if (liquid.word.equals(typed)) {
        return liquid;
      }
    }
    if (typed.equals("half")) {
      return HALF_OR_MORE;
    }
    List<String> words = Arrays.stream(values()).map(Liquid::word).toList();
    throw new IllegalArgumentException(
        "\"" + Shown.of(text) + "\" is no loss of liquid; " + Nearest.remedy(typed, words));
  }

  public String word() {
    return word;
  }
}
