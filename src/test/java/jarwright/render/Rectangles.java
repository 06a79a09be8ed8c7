package jarwright.render;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;

/**
 * The boxes and pictures that a page's content draws, in mm from the upper left, read by PDFBox.
 */
public final class Rectangles extends PDFGraphicsStreamEngine {

  /** A box or a picture. */
  public record Box(double x, double y, double w, double h) {}

  private final List<Box> filled = new ArrayList<>();
  private final List<Box> pictures = new ArrayList<>();
  private final List<Box> path = new ArrayList<>();
  private final double height;
  private Point2D current = new Point2D.Float();

  private Rectangles(PDPage page) {
    super(page);
    height = page.getMediaBox().getHeight();
  }

  static Rectangles of(byte[] pdf, int page) {
    try (PDDocument document = Prints.read(pdf)) {
      return of(document, page);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What a page, from 0, draws. */
  public static Rectangles of(PDDocument document, int page) {
    try {
      Rectangles engine = new Rectangles(document.getPage(page));
      engine.processPage(document.getPage(page));
      return engine;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Boxes that are filled, in drawing order. */
  public List<Box> filled() {
    return filled;
  }

  /** Pictures, in drawing order. */
  public List<Box> pictures() {
    return pictures;
  }

  private Box box(double left, double foot, double right, double top) {
    return new Box(
        Units.mm(left), Units.mm(height - top), Units.mm(right - left), Units.mm(top - foot));
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    path.add(box(p0.getX(), p0.getY(), p2.getX(), p2.getY()));
  }

  @Override
  public void drawImage(PDImage image) {
    Matrix at = getGraphicsState().getCurrentTransformationMatrix();
    double x = at.getTranslateX();
    double y = at.getTranslateY();
    pictures.add(box(x, y, x + at.getScalingFactorX(), y + at.getScalingFactorY()));
  }

  @Override
  public void clip(int rule) {}

  @Override
  public void moveTo(float x, float y) {
    current = new Point2D.Float(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    current = new Point2D.Float(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    current = new Point2D.Float(x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return current;
  }

  @Override
  public void closePath() {}

  @Override
  public void endPath() {
    path.clear();
  }

  @Override
  public void strokePath() {
    path.clear();
  }

  @Override
  public void fillPath(int rule) {
    filled.addAll(path);
    path.clear();
  }

  @Override
  public void fillAndStrokePath(int rule) {
    fillPath(rule);
  }

  @Override
  public void shadingFill(COSName shading) {}
}
