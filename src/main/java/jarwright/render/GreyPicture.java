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
  /** Pixels; with the next figure tried against blur, noise and dimness in the tests' pictures. */
  private static final int BLUR_REACH = 3;

  private static final int SHARPNESS = 4;

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

  /** Each pixel the mean of those that are at most {@code reach} away in both directions. */
  GreyPicture smoothed(int reach) {
    byte[] across = new byte[levels.length];
    for (int y = 0; y < h; y++) {
      smooth(levels, y * w, 1, w, reach, across);
    }
    byte[] both = new byte[levels.length];
    for (int x = 0; x < w; x++) {
      smooth(across, x, w, h, reach, both);
    }
    return new GreyPicture(w, h, both);
  }

  /** One line of pixels, a row or a column: its first, the step to the next, and how many. */
  private static void smooth(byte[] from, int first, int step, int many, int reach, byte[] to) {
    int sum = 0;
    int within = 0;
    for (int i = -reach; i < many; i++) {
      if (i + reach < many) {
        sum += from[first + (i + reach) * step] & 0xFF;
        within++;
      }
      if (i > reach) {
        sum -= from[first + (i - reach - 1) * step] & 0xFF;
        within--;
      }
      if (i >= 0) {
        to[first + i * step] = (byte) ((sum + within / 2) / within);
      }
    }
  }

  /** Each pixel drawn away from its surroundings: what blurring over the same reach has blended. */
  GreyPicture sharpened() {
    byte[] around = smoothed(BLUR_REACH).smoothed(BLUR_REACH).levels;
    byte[] sharp = new byte[levels.length];
    for (int i = 0; i < sharp.length; i++) {
      int level = levels[i] & 0xFF;
      int drawn = level + SHARPNESS * (level - (around[i] & 0xFF));
      sharp[i] = (byte) Math.max(0, Math.min(255, drawn));
    }
    return new GreyPicture(w, h, sharp);
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
