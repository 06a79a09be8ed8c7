package jarwright.checklist;

import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** All that a side shows, in mm from its upper left corner, read by PDFBox. */
final class Ink extends PDFGraphicsStreamEngine {
  private static final double MM = 25.4 / 72;

  /** A stroke or a filled shape by its bounds; {@code weight} in pt, 0 for a fill. */
  record Shape(double left, double top, double right, double bottom, double weight, PDColor tone) {
    double wide() {
      return right - left;
    }

    double tall() {
      return bottom - top;
    }
  }

  /** A character; {@code size} in pt. */
  record Glyph(String text, double left, double right, double top, double base, double size) {}

  private final List<Shape> shapes = new ArrayList<>();
  private final List<Glyph> glyphs = new ArrayList<>();
  private final GeneralPath path = new GeneralPath();
  private final double height;
  private boolean clips;

  private Ink(PDPage page) {
    super(page);
    height = page.getMediaBox().getHeight();
  }

  /** Every side of a document. */
  static List<Ink> of(byte[] pdf) {
    try (PDDocument document = Printed.read(pdf)) {
      List<Ink> sides = new ArrayList<>();
      for (PDPage page : document.getPages()) {
        Ink ink = new Ink(page);
        ink.processPage(page);
        sides.add(ink);
      }
      return sides;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  List<Shape> shapes() {
    return shapes;
  }

  List<Glyph> glyphs() {
    return glyphs;
  }

  /** Squares in outline of that side. */
  List<Shape> boxes(double side) {
    return shapes.stream()
        .filter(s -> s.weight() > 0)
        .filter(s -> near(s.wide(), side, s.weight()) && near(s.tall(), side, s.weight()))
        .toList();
  }

  /** An outline lies half its line inside the box that it draws. */
  private static boolean near(double bounds, double side, double weight) {
    return Math.abs(bounds + weight * MM - side) < 0.06;
  }

  /** Rules across, of that weight, in their order down the side. */
  List<Shape> rules(double weight, double longest) {
    return shapes.stream()
        .filter(s -> Math.abs(s.weight() - weight) < 0.01 && s.tall() < 0.01)
        .filter(s -> s.wide() > longest)
        .sorted((a, b) -> Double.compare(a.top(), b.top()))
        .toList();
  }

  /** The size of the characters that spell a text standing on one line. */
  double sizeOf(String text) {
    StringBuilder all = new StringBuilder();
    glyphs.forEach(g -> all.append(g.text()));
    int at = all.indexOf(text);
    if (at < 0) {
      throw new AssertionError("\"" + text + "\" is not on this side");
    }
    return glyphs.get(at).size();
  }

  private void add(double weight, PDColor tone) {
    Rectangle2D bounds = path.getBounds2D();
    Rectangle2D clip = getGraphicsState().getCurrentClippingPath().getBounds2D();
    double left = Math.max(bounds.getMinX(), clip.getMinX());
    double right = Math.min(bounds.getMaxX(), clip.getMaxX());
    double low = Math.max(bounds.getMinY(), clip.getMinY());
    double high = Math.min(bounds.getMaxY(), clip.getMaxY());
    if (left <= right && low <= high) {
      shapes.add(
          new Shape(
              left * MM, (height - high) * MM, right * MM, (height - low) * MM, weight, tone));
    }
  }

  @Override
  protected void showGlyph(Matrix at, PDFont font, int code, Vector displacement) {
    String text = font.toUnicode(code);
    double size = Math.hypot(at.getScaleY(), at.getShearY());
    double long1 = displacement.getX() * size;
    double x = at.getTranslateX();
    double y = height - at.getTranslateY();
    boolean upright = Math.abs(at.getShearY()) < 0.001;
    glyphs.add(
        new Glyph(
            text == null ? "?" : text,
            (upright ? x : x - size) * MM,
            (upright ? x + long1 : x) * MM,
            (upright ? y - size * 0.66 : y - long1) * MM,
            y * MM,
            size));
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    path.moveTo(p0.getX(), p0.getY());
    path.lineTo(p1.getX(), p1.getY());
    path.lineTo(p2.getX(), p2.getY());
    path.lineTo(p3.getX(), p3.getY());
    path.closePath();
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    path.curveTo(x1, y1, x2, y2, x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    path.closePath();
  }

  @Override
  public void clip(int rule) {
    clips = true;
  }

  @Override
  public void endPath() {
    if (clips) {
      getGraphicsState().intersectClippingPath(path);
      clips = false;
    }
    path.reset();
  }

  @Override
  public void strokePath() {
    add(getGraphicsState().getLineWidth(), getGraphicsState().getStrokingColor());
    endPath();
  }

  @Override
  public void fillPath(int rule) {
    add(0, getGraphicsState().getNonStrokingColor());
    endPath();
  }

  @Override
  public void fillAndStrokePath(int rule) {
    add(0, getGraphicsState().getNonStrokingColor());
    strokePath();
  }

  @Override
  public void drawImage(PDImage image) {
    throw new AssertionError("a checklist has no pictures of dots");
  }

  @Override
  public void shadingFill(COSName shading) {
    throw new AssertionError("a checklist has no shades");
  }
}
