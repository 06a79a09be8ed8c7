package jarwright.render;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;

/**
 * Breaks a galley into lines where the JDK's line breaker allows it, then at the hyphenation
 * patterns' points. The PDF library's own column breaker is not used since it drops the space at
 * each line's end, which joins words for a program that reads aloud.
 */
final class Breaking {
  private final Galley galley;
  private final Style style;
  private final double width;
  private final boolean anywhere;
  private final List<Line> lines = new ArrayList<>();
  private int start;

  private Breaking(Galley galley, Style style, double width, boolean anywhere) {
    this.galley = galley;
    this.style = style;
    this.width = width + 0.01;
    this.anywhere = anywhere;
  }

  /**
   * The lines of {@code galley} no wider than {@code width} (at scale 1).
   *
   * @param anywhere whether a word wider than a line may be cut at any letter, though never where
   *     its pieces belong together; else null is returned for it
   */
  static List<Line> lines(Galley galley, Style style, double width, boolean anywhere) {
    int n = galley.length();
    if (n == 0) {
      return List.of();
    }
    String text = galley.text();
    if (galley.width(0, n) <= width + 0.01 && text.indexOf('\n') < 0) {
      return List.of(new Line(0, n, n, false, galley.width(0, n)));
    }
    return new Breaking(galley, style, width, anywhere).run(text);
  }

  private List<Line> run(String text) {
    BreakIterator breaks = BreakIterator.getLineInstance(style.shop().hyphens().locale());
    breaks.setText(text);
    int good = 0;
    List<Integer> glued = new ArrayList<>();
    for (int next = breaks.next(); next != BreakIterator.DONE; next = breaks.next()) {
      if (next < text.length() && text.charAt(next - 1) != '\n' && galley.glued(next)) {
        glued.add(next);
        continue;
      }
      if (anywhere && galley.width(good, visible(good, next)) > width) {
        for (int inner : glued) {
          if (!insideNumber(inner) && place(good, inner)) {
            good = inner;
          }
        }
      }
      glued.clear();
      if (!place(good, next)) {
        return null;
      }
      good = next;
      if (text.charAt(next - 1) == '\n') {
        end(next, next, false);
      }
    }
    if (start < text.length()) {
      end(text.length(), text.length(), false);
    }
    return lines;
  }

  /** Whether a line that ended there would end within {@code 13 1/2}. */
  private boolean insideNumber(int at) {
    return at > 1
        && Character.isDigit(galley.charAt(at))
        && galley.charAt(at - 1) == ' '
        && Character.isDigit(galley.charAt(at - 2));
  }

  /** Adds the stretch {@code good} to {@code next} to the line, or begins lines for it. */
  private boolean place(int good, int next) {
    while (galley.width(start, visible(start, next)) > width) {
      int divided = divide(Math.max(good, start), next);
      if (divided > start) {
        end(divided, divided, true);
      } else if (good > start) {
        end(good, good, false);
      } else if (anywhere && !galley.glued(cut(start, next))) {
        int cut = cut(start, next);
        end(cut, cut, false);
      } else {
        return false;
      }
    }
    return true;
  }

  /** The last point in the word at which its beginning and a hyphen still fit; or -1. */
  private int divide(int from, int next) {
    int end = visible(from, next);
    for (int i = end - 1; i > from + 1; i--) {
      if (galley.charAt(i - 1) == Galley.SOFT_HYPHEN && fitsHyphened(i)) {
        return i;
      }
    }
    if (!style.hyphenate()) {
      return -1;
    }
    int[] points = style.shop().hyphens().points(galley.text().substring(from, end));
    for (int i = points.length - 1; i >= 0; i--) {
      if (fitsHyphened(from + points[i]) && !galley.glued(from + points[i])) {
        return from + points[i];
      }
    }
    return -1;
  }

  private boolean fitsHyphened(int at) {
    return galley.width(start, at) + galley.hyphenWidth(at) <= width;
  }

  private int cut(int from, int next) {
    int at = from + 1;
    while (at + 1 < next && galley.width(from, at + 1) <= width) {
      at++;
    }
    return at;
  }

  private int visible(int from, int to) {
    int end = to;
    while (end > from && Character.isWhitespace(galley.charAt(end - 1))) {
      end--;
    }
    return end;
  }

  private void end(int at, int next, boolean hyphen) {
    int shown = visible(start, at);
    boolean soft = shown > start && galley.charAt(shown - 1) == Galley.SOFT_HYPHEN;
    double extra = hyphen || (soft && next < galley.length()) ? galley.hyphenWidth(shown) : 0;
    lines.add(new Line(start, shown, next, extra > 0, galley.width(start, shown) + extra));
    start = next;
  }
}
