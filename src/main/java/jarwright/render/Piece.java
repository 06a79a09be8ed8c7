package jarwright.render;

/** A part of a line: words in one style, a small drawing among words, or a line's end. */
sealed interface Piece {

  /**
   * Words.
   *
   * @param rise by how much they stand above the baseline, in pt
   * @param leading the height of their line, in pt
   * @param glue pieces of the same number above 0 stay on one line
   */
  record Words(
      String text, Face face, double size, Tone tone, double rise, double leading, int glue)
      implements Piece {

    static Words of(String text, Style style, int glue) {
      return new Words(
          text, style.face(), style.size(), style.tone(), 0, style.size() * style.leading(), glue);
    }

    /** Words as large as others but with another text. */
    Words saying(String other) {
      return new Words(other, face, size, tone, rise, leading, glue);
    }
  }

  /**
   * A drawing that stands on the baseline.
   *
   * @param width in pt
   * @param tall in pt
   */
  record Drawn(double width, double tall, int glue, Stroke stroke) implements Piece {}

  /** The number of the page, or of all pages; known only when the page is drawn. */
  record PageNumber(Words as, boolean all) implements Piece {}

  /** The end of a line. */
  record Newline() implements Piece {}

  /** Draws at a place on the baseline, everything scaled. */
  interface Stroke {
    void draw(Pen pen, double x, double baseline, double scale);
  }
}
