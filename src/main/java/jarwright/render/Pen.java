package jarwright.render;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfString;

/**
 * Draws on one side of paper in points, measured from the upper left corner, down being positive.
 * Every path is closed off within its own call, so calls may come in any order.
 */
final class Pen {
  private static final float CIRCLE = 0.5523f;

  /** U+00AD in UTF-16 with its mark; the one-byte encoding of PDF has no such character. */
  private static final byte[] SOFT_HYPHEN = {(byte) 0xFE, (byte) 0xFF, 0, (byte) 0xAD};

  private final PdfContentByte to;
  private final double height;

  Pen(PdfContentByte to, double height) {
    this.to = to;
    this.height = height;
  }

  PdfContentByte content() {
    return to;
  }

  private float y(double fromTop) {
    return (float) (height - fromTop);
  }

  /** Begins a stretch whose clip and transformation end at {@link #restore}. */
  void save() {
    to.saveState();
  }

  void restore() {
    to.restoreState();
  }

  /** Scales about the upper left corner and then moves, until {@link #restore}. */
  void transform(double scale, double right, double down) {
    float up = (float) (height * (1 - scale) - down);
    to.concatCTM((float) scale, 0, 0, (float) scale, (float) right, up);
  }

  void text(Face face, double size, Tone tone, double x, double baseline, String text) {
    text(face, size, tone, x, baseline, text, 0);
  }

  /** Words turned by 0, 90 (upwards) or -90 (downwards) degrees about the start of their line. */
  void text(Face face, double size, Tone tone, double x, double baseline, String text, int turn) {
    tone.fill(to);
    to.beginText();
    to.setFontAndSize(face.font(), (float) size);
    if (turn == 0) {
      to.setTextMatrix((float) x, y(baseline));
    } else {
      int sine = turn > 0 ? 1 : -1;
      to.setTextMatrix(0, sine, -sine, 0, (float) x, y(baseline));
    }
    to.showText(text);
    to.endText();
  }

  /** A hyphen that a program reading the page takes for a soft one, not for part of the word. */
  void hyphen(Runnable draw) {
    PdfDictionary soft = new PdfDictionary();
    soft.put(PdfName.ACTUALTEXT, new PdfString(SOFT_HYPHEN));
    to.beginMarkedContentSequence(PdfName.SPAN, soft, true);
    draw.run();
    to.endMarkedContentSequence();
  }

  void fillRect(Tone tone, double x, double top, double width, double tall) {
    tone.fill(to);
    rectPath(x, top, width, tall, 0);
    to.fill();
  }

  /** The outline of a box, drawn wholly inside it so that neighbours never overlap. */
  void strokeRect(Tone tone, double weight, double x, double top, double width, double tall) {
    line(tone, weight, 0);
    double half = weight / 2;
    rectPath(x + half, top + half, width - weight, tall - weight, 0);
    to.stroke();
  }

  /** Fill and outline of any path built by the path methods; null or weight 0 leaves one out. */
  void paint(Tone fill, Tone ink, double weight, double dash, Runnable path) {
    if (fill != null) {
      fill.fill(to);
      path.run();
      to.fill();
    }
    if (weight > 0) {
      line(ink, weight, dash);
      path.run();
      to.stroke();
      endDash(dash);
    }
  }

  void straight(Tone tone, double weight, double dash, double x1, double y1, double x2, double y2) {
    line(tone, weight, dash);
    to.moveTo((float) x1, y(y1));
    to.lineTo((float) x2, y(y2));
    to.stroke();
    endDash(dash);
  }

  /** Parallel strokes rising to the right at 45 degrees, {@code gap} apart, inside a path. */
  void hatch(
      Tone tone,
      double weight,
      double gap,
      double x,
      double top,
      double width,
      double tall,
      Runnable path) {
    save();
    path.run();
    to.clip();
    to.newPath();
    line(tone, weight, 0);
    double step = gap * Math.sqrt(2);
    for (double along = step / 2; along < width + tall; along += step) {
      to.moveTo((float) (x + along), y(top));
      to.lineTo((float) (x + along - tall), y(top + tall));
    }
    to.stroke();
    restore();
  }

  void clip(Runnable path) {
    path.run();
    to.clip();
    to.newPath();
  }

  void rectPath(double x, double top, double width, double tall, double radius) {
    if (radius <= 0) {
      to.rectangle((float) x, y(top + tall), (float) width, (float) tall);
    } else {
      double r = Math.min(radius, Math.min(width, tall) / 2);
      to.roundRectangle((float) x, y(top + tall), (float) width, (float) tall, (float) r);
    }
  }

  void circlePath(double cx, double cy, double radius) {
    float x = (float) cx;
    float y = y(cy);
    float r = (float) radius;
    float b = r * CIRCLE;
    to.moveTo(x + r, y);
    to.curveTo(x + r, y + b, x + b, y + r, x, y + r);
    to.curveTo(x - b, y + r, x - r, y + b, x - r, y);
    to.curveTo(x - r, y - b, x - b, y - r, x, y - r);
    to.curveTo(x + b, y - r, x + r, y - b, x + r, y);
    to.closePath();
  }

  void polygonPath(double[] points, boolean closed) {
    to.moveTo((float) points[0], y(points[1]));
    for (int i = 2; i + 1 < points.length; i += 2) {
      to.lineTo((float) points[i], y(points[i + 1]));
    }
    if (closed) {
      to.closePath();
    }
  }

  /** An arc clockwise from {@code from} to {@code until} degrees, 0 being straight up. */
  void arcPath(double cx, double cy, double r, double from, double until, boolean sector) {
    float x = (float) cx;
    float y = y(cy);
    float radius = (float) r;
    var curves =
        PdfContentByte.bezierArc(
            x - radius,
            y - radius,
            x + radius,
            y + radius,
            (float) (90 - from),
            (float) (from - until));
    for (int i = 0; i < curves.size(); i++) {
      float[] c = curves.get(i);
      if (i == 0 && sector) {
        to.moveTo(x, y);
        to.lineTo(c[0], c[1]);
      } else if (i == 0) {
        to.moveTo(c[0], c[1]);
      }
      to.curveTo(c[2], c[3], c[4], c[5], c[6], c[7]);
    }
    if (sector) {
      to.closePath();
    }
  }

  private void line(Tone tone, double weight, double dash) {
    tone.stroke(to);
    to.setLineWidth((float) weight);
    if (dash > 0) {
      to.setLineDash((float) dash, (float) dash, 0);
    }
  }

  private void endDash(double dash) {
    if (dash > 0) {
      to.setLiteral("[]0 d\n");
    }
  }
}
