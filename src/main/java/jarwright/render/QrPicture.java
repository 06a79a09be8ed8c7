package jarwright.render;

import com.google.zxing.qrcode.encoder.ByteMatrix;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CompletableFuture;

/**
 * A QR code drawn as one inline one-bit mask, so that no seams show between its modules at any
 * resolution. Its corner lies on a whole dot of a 300 dpi printer.
 *
 * @param image the mask as {@link #image} gives it
 * @param modules of a side
 * @param module side of a module in pt
 * @param x left of the square it may take, in pt
 * @param y top of that square
 * @param room side of that square
 * @param alt what it says, for readers who cannot see it
 */
record QrPicture(
    CompletableFuture<byte[]> image,
    int modules,
    double module,
    double x,
    double y,
    double room,
    String alt)
    implements Canvas.Item {
  private static final double DOT = 72.0 / 300;

  @Override
  public void paint(Side side, double left, double top) {
    double size = modules * module;
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
            () -> draw(side, (float) cornerX, (float) foot, (float) size));
  }

  private void draw(Side side, float cornerX, float foot, float size) {
    Tone.BLACK.fill(side.content());
    side.content().saveState();
    side.content().concatCTM(size, 0, 0, size, cornerX, foot);
    side.content().getInternalBuffer().append(image.join());
    side.content().restoreState();
  }

  /**
   * The operators of the mask: rows from the top, each filled up to whole bytes, in hexadecimal, in
   * which nothing looks like the operator EI.
   */
  static byte[] image(ByteMatrix matrix) {
    byte[][] modules = matrix.getArray();
    int n = modules.length;
    StringBuilder image = new StringBuilder(n * (n + 7) / 4 + 60);
    image.append("BI /W ").append(n).append(" /H ").append(n);
    image.append(" /IM true /BPC 1 /D [1 0] /F /AHx ID ");
    for (byte[] row : modules) {
      for (int digit = 0; digit < (n + 7) / 8 * 2; digit++) {
        int nibble = 0;
        for (int i = 4 * digit; i < 4 * digit + 4; i++) {
          nibble = nibble << 1 | (i < n ? row[i] : 0);
        }
        image.append(Character.forDigit(nibble, 16));
      }
    }
    return image.append(">\nEI\n").toString().getBytes(StandardCharsets.US_ASCII);
  }
}
