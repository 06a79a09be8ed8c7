package jarwright.render;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Mode;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A text as a QR code of the least size that holds it at recovery level M, not yet encoded.
 *
 * @param length in bytes or, of numbers and capitals, in characters
 * @param namesCharacterSet whether a header says that the bytes are UTF-8
 * @param version of ISO/IEC 18004, 1 to 40; 0 if no code can hold the text
 */
record QrSymbol(String text, Mode mode, int length, boolean namesCharacterSet, int version) {

  static QrSymbol of(String text) {
    Mode mode = Encoder.chooseMode(text);
    boolean named = mode == Mode.BYTE && text.chars().anyMatch(c -> c > 0x7E);
    int length = mode == Mode.BYTE ? text.getBytes(StandardCharsets.UTF_8).length : text.length();
    int version = QrSize.version(mode, length, named, ErrorCorrectionLevel.M);
    return new QrSymbol(text, mode, length, named, version);
  }

  /** Modules of a side. */
  int modules() {
    return QrSize.modules(version);
  }

  /** The most recovery at the same size. */
  private ErrorCorrectionLevel level() {
    return Stream.of(ErrorCorrectionLevel.H, ErrorCorrectionLevel.Q)
        .filter(l -> QrSize.version(mode, length, namesCharacterSet, l) == version)
        .findFirst()
        .orElse(ErrorCorrectionLevel.M);
  }

  /** The code with the mask of least penalty. */
  QRCode encode() {
    return encode(new EnumMap<>(EncodeHintType.class));
  }

  /** The code with one mask of the eight: any of them decodes. */
  QRCode encode(int mask) {
    return encode(new EnumMap<>(Map.of(EncodeHintType.QR_MASK_PATTERN, mask)));
  }

  private QRCode encode(Map<EncodeHintType, Object> hints) {
    hints.put(EncodeHintType.QR_VERSION, version);
    if (namesCharacterSet) {
      hints.put(EncodeHintType.CHARACTER_SET, "UTF-8");
    }
    try {
      return Encoder.encode(text, level(), hints);
    } catch (WriterException e) {
      throw new IllegalStateException("its version was reckoned to hold " + text, e);
    }
  }
}
