package jarwright.render;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;

/**
 * A picture in grey.
 *
 * @param levels row by row, 0 for black to 255 for white as unsigned bytes; never changed
 */
@SuppressWarnings("ArrayRecordComponent") // passed on between readers, never compared
record GreyPicture(int w, int h, byte[] levels) {

  static GreyPicture of(BufferedImage picture) {
    return scaled(picture, picture.getWidth(), picture.getHeight());
  }

  private static GreyPicture scaled(BufferedImage picture, int w, int h) {
    BufferedImage grey = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D to = grey.createGraphics();
    // What is transparent is paper.
    to.setBackground(java.awt.Color.WHITE);
    to.clearRect(0, 0, w, h);
    to.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    to.drawImage(picture, 0, 0, w, h, null);
    to.dispose();
    return new GreyPicture(w, h, ((DataBufferByte) grey.getRaster().getDataBuffer()).getData());
  }

  int at(int x, int y) {
    return levels[y * w + x] & 0xFF;
  }

  /** Each pixel the mean of two by two. */
  GreyPicture halved() {
    int halfW = w / 2;
    int halfH = h / 2;
    byte[] half = new byte[halfW * halfH];
    for (int y = 0; y < halfH; y++) {
      for (int x = 0; x < halfW; x++) {
        int sum = at(2 * x, 2 * y) + at(2 * x + 1, 2 * y);
        sum += at(2 * x, 2 * y + 1) + at(2 * x + 1, 2 * y + 1);
        half[y * halfW + x] = (byte) (sum / 4);
      }
    }
    return new GreyPicture(halfW, halfH, half);
  }

  /** Twice as large, the new pixels between their neighbours. */
  GreyPicture doubled() {
    BufferedImage small = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
    small.getRaster().setDataElements(0, 0, w, h, levels);
    return scaled(small, 2 * w, 2 * h);
  }

  GreyPicture part(int left, int top, int width, int height) {
    byte[] part = new byte[width * height];
    for (int y = 0; y < height; y++) {
      System.arraycopy(levels, (top + y) * w + left, part, y * width, width);
    }
    return new GreyPicture(width, height, part);
  }
}
