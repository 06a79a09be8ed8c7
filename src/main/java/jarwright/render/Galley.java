package jarwright.render;

import jarwright.page.UnprintableText;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

/** Words set in one long row with every advance known, ready to be broken into lines. */
final class Galley {
  static final char OBJECT = '\uFFFC';
  static final char SOFT_HYPHEN = '\u00AD';

  private final List<Piece> pieces = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private final List<Integer> starts = new ArrayList<>();
  private final double[] offsets;

  private Galley(List<Piece> from, PageCount count, Element at) {
    for (Piece piece : from) {
      add(piece, count, at);
    }
    offsets = new double[text.length() + 1];
    for (int run = 0; run < pieces.size(); run++) {
      for (int i = starts.get(run); i < end(run); i++) {
        offsets[i + 1] = offsets[i] + advance(pieces.get(run), text.charAt(i));
      }
    }
  }

  /**
   * Sets the pieces.
   *
   * @throws UnprintableText for the first character that the face has no glyph for
   */
  static Galley of(List<Piece> pieces, PageCount count, Element at) {
    return new Galley(pieces, count, at);
  }

  private void add(Piece piece, PageCount count, Element at) {
    if (piece instanceof Piece.PageNumber number) {
      String shown = String.valueOf(number.all() ? count.pages() : count.page());
      add(number.as().saying(shown), count, at);
      return;
    }
    String shown = "\n";
    if (piece instanceof Piece.Words words) {
      shown = composed(words.text());
      check(shown, words.face(), at);
    } else if (piece instanceof Piece.Drawn) {
      shown = String.valueOf(OBJECT);
    }
    if (!shown.isEmpty()) {
      starts.add(text.length());
      pieces.add(piece);
      text.append(shown);
    }
  }

