package jarwright.render;

import boofcv.abst.fiducial.QrCodeDetector;
import boofcv.alg.fiducial.qrcode.QrCode;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.ResultMetadataType;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Reads the QR codes of a printed page with two independent libraries. */
final class QrReader {
  private QrReader() {}

  /** A code as read: what it says and its recovery level. */
  record Reading(String text, String level) {}

  static BufferedImage picture(byte[] pdf, int page, int dpi) {
    try (PDDocument document = Prints.read(pdf)) {
      return new PDFRenderer(document).renderImageWithDPI(page, dpi, ImageType.GRAY);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The first page, from 0, that has a picture. */
  static int pageOfFirstCode(byte[] pdf) {
    int page = 0;
    while (Rectangles.of(pdf, page).pictures().isEmpty()) {
      page++;
    }
    return page;
  }

  static List<Reading> byFirstReader(byte[] pdf, int page, int dpi) {
    BufferedImage picture = picture(pdf, page, dpi);
    int w = picture.getWidth();
    int h = picture.getHeight();
    int[] pixels = picture.getRGB(0, 0, w, h, null, 0, w);
    BinaryBitmap bitmap =
        new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(w, h, pixels)));
    try {
      Result[] results =
          new QRCodeMultiReader().decodeMultiple(bitmap, Map.of(DecodeHintType.TRY_HARDER, true));
      return Arrays.stream(results).map(QrReader::reading).toList();
    } catch (NotFoundException e) {
      return List.of();
    }
  }

  private static Reading reading(Result result) {
    Object level = result.getResultMetadata().get(ResultMetadataType.ERROR_CORRECTION_LEVEL);
    return new Reading(result.getText(), level.toString());
  }

  static List<String> texts(List<Reading> readings) {
    return readings.stream().map(Reading::text).sorted().toList();
  }

  static List<String> bySecondReader(byte[] pdf, int page, int dpi) {
    return detect(picture(pdf, page, dpi)).stream().map(code -> code.message).sorted().toList();
  }

  /** The mask patterns of a page's codes, each once. */
  static Set<String> masks(byte[] pdf, int page, int dpi) {
    return detect(picture(pdf, page, dpi)).stream()
        .map(code -> code.mask.toString())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<QrCode> detect(BufferedImage picture) {
    byte[] grey = ((DataBufferByte) picture.getRaster().getDataBuffer()).getData();
    GrayU8 image = new GrayU8(picture.getWidth(), picture.getHeight());
    System.arraycopy(grey, 0, image.data, 0, image.data.length);
    QrCodeDetector<GrayU8> detector = FactoryFiducial.qrcode(null, GrayU8.class);
    detector.process(image);
    return detector.getDetections();
  }
}
