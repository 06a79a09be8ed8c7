package jarwright.render;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** The QR codes in a picture file or on the pages of a PDF. */
public final class PictureCodes {
  /** More pixels are thinned out while they are read: phones take up to ten times as many. */
  private static final long MOST_PIXELS = 16_000_000;

  /** A picture that says it is larger is not taken at its word. */
  private static final long ABSURD_PIXELS = 1_000_000_000;

  private static final int MOST_PAGES = 200;
  private static final double DPI = 300;
  private static final double POINTS_AN_INCH = 72;

  private PictureCodes() {}

  /**
   * The texts of all codes, in the order in which they were found, each once.
   *
   * @param file a JPEG, PNG, GIF, BMP, WBMP or TIFF picture, or a PDF
   * @throws IOException where it is none of these, is damaged, or is absurdly large; the message
   *     says so in plain words
   */
  public static List<String> of(byte[] file) throws IOException {
    return List.copyOf(isPdf(file) ? pages(file) : CodeFinder.texts(picture(file)));
  }

  private static boolean isPdf(byte[] file) {
    return new String(file, 0, Math.min(file.length, 1_024), StandardCharsets.ISO_8859_1)
        .contains("%PDF-");
  }

  private static Set<String> pages(byte[] file) throws IOException {
    Set<String> found = new LinkedHashSet<>();
    try (PDDocument document = Loader.loadPDF(file)) {
      if (document.getNumberOfPages() > MOST_PAGES) {
        throw new IOException("has more than " + MOST_PAGES + " pages");
      }
      PDFRenderer renderer = new PDFRenderer(document);
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        PDRectangle size = document.getPage(page).getCropBox();
        double inches = size.getWidth() * size.getHeight() / (POINTS_AN_INCH * POINTS_AN_INCH);
        double dpi = Math.min(DPI, Math.sqrt(MOST_PIXELS / inches));
        found.addAll(
            CodeFinder.texts(
                GreyPicture.of(renderer.renderImageWithDPI(page, (float) dpi, ImageType.GRAY))));
      }
      return found;
    } catch (IOException e) {
      throw e;
    } catch (RuntimeException e) {
      throw new IOException("is a damaged PDF", e);
    }
  }

  private static GreyPicture picture(byte[] file) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw new IOException("is no picture that can be read");
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in, true, true);
        return GreyPicture.of(reader.read(0, thinned(reader)));
      } finally {
        reader.dispose();
      }
    } catch (IOException e) {
      throw e;
    } catch (RuntimeException e) {
      // Readers of damaged pictures fail in many ways.
      throw new IOException("is a damaged picture", e);
    }
  }

  private static ImageReadParam thinned(ImageReader reader) throws IOException {
    long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
    if (pixels > ABSURD_PIXELS) {
      throw new IOException("is a picture of more than 1,000 megapixels");
    }
    int step = 1;
    while (pixels / ((long) step * step) > MOST_PIXELS) {
      step++;
    }
    ImageReadParam how = reader.getDefaultReadParam();
    how.setSourceSubsampling(step, step, 0, 0);
    return how;
  }
}
