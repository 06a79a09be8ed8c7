package jarwright.render;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Mode;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The reckoned size is that of the code which is then encoded. */
class QrSizeTest {

  /** ISO/IEC 18004:2015, table 7: characters that a version holds at a recovery level. */
  @ParameterizedTest
  @CsvSource({
    "ALPHANUMERIC, M, 1, 20",
    "ALPHANUMERIC, M, 2, 38",
    "ALPHANUMERIC, H, 3, 35",
    "NUMERIC, M, 1, 34",
    "BYTE, M, 1, 14",
    "BYTE, Q, 5, 60",
    "ALPHANUMERIC, M, 40, 3391"
  })
  void theStandardsTableIsKept(Mode mode, ErrorCorrectionLevel level, int version, int most) {
    assertEquals(version, QrSize.version(mode, most, false, level));
    assertEquals(version == 40 ? 0 : version + 1, QrSize.version(mode, most + 1, false, level));
  }

  @ParameterizedTest
  @EnumSource
  void theEncoderComesToTheSame(ErrorCorrectionLevel level) throws WriterException {
    for (String letters : new String[] {"7", "A", "a", "é"}) {
      boolean named = letters.equals("é");
      Mode mode = Encoder.chooseMode(letters);
      for (int n = 1; n < 600; n += n < 60 ? 1 : 37) {
        String text = letters.repeat(n);
        int bytes = named ? 2 * n : n;
        Map<EncodeHintType, Object> hints =
            named
                ? Map.of(EncodeHintType.CHARACTER_SET, "UTF-8", EncodeHintType.QR_MASK_PATTERN, 0)
                : Map.of(EncodeHintType.QR_MASK_PATTERN, 0);
        assertEquals(
            Encoder.encode(text, level, hints).getVersion().getVersionNumber(),
            QrSize.version(mode, bytes, named, level),
            () -> mode + " " + text.length() + " " + level);
      }
    }
  }

  @Test
  void aSideGrowsByFourModulesWithEachVersion() {
    assertEquals(21, QrSize.modules(1));
    assertEquals(177, QrSize.modules(40));
  }
}
