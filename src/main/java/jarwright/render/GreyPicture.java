package jarwright.render;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
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
    to.setBackground(Color.WHITE);
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

  /** Each pixel the mean of its neighbourhood of three by three; the edges as they are. */
  GreyPicture smoothed() {
    byte[] smooth = levels.clone();
    for (int y = 1; y < h - 1; y++) {
      for (int x = 1; x < w - 1; x++) {
        int sum = 0;
        for (int i = -1; i <= 1; i++) {
          sum += at(x - 1, y + i) + at(x, y + i) + at(x + 1, y + i);
        }
        smooth[y * w + x] = (byte) (sum / 9);
      }
    }
    return new GreyPicture(w, h, smooth);
  }

  /** All but the darkest and the lightest hundredth spread over all levels. */
  GreyPicture stretched() {
    int[] count = new int[256];
    for (byte level : levels) {
      count[level & 0xFF]++;
    }
    int dark = 0;
    int light = 255;
    int few = levels.length / 100;
    for (int sum = count[dark]; sum <= few && dark < 255; sum += count[dark]) {
      dark++;
    }
    for (int sum = count[light]; sum <= few && light > 0; sum += count[light]) {
      light--;
    }
    int range = Math.max(1, light - dark);
    byte[] wide = new byte[levels.length];
    for (int i = 0; i < wide.length; i++) {
      int level = ((levels[i] & 0xFF) - dark) * 255 / range;
      wide[i] = (byte) Math.max(0, Math.min(255, level));
    }
    return new GreyPicture(w, h, wide);
  }

  /** Turned by 45 degrees, white where nothing was. */
  GreyPicture turned() {
    int side = (int) Math.ceil((w + h) * Math.sqrt(0.5));
    BufferedImage out = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D to = out.createGraphics();
    to.setBackground(Color.WHITE);
    to.clearRect(0, 0, side, side);
    to.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    AffineTransform turn = AffineTransform.getRotateInstance(Math.PI / 4, side / 2.0, side / 2.0);
    turn.translate((side - w) / 2.0, (side - h) / 2.0);
    to.drawImage(image(), turn, null);
    to.dispose();
    return of(out);
  }

  /** Twice as large, the new pixels between their neighbours. */
  GreyPicture doubled() {
    return scaled(image(), 2 * w, 2 * h);
  }

  private BufferedImage image() {
    BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
    image.getRaster().setDataElements(0, 0, w, h, levels);
    return image;
  }

  GreyPicture part(int left, int top, int width, int height) {
    byte[] part = new byte[width * height];
    for (int y = 0; y < height; y++) {
      System.arraycopy(levels, (top + y) * w + left, part, y * width, width);
    }
    return new GreyPicture(width, height, part);
  }
}
