package jarwright.render;

import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Mode;
import com.google.zxing.qrcode.decoder.Version;

/**
 * How large a QR code is, reckoned from its text's length alone (ISO/IEC 18004, 7.4 and table 7).
 */
final class QrSize {
  private static final int MODE_BITS = 4;

  /** An ECI header says that the bytes are UTF-8. */
  private static final int CHARACTER_SET_BITS = 12;

  private static final int LARGEST = 40;

  private QrSize() {}

  /** The smallest version that holds {@code length} characters; 0 if none does. */
  static int version(Mode mode, int length, boolean namesCharacterSet, ErrorCorrectionLevel level) {
    for (int number = 1; number <= LARGEST; number++) {
      Version version = Version.getVersionForNumber(number);
      int header =
          MODE_BITS
              + mode.getCharacterCountBits(version)
              + (namesCharacterSet ? CHARACTER_SET_BITS : 0);
      int room =
          version.getTotalCodewords() - version.getECBlocksForLevel(level).getTotalECCodewords();
      if ((header + content(mode, length) + 7) / 8 <= room) {
        return number;
      }
    }
    return 0;
  }

  /** Modules of a side of that version. */
  static int modules(int version) {
    return 17 + 4 * version;
  }

  private static int content(Mode mode, int length) {
    return switch (mode) {
      case NUMERIC -> length / 3 * 10 + (length % 3 == 0 ? 0 : length % 3 * 3 + 1);
      case ALPHANUMERIC -> length / 2 * 11 + length % 2 * 6;
      default -> length * 8;
    };
  }
}
