package jarwright.ask;

import jarwright.problem.Nearest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds the known word that a mistyped one can only have meant. */
final class Typos {
  private static final int SHORTEST = 5;
  private static final int LONG = 8;

  private final Set<String> known;

  Typos(Set<String> known) {
    this.known = known.stream().filter(w -> w.length() >= SHORTEST).collect(Collectors.toSet());
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
              .filter(k -> k.charAt(0) == word.charAt(0) && Nearest.distance(word, k) == most)
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
