package jarwright.label;

import jarwright.lot.QrText;
import jarwright.page.LabelStock;
import jarwright.render.Rectangles;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * The codes of a sheet of labels as a printer prints them.
 *
 * @param label what the label says
 * @param seen where its code is
 */
record PrintedCodes(JarLabel label, JarCamera.Label seen) {

  /** Prints the labels on one sheet and finds each one's code. */
  static List<PrintedCodes> of(List<JarLabel> labels, LabelStock stock, int dpi) {
    List<PrintedCodes> codes = new ArrayList<>();
    try (PDDocument document =
        Loader.loadPDF(LabelSamples.print(labels, stock, LabelSamples.ENGLISH))) {
      BufferedImage dots = new PDFRenderer(document).renderImageWithDPI(0, dpi, ImageType.GRAY);
      List<Rectangles.Box> boxes = Rectangles.of(document, 0).pictures();
      for (int i = 0; i < labels.size(); i++) {
        LabelStock.Position at = stock.position(i);
        Rectangles.Box box = boxes.get(i);
        JarCamera.Label seen =
            new JarCamera.Label(
                dots,
                dpi,
                at.x(),
                at.y(),
                stock.labelWidth(),
                stock.labelHeight(),
                box.x() + box.w() / 2 - at.x(),
                box.y() + box.h() / 2 - at.y(),
                box.w());
        codes.add(new PrintedCodes(labels.get(i), seen));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return codes;
  }

  /** Whether what a reader read names the right jar and date. */
  boolean isRight(Optional<String> text) {
    return text.flatMap(QrText::parse)
        .filter(r -> r.jar().equals(label.jar()))
        .filter(r -> r.useBy().equals(label.useBy().date()))
        .isPresent();
  }
}