  /** Letters with their accents as one sign, which is what typefaces have. */
  private static String composed(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= 0x300 && (c < 0x2000 || c >= 0x2C00)) {
        return Normalizer.normalize(text, Normalizer.Form.NFC);
      }
    }
    return text;
  }

  private static void check(String text, Face face, Element at) {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int c = text.codePointAt(i);
      if (c < 0x7F && c >= ' ') {
        continue;
      }
      byte direction = Character.getDirectionality(c);
      boolean fromTheRight =
          direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
              || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
      if (fromTheRight || (drawn((char) c) != 0 && !face.has(c > 0xFFFF ? c : drawn((char) c)))) {
        throw new UnprintableText(at.place(), c, text);
      }
    }
  }

  /** The sign that is drawn for a character; 0 for one that only guides line breaking. */
  private static char drawn(char c) {
    return switch (c) {
      case '\u00A0', '\u202F' -> ' ';
      case '\u2011' -> '-';
      case SOFT_HYPHEN, '\u200B', '\u2060', '\n' -> 0;
      default -> c;
    };
  }

  private static double advance(Piece piece, char c) {
    if (piece instanceof Piece.Words words) {
      char drawn = drawn(c);
      return drawn == 0 ? 0 : words.face().width(drawn) * words.size();
    }
    return piece instanceof Piece.Drawn drawn ? drawn.width() : 0;
  }

  String text() {
    return text.toString();
  }

  /** Adds all that its lines hang on: of digits of one width only that they are digits. */
  void look(StringBuilder to) {
    for (int run = 0; run < pieces.size(); run++) {
      Piece piece = pieces.get(run);
      to.append('\n').append(glue(piece)).append(' ');
      if (piece instanceof Piece.Words words) {
        to.append(words.size()).append(' ').append(words.leading()).append(' ');
        to.append(words.face().name()).append(' ');
        boolean even = words.face().hasEvenDigits();
        for (int i = starts.get(run); i < end(run); i++) {
          char c = text.charAt(i);
          to.append(even && c >= '0' && c <= '9' ? '0' : c);
        }
      } else if (piece instanceof Piece.Drawn drawn) {
        to.append(drawn.width()).append(' ').append(drawn.tall());
      }
    }
  }

  int length() {
    return text.length();
  }

  char charAt(int i) {
    return text.charAt(i);
  }

  /** The width of characters {@code from} until {@code to}, at scale 1. */
  double width(int from, int to) {
    return offsets[to] - offsets[from];
  }

  /** The width of the widest stretch without a space, at scale 1. */
  double widestWord() {
    double widest = 0;
    int from = 0;
    for (int i = 0; i <= text.length(); i++) {
      if (i == text.length() || Character.isWhitespace(text.charAt(i))) {
        widest = Math.max(widest, width(from, i));
        from = i + 1;
      }
    }
    return widest;
  }

  /** The width of a hyphen after character {@code i - 1}, at scale 1. */
  double hyphenWidth(int i) {
    return pieceAt(i - 1) instanceof Piece.Words words ? words.face().width('-') * words.size() : 0;
  }

  /** Whether a line may not end before character {@code i}, since the two belong together. */
  boolean glued(int i) {
    int before = glue(pieceAt(i - 1));
    return before > 0 && before == glue(pieceAt(i));
  }

  private static int glue(Piece piece) {
    if (piece instanceof Piece.Words words) {
      return words.glue();
    }
    return piece instanceof Piece.Drawn drawn ? drawn.glue() : 0;
  }

  private Piece pieceAt(int i) {
    return pieces.get(runAt(i));
  }

  private int runAt(int i) {
    int run = starts.size() - 1;
    while (starts.get(run) > i) {
      run--;
    }
    return run;
  }

  private int end(int run) {
    return run + 1 < starts.size() ? starts.get(run + 1) : text.length();
  }

  /** How far the line reaches above and below its baseline, at scale 1. */
  double[] reach(Line line) {
    double above = 0;
    double below = 0;
    int last = Math.max(line.from(), Math.min(line.to(), text.length()) - 1);
    for (int run = runAt(line.from()); run <= runAt(last); run++) {
      if (pieces.get(run) instanceof Piece.Words words) {
        double half = words.face().capHeight() * words.size() / 2;
        above = Math.max(above, words.leading() / 2 + half);
        below = Math.max(below, words.leading() / 2 - half);
      } else if (pieces.get(run) instanceof Piece.Drawn drawn) {
        above = Math.max(above, drawn.tall() + 1);
        below = Math.max(below, 3);
      }
    }
    return new double[] {above, below};
  }

  /** Half the height of the first capital, at scale 1: the middle that boxes align to. */
  double halfCap() {
    return pieces.stream()
        .filter(Piece.Words.class::isInstance)
        .map(Piece.Words.class::cast)
        .mapToDouble(w -> w.face().capHeight() * w.size() / 2)
        .findFirst()
        .orElse(0);
  }

  /**
   * Draws a line from {@code x} on the baseline. A break at a space keeps the space, or a program
   * reading aloud would join the words.
   */
  void draw(Line line, Pen pen, double x, double baseline, double scale, int turn) {
    for (int run = runAt(line.from());
        run < pieces.size() && starts.get(run) < line.next();
        run++) {
      int from = Math.max(line.from(), starts.get(run));
      int to = Math.min(end(run), line.to());
      double along = offsets[from] - offsets[line.from()];
      if (pieces.get(run) instanceof Piece.Drawn drawn && to > from) {
        drawn.stroke().draw(pen, x + along * scale, baseline, scale);
      } else if (pieces.get(run) instanceof Piece.Words words) {
        boolean ends = end(run) >= line.to() && from < line.to();
        String shown = shown(from, to) + (ends && endsAtSpace(line) ? " " : "");
        if (!shown.isEmpty()) {
          show(pen, words, x, baseline, along * scale, scale, turn, shown);
        }
        if (ends && line.hyphen()) {
          double after = (offsets[to] - offsets[line.from()]) * scale;
          pen.hyphen(() -> show(pen, words, x, baseline, after, scale, turn, "-"));
        }
      }
    }
  }

  private static void show(
      Pen pen,
      Piece.Words words,
      double x,
      double baseline,
      double along,
      double scale,
      int turn,
      String shown) {
    double rise = words.rise() * scale;
    double size = words.size() * scale;
    if (turn == 0) {
      pen.text(words.face(), size, words.tone(), x + along, baseline - rise, shown);
    } else {
      int sign = turn > 0 ? -1 : 1;
      pen.text(
          words.face(), size, words.tone(), x + sign * rise, baseline + sign * along, shown, turn);
    }
  }

  private boolean endsAtSpace(Line line) {
    return line.next() > line.to() && !line.hyphen() && line.next() < text.length();
  }

  private String shown(int from, int to) {
    StringBuilder out = new StringBuilder(Math.max(0, to - from));
    for (int i = from; i < to; i++) {
      char c = drawn(text.charAt(i));
      if (c != 0) {
        out.append(c);
      }
    }
    return out.toString();
  }
}
