package jarwright.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a mistyped one most likely meant. */
public final class Nearest {
  private static final int LONGEST_WORD = 80;
  private static final int SURE_PREFIX = 4;

  private Nearest() {}

  /** The closest of the known words, or none where nothing is close. */
  public static Optional<String> to(String word, Collection<String> known) {
    String wanted = word.toLowerCase(Locale.ROOT).strip();
    if (wanted.isEmpty() || wanted.length() > LONGEST_WORD) {
      return Optional.empty();
    }
    return known.stream()
        .min(Comparator.comparingInt((String k) -> score(wanted, k)).thenComparing(k -> k))
        .filter(k -> isClose(wanted, k));
  }

  /** {@code did you mean quart? (known: half-pint, pint, quart)}, the remedy for a wrong word. */
  public static String remedy(String word, Collection<String> known) {
    String all = "known: " + String.join(", ", known);
    return to(word, known).map(k -> "did you mean " + k + "? (" + all + ")").orElse(all);
  }

  private static boolean isClose(String wanted, String known) {
    int allowed = Math.max(1, Math.max(wanted.length(), known.length()) / 3);
    return score(wanted, known) <= allowed;
  }

  private static int score(String wanted, String known) {
    String candidate = known.toLowerCase(Locale.ROOT);
    boolean begins =
        wanted.length() >= SURE_PREFIX
            && (candidate.startsWith(wanted) || wanted.startsWith(candidate));
    return begins ? 1 : distance(wanted, candidate);
  }

  /** Edits (insert, drop, change one letter) that turn one word into the other. */
  public static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
