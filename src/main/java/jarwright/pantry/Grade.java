package jarwright.pantry;

import jarwright.problem.Nearest;
import java.util.Arrays;
import java.util.List;

/** Kinds of verdict, the mildest first. */
public enum Grade {
  SHELF("shelf"),
  USE_FIRST("use-first"),
  REFRIGERATE("refrigerate"),
  /** It was frozen in time and stays so. */
  FREEZER("freezer"),
  RECAN("recan"),
  THROW_AWAY("throw-away");

  private final String word;

  Grade(String word) {
    this.word = word;
  }

  /**
   * Reads the word that rules and ledger use.
   *
   * @throws IllegalArgumentException naming the text and the words there are
   */
  public static Grade parse(String text) {
    List<String> words = Arrays.stream(values()).map(Grade::word).toList();
    int found = words.indexOf(text);
    if (found < 0) {
      throw new IllegalArgumentException(
          "\"" + Shown.of(text) + "\" is no verdict; " + Nearest.remedy(text, words));
    }
    return values()[found];
  }

  public String word() {
    return word;
  }

  public boolean isStricterThan(Grade other) {
    return compareTo(other) > 0;
  }
}
