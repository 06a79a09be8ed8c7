package jarwright.render;

import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.lowagie.text.pdf.PdfContentByte;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * A QR code drawn as one inline one-bit mask, so that no seams show between its modules at any
 * resolution. Its corner lies on a whole dot of a 300 dpi printer.
 *
 * @param matrix the modules, 1 being dark
 * @param module side of a module in pt
 * @param x left of the square it may take, in pt
 * @param y top of that square
 * @param room side of that square
 * @param alt what it says, for readers who cannot see it
 */
record QrPicture(ByteMatrix matrix, double module, double x, double y, double room, String alt)
    implements Canvas.Item {
  private static final double DOT = 72.0 / 300;

  @Override
  public void paint(Side side, double left, double top) {
    double size = matrix.getWidth() * module;
    double inset = (room - size) / 2;
    double cornerX = Math.rint((left + x + inset) / DOT) * DOT;
    double foot = Math.rint((side.height() - top - y - inset - size) / DOT) * DOT;
    side.tags()
        .figure(
            alt,
            () ->
                new float[] {
                  (float) cornerX, (float) foot, (float) (cornerX + size), (float) (foot + size)
                },
            side.content(),
            () -> draw(side.content(), cornerX, foot, size));
  }

  private void draw(PdfContentByte to, double cornerX, double foot, double size) {
    Tone.BLACK.fill(to);
    to.saveState();
    to.concatCTM((float) size, 0, 0, (float) size, (float) cornerX, (float) foot);
    int n = matrix.getWidth();
    String mask =
        String.format(Locale.ROOT, "BI /W %d /H %d /IM true /BPC 1 /D [1 0] /F /AHx ID ", n, n);
    to.getInternalBuffer().append(mask.getBytes(StandardCharsets.US_ASCII));
    to.getInternalBuffer().append(hex().getBytes(StandardCharsets.US_ASCII));
    to.setLiteral(">\nEI\n");
    to.restoreState();
  }

  /** The rows, each filled up to whole bytes, in hexadecimal: no byte of it can look like EI. */
  private String hex() {
    int n = matrix.getWidth();
    StringBuilder hex = new StringBuilder(n * (n + 7) / 4);
    for (int row = 0; row < n; row++) {
      for (int first = 0; first < n; first += 4) {
        int nibble = 0;
        for (int i = 0; i < 4; i++) {
          nibble = nibble << 1 | (first + i < n && matrix.get(first + i, row) == 1 ? 1 : 0);
        }
        hex.append(Character.forDigit(nibble, 16));
      }
      if ((n + 3) / 4 % 2 == 1) {
        hex.append('0');
      }
    }
    return hex.toString();
  }
}
