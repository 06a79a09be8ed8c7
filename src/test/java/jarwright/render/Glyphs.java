package jarwright.render;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;

/** Where a PDF's page shows which glyphs, read by another library. */
public final class Glyphs {
  private Glyphs() {}

  /** One glyph; points from the upper left corner. */
  public record Run(
      String text, double left, double right, double top, double bottom, double size) {}

  static List<Run> of(byte[] pdf) {
    try (PDDocument document = Prints.read(pdf)) {
      return of(document, 0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The glyphs of a page, from 0, in drawing order. */
  public static List<Run> of(PDDocument document, int page) {
    List<Run> runs = new ArrayList<>();
    try {
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition at) {
              runs.add(run(at));
            }
          };
      stripper.setStartPage(page + 1);
      stripper.setEndPage(page + 1);
      stripper.getText(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return runs;
  }

  private static Run run(TextPosition at) {
    Matrix place = at.getTextMatrix();
    double x = place.getTranslateX();
    double y = at.getPageHeight() - place.getTranslateY();
    double along = at.getWidthDirAdj();
    double tall = at.getHeightDir();
    double size = Math.hypot(place.getScaleX(), place.getShearY());
    if (place.getShearY() > 0) {
      return new Run(at.getUnicode(), x - tall, x, y - along, y, size);
    }
    if (place.getShearY() < 0) {
      return new Run(at.getUnicode(), x, x + tall, y, y + along, size);
    }
    return new Run(at.getUnicode(), x, x + along, y - tall, y, size);
  }
}
