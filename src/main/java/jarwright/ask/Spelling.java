package jarwright.ask;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Cuts a text into words, and makes words alike that differ in number, gender or accent alone. */
final class Spelling {
  private static final Pattern WORD = Pattern.compile("\\d+(?:[.,/]\\d+)*+%?|\\p{L}+");
  private static final Pattern MARK = Pattern.compile("\\p{M}+");
  private static final Pattern BEFORE_PERCENT = Pattern.compile("(?<=\\d) {1,3}(?=%)");
  private static final Map<String, String> WRITTEN_OUT =
      Map.of("½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅓", " 1/3", "&", " and ", "'s", "", "’s", "");
  private static final String SPANISH = "es";
  private static final int SHORTEST = 3;

  private Spelling() {}

  /** The words and numbers of a text in small letters without accents, as {@code 1/2, pint}. */
  static List<String> words(String text) {
    String plain = text.toLowerCase(Locale.ROOT);
    for (Map.Entry<String, String> sign : WRITTEN_OUT.entrySet()) {
      plain = plain.replace(sign.getKey(), sign.getValue());
    }
    plain = MARK.matcher(Normalizer.normalize(plain, Normalizer.Form.NFKD)).replaceAll("");
    plain = plain.toLowerCase(Locale.ROOT);
    plain = BEFORE_PERCENT.matcher(plain).replaceAll("");
    return WORD.matcher(plain).results().map(MatchResult::group).toList();
  }

  /** Whether a letter of the text has a mark, as few English words have. */
  static boolean hasAccents(String text) {
    return MARK.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).find();
  }

  static boolean isNumber(String word) {
    return Character.isDigit(word.charAt(0));
  }

  /**
   * What a word is compared by: its stem in a language.
   *
   * @param word as {@link #words} gives it
   */
  static String stem(String language, String word) {
    if (isNumber(word)) {
      return word;
    }
    return language + ":" + (language.equals(SPANISH) ? spanish(word) : english(word));
  }

  private static String english(String word) {
    String stem = without(without(word, "s", "ss"), "e", "");
    boolean turns = stem.length() > SHORTEST && stem.matches(".*[^aeiou]y");
    return turns ? stem.substring(0, stem.length() - 1) + "i" : stem;
  }

  private static String spanish(String word) {
    String singular = without(word, "s", "ss");
    String stem = without(without(without(singular, "a", ""), "e", ""), "o", "");
    return stem.endsWith("z") ? stem.substring(0, stem.length() - 1) + "c" : stem;
  }

  /** The word without an end, save where it is short or has another end. */
  private static String without(String word, String end, String other) {
    boolean cut =
        word.length() > SHORTEST
            && word.endsWith(end)
            && (other.isEmpty() || !word.endsWith(other));
    return cut ? word.substring(0, word.length() - end.length()) : word;
  }
}
