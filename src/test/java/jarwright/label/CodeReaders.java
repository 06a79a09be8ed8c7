package jarwright.label;

import boofcv.abst.fiducial.QrCodeDetector;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Two QR readers that share no code. */
final class CodeReaders {
  private static final QrCodeDetector<GrayU8> SECOND = FactoryFiducial.qrcode(null, GrayU8.class);

  private CodeReaders() {}

  /** What ZXing reads in the picture. */
  static Optional<String> first(BufferedImage picture) {
    int w = picture.getWidth();
    int h = picture.getHeight();
    PlanarYUVLuminanceSource grey =
        new PlanarYUVLuminanceSource(levels(picture), w, h, 0, 0, w, h, false);
    try {
      return Optional.of(
          new QRCodeReader()
              .decode(
                  new BinaryBitmap(new HybridBinarizer(grey)),
                  Map.of(DecodeHintType.TRY_HARDER, true))
              .getText());
    } catch (ReaderException e) {
      return Optional.empty();
    }
  }

  /** What BoofCV reads in the picture. */
  static Optional<String> second(BufferedImage picture) {
    GrayU8 grey = new GrayU8(picture.getWidth(), picture.getHeight());
    grey.data = levels(picture);
    SECOND.process(grey);
    return SECOND.getDetections().stream().map(code -> code.message).findFirst();
  }

  /** All that BoofCV reads in the picture. */
  static List<String> all(BufferedImage picture) {
    second(picture);
    return SECOND.getDetections().stream().map(code -> code.message).toList();
  }

  private static byte[] levels(BufferedImage picture) {
    int[] samples =
        picture
            .getRaster()
            .getSamples(0, 0, picture.getWidth(), picture.getHeight(), 0, (int[]) null);
    byte[] levels = new byte[samples.length];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = (byte) samples[i];
    }
    return levels;
  }
}
