package jarwright.render;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sets {@code 1 1/2} and {@code 1-1/2} with a small raised numerator and a small denominator. */
final class Fractions {
  private static final Pattern FRACTION =
      Pattern.compile("(?<![\\d/])(\\d{1,2})/(\\d{1,2})(?![\\d/])");
  private static final Pattern MIXED = Pattern.compile("(.*\\D)?\\d+[ -]");
  private static final double SMALL = 0.64;

  private Fractions() {}

  /** The text in pieces of one glue, its fractions set; a space before one becomes a thin one. */
  static List<Piece> set(String text, Style style, Face face, int glue) {
    List<Piece> pieces = new ArrayList<>();
    double size = style.size();
    double leading = size * style.leading();
    double rise = face.capHeight() * size * (1 - SMALL);
    String slash = face.has('\u2044') ? "\u2044" : "/";
    Matcher matcher = FRACTION.matcher(text);
    int done = 0;
    while (matcher.find()) {
      String before = text.substring(done, matcher.start());
      boolean mixed = MIXED.matcher(before).matches();
      if (!before.isBlank() || (!mixed && !before.isEmpty())) {
        String shown = mixed ? before.substring(0, before.length() - 1) : before;
        pieces.add(new Piece.Words(shown, face, size, style.tone(), 0, leading, glue));
      }
      if (mixed) {
        pieces.add(new Piece.Words(" ", face, size * 0.4, style.tone(), 0, 0, glue));
      }
      pieces.add(
          new Piece.Words(matcher.group(1), face, size * SMALL, style.tone(), rise, 0, glue));
      pieces.add(new Piece.Words(slash, face, size * 0.95, style.tone(), 0, leading, glue));
      pieces.add(new Piece.Words(matcher.group(2), face, size * SMALL, style.tone(), 0, 0, glue));
      done = matcher.end();
    }
    if (done < text.length()) {
      pieces.add(new Piece.Words(text.substring(done), face, size, style.tone(), 0, leading, glue));
    }
    return pieces;
  }
}
