package jarwright.render;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;

/** A QR code in half blocks, two modules above each other in a character, for a terminal. */
public final class QrBlocks {
  /** What the picture is made of: nothing, the lower half, the upper half, both. */
  public static final String SIGNS = " ▄▀█";

  private static final int QUIET = 4;

  private QrBlocks() {}

  /**
   * The lines of the picture, light where a character has ink, as on a terminal with light letters
   * on a dark ground; the quiet zone of four modules is included.
   *
   * @throws IllegalArgumentException where no QR code can hold the text
   */
  public static List<String> of(String text) {
    ByteMatrix modules;
    try {
      modules = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
    } catch (WriterException e) {
      throw new IllegalArgumentException("no QR code holds so long a text", e);
    }
    List<String> lines = new ArrayList<>();
    for (int y = -QUIET; y < modules.getHeight() + QUIET; y += 2) {
      StringBuilder line = new StringBuilder();
      for (int x = -QUIET; x < modules.getWidth() + QUIET; x++) {
        int upper = isLight(modules, x, y) ? 2 : 0;
        int lower = isLight(modules, x, y + 1) ? 1 : 0;
        line.append(SIGNS.charAt(upper + lower));
      }
      lines.add(line.toString());
    }
    return lines;
  }

  private static boolean isLight(ByteMatrix modules, int x, int y) {
    boolean inside = x >= 0 && y >= 0 && x < modules.getWidth() && y < modules.getHeight();
    return !inside || modules.get(x, y) == 0;
  }
}
