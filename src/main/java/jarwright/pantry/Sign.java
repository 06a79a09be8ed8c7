package jarwright.pantry;

import jarwright.problem.Nearest;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A sign of spoilage that a jar is looked over for. AIB 539 (2015) Guide 1, identifying and
 * handling spoiled canned food: the lid's vacuum, streaks from the rim, rising bubbles, unnatural
 * color; on opening spurting liquid, unnatural odor, mold on the food or under the lid.
 */
public enum Sign {
  /** Food or liquid leaks or has dried in streaks from the rim. */
  LEAKS("leak", "leaking", "leaked", "gotea", "goteaba", "fuga"),
  /** The lid bulges, or its middle is not drawn in tight. */
  BULGES("bulge", "bulging", "bulged", "swollen", "hinchado", "hinchada", "abombada"),
  /** Bubbles rise, or it spurts or foams when opened. */
  SPURTS("spurt", "spurting", "spurted", "bubbles", "foam", "foaming", "chorro", "burbujas"),
  SMELL("smells", "smelled", "smelly", "stinks", "odor", "odour", "olor", "huele"),
  MOLD("mould", "moldy", "mouldy", "moho"),
  /** The food has an odd color or the liquid is cloudy. */
  COLOR("colour", "cloud", "cloudy", "discolored", "turbio", "turbia");

  /** What says that none of them was seen. */
  public static final String NONE = "none";

  private static final Pattern BETWEEN = Pattern.compile("[\\s,;+&]+");
  private static final Map<String, Sign> BY_WORD = byWord();

  /** Words that speak of spoilage and name no sign. */
  private static final Set<String> SPOILED =
      Set.of("spoiled", "spoilt", "spoilage", "rotten", "fermenting", "fermented", "podrido");

  private final List<String> forms;

  Sign(String... forms) {
    this.forms = List.of(forms);
  }

  private static Map<String, Sign> byWord() {
    Map<String, Sign> byWord = new HashMap<>();
    for (Sign sign : values()) {
      byWord.put(sign.word(), sign);
      sign.forms.forEach(f -> byWord.put(f, sign));
    }
    return byWord;
  }

  /** As the ledger and the command line have it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether a word names this sign. */
  boolean isCalled(String word) {
    return BY_WORD.get(word) == this;
  }

  /** All words, in order. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Sign::word).toList();
  }

  /**
   * Reads {@code leaks,bulges} or {@code none}; nothing else, so that no sentence passes for a
   * look.
   *
   * @throws IllegalArgumentException naming what is no sign, and the signs there are
   */
  public static Set<Sign> parse(String text) {
    String typed = text.strip().toLowerCase(Locale.ROOT);
    Set<Sign> signs = EnumSet.noneOf(Sign.class);
    if (typed.equals(NONE)) {
      return signs;
    }
    for (String word : BETWEEN.split(typed)) {
      Sign sign = BY_WORD.get(word);
      if (sign == null) {
        throw new IllegalArgumentException(
            "\"" + Shown.of(word) + "\" is no sign of spoilage; " + Nearest.remedy(word, words()));
      }
      signs.add(sign);
    }
    return signs;
  }

  /** Whether a sentence speaks of spoilage, which then has to be told sign by sign. */
  public static boolean isSpokenOfIn(String sentence) {
    return Arrays.stream(sentence.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
        .anyMatch(w -> BY_WORD.containsKey(w) || SPOILED.contains(w));
  }

  /** {@code leaks bulges}; empty for none. */
  static String text(Set<Sign> signs) {
    return String.join(" ", signs.stream().sorted().map(Sign::word).toList());
  }
}
