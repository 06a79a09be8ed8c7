package jarwright.render;

import com.lowagie.text.pdf.PdfContentByte;

/**
 * The side of paper being drawn.
 *
 * @param pen draws on it
 * @param tags tells what is drawn
 * @param count its number among its section's sides; {@link PageCount#UNKNOWN} where no number can
 *     stand
 * @param bookmarks the document's outline
 * @param height of the paper in pt
 */
record Side(Pen pen, Tags tags, PageCount count, Bookmarks bookmarks, double height) {

  PdfContentByte content() {
    return pen.content();
  }

  void artifact(Runnable paint) {
    tags.artifact(content(), paint);
  }

  void content(String role, Runnable paint) {
    tags.content(role, content(), paint);
  }

  /** A box from its upper left corner as PDF wants it: left, lower, right, upper. */
  float[] bounds(double x, double top, double width, double tall) {
    return new float[] {
      (float) x, (float) (height - top - tall), (float) (x + width), (float) (height - top)
    };
  }
}
