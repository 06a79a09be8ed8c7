package jarwright.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.StringTokenizer;

/**
 * Where a word of one language may be divided: Liang's pattern method (F. M. Liang, Word
 * Hy-phen-a-tion by Com-put-er, 1983) over published patterns, which are read when a word first
 * needs them. The PDF library has the method too, but takes ten times as long to read patterns and
 * brings none.
 */
final class Hyphens {
  /** Fewer letters than this never stand alone before or after a hyphen. */
  private static final int LEAST = 3;

  private final Locale locale;
  private Map<String, String> patterns;
  private int longest;

  Hyphens(Locale locale) {
    this.locale = locale;
  }

  Locale locale() {
    return locale;
  }

  /** The points inside {@code text} before which a word of it may be divided, ascending. */
  int[] points(String text) {
    int[] points = new int[text.length()];
    int count = 0;
    int from = 0;
    while (from < text.length()) {
      int to = from;
      while (to < text.length() && Character.isLetter(text.charAt(to))) {
        to++;
      }
      if (to - from >= 2 * LEAST) {
        String levels = levels(text.substring(from, to).toLowerCase(locale));
        for (int i = LEAST; i <= to - from - LEAST && levels.length() > i; i++) {
          if ((levels.charAt(i) & 1) == 1) {
            points[count++] = from + i;
          }
        }
      }
      from = to + 1;
    }
    return Arrays.copyOf(points, count);
  }

  /** For each letter of a word the level of the point before it; odd ones allow a hyphen. */
  private String levels(String word) {
    if (patterns == null) {
      patterns = read();
    }
    String exception = patterns.get(word);
    if (exception != null && exception.charAt(0) == '0') {
      return exception;
    }
    String dotted = "." + word + ".";
    char[] levels = new char[dotted.length() + 1];
    for (int from = 0; from < dotted.length(); from++) {
      for (int to = from + 1; to <= Math.min(dotted.length(), from + longest); to++) {
        String pattern = patterns.get(dotted.substring(from, to));
        if (pattern != null) {
          raise(levels, from, pattern);
        }
      }
    }
    return new String(levels, 1, word.length());
  }

  private static void raise(char[] levels, int from, String pattern) {
    int at = from;
    for (int i = 0; i < pattern.length(); i++) {
      char c = pattern.charAt(i);
      if (c >= '0' && c <= '9') {
        levels[at] = (char) Math.max(levels[at], c);
      } else {
        at++;
      }
    }
  }

  private Map<String, String> read() {
    Map<String, String> read = new HashMap<>(16_384);
    try (InputStream in =
        Hyphens.class.getResourceAsStream("hyphens-" + locale.getLanguage() + ".txt")) {
      String all = in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
      int start = all.startsWith("#") ? all.indexOf('\n', all.lastIndexOf("\n#") + 1) : 0;
      StringTokenizer words = new StringTokenizer(all.substring(start));
      while (words.hasMoreTokens()) {
        put(read, words.nextToken());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return read;
  }

  /** A pattern under its letters; an exception, as {@code ta-ble}, as levels beginning with 0. */
  private void put(Map<String, String> read, String pattern) {
    StringBuilder letters = new StringBuilder(pattern.length());
    StringBuilder levels = new StringBuilder(pattern.length());
    boolean hyphen = false;
    boolean exception = true;
    for (int i = 0; i < pattern.length(); i++) {
      char c = pattern.charAt(i);
      if (c == '-') {
        hyphen = true;
      } else if (c >= '0' && c <= '9') {
        exception = false;
      } else {
        letters.append(c);
        levels.append(hyphen ? '1' : '0');
        hyphen = false;
      }
    }
    longest = Math.max(longest, letters.length());
    read.put(letters.toString(), exception ? levels.toString() : pattern);
  }
}
