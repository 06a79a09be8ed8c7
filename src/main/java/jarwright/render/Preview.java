package jarwright.render;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Pictures of a PDF's pages. Its library is slow to load, so nothing else may use this class. */
public final class Preview {
  private Preview() {}

  /** Takes one page's picture. */
  public interface Sink {
    /**
     * Takes the picture.
     *
     * @param page from 1
     * @param png the picture as a PNG file
     */
    void page(int page, byte[] png) throws IOException;
  }

  /**
   * Hands over the pages in order.
   *
   * @param pdf the whole PDF file
   * @param dpi dots per inch, 20 to 600
   * @throws IOException if the file is no PDF, or the sink fails
   */
  public static void draw(byte[] pdf, int dpi, Sink sink) throws IOException {
    if (dpi < 20 || dpi > 600) {
      throw new IllegalArgumentException("a preview of " + dpi + " dpi; 20 to 600 can be");
    }
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        BufferedImage picture = renderer.renderImageWithDPI(i, dpi, ImageType.RGB);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", png);
        sink.page(i + 1, png.toByteArray());
      }
    }
  }
}
