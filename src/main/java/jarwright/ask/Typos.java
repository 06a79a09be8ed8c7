package jarwright.ask;

import jarwright.problem.Nearest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds the known word that a mistyped one can only have meant. */
final class Typos {
  private static final int SHORTEST = 5;
  private static final int LONG = 8;
  private static final int SHORTEST_GUESS = 4;
  private static final int MOST_GUESSES = 6;

  private final Set<String> known;

  Typos(Set<String> known) {
    this.known = Set.copyOf(known);
  }

  /** Known words that one edit makes of one of these; they are offered, never taken. */
  List<String> guesses(List<String> words) {
    return known.stream()
        .filter(k -> k.length() >= SHORTEST_GUESS)
        .filter(k -> words.stream().anyMatch(w -> isNear(w, k)))
        .sorted()
        .limit(MOST_GUESSES)
        .toList();
  }

  private static boolean isNear(String word, String known) {
    return Math.abs(word.length() - known.length()) <= 1 && Nearest.distance(word, known) == 1;
  }

  /** What each word was meant to be; one that cannot be told is left out. */
  Map<String, String> mend(List<String> words) {
    Map<String, String> mended = new LinkedHashMap<>();
    for (String word : words) {
      mend(word).ifPresent(m -> mended.put(word, m));
    }
    return mended;
  }

  /**
   * The word that begins with the same letter and is one edit away, two in a long word; none where
   * several different ones are as near.
   */
  private Optional<String> mend(String word) {
    if (word.length() < SHORTEST || Spelling.isNumber(word)) {
      return Optional.empty();
    }
    for (int edits = 1; edits <= (word.length() < LONG ? 1 : 2); edits++) {
      int most = edits;
      List<String> near =
          known.stream()
              .filter(k -> k.length() >= SHORTEST && k.charAt(0) == word.charAt(0))
              .filter(k -> Nearest.distance(word, k) == most)
              .sorted()
              .toList();
      if (!near.isEmpty()) {
        boolean same = near.stream().map(w -> Spelling.stem("en", w)).distinct().count() == 1;
        return same ? Optional.of(near.get(0)) : Optional.empty();
      }
    }
    return Optional.empty();
  }
}
