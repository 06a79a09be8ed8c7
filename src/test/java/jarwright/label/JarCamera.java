package jarwright.label;

import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/**
 * What a phone sees of a code on a label that is stuck round a jar: a pinhole camera before a
 * cylinder, by ray casting, and then what spoils pictures. The phone is held 120 mm from the glass,
 * where a video picture of 1,920 pixels over 65 degrees, as scanning programs look at, has 12.5
 * pixels a mm (from memory; a still picture has twice that). Blur is Gaussian, noise of the sensor
 * is Gaussian, and a glare is a white spot on the code.
 */
final class JarCamera {
  private static final double DISTANCE = 120;
  private static final int GLASS = 70;

  /**
   * The conditions of a picture.
   *
   * @param jar diameter in mm
   * @param tilt degrees by which the jar leans towards the camera
   * @param turn degrees by which it is turned away about its axis
   * @param sharp pixels of the camera for a mm of label
   * @param blur standard deviation of the blur in mm of label
   * @param noise standard deviation of the noise in grey levels of 255
   * @param contrast black from white as a share of the full range
   * @param glare radius in mm of a white spot on the code
   * @param jpeg quality of compression, 0 to 1; 0 for none
   */
  record Shot(
      double jar,
      double tilt,
      double turn,
      double sharp,
      double blur,
      double noise,
      double contrast,
      double glare,
      double jpeg) {

    /** Across, of a jar so wide that a label on it is flat, as on a lid. */
    static final double FLAT = 100_000;

    /** A jar in the hand in a kitchen: what every label has to stand. */
    static final Shot KITCHEN = new Shot(70, 30, 0, 12.5, 0.12, 3, 0.8, 0, 0.8);

    Shot jar(double mm) {
      return new Shot(mm, tilt, turn, sharp, blur, noise, contrast, glare, jpeg);
    }

    Shot tilt(double degrees) {
      return new Shot(jar, degrees, turn, sharp, blur, noise, contrast, glare, jpeg);
    }

    Shot turn(double degrees) {
      return new Shot(jar, tilt, degrees, sharp, blur, noise, contrast, glare, jpeg);
    }

    Shot sharp(double pixels) {
      return new Shot(jar, tilt, turn, pixels, blur, noise, contrast, glare, jpeg);
    }

    Shot blur(double mm) {
      return new Shot(jar, tilt, turn, sharp, mm, noise, contrast, glare, jpeg);
    }

    Shot noise(double levels) {
      return new Shot(jar, tilt, turn, sharp, blur, levels, contrast, glare, jpeg);
    }

    Shot contrast(double share) {
      return new Shot(jar, tilt, turn, sharp, blur, noise, share, glare, jpeg);
    }

    Shot glare(double mm) {
      return new Shot(jar, tilt, turn, sharp, blur, noise, contrast, mm, jpeg);
    }

    Shot jpeg(double quality) {
      return new Shot(jar, tilt, turn, sharp, blur, noise, contrast, glare, quality);
    }
  }

  /**
   * A printed label.
   *
   * @param dots the whole sheet as the printer prints it, black and white
   * @param dpi its dots in an inch
   * @param x left edge of the label on the sheet in mm
   * @param y its upper edge
   * @param codeX middle of the code, from the label's left edge
   * @param codeY the same from its upper edge
   * @param side of the code in mm, without the quiet zone
   */
  record Label(
      BufferedImage dots,
      int dpi,
      double x,
      double y,
      double w,
      double h,
      double codeX,
      double codeY,
      double side) {

    /** How light the label is at a point from its corner, or the glass beside it. */
    double at(double u, double v) {
      if (u < 0 || v < 0 || u >= w || v >= h) {
        return GLASS;
      }
      int column = Math.min(dots.getWidth() - 1, (int) ((x + u) * dpi / 25.4));
      int row = Math.min(dots.getHeight() - 1, (int) ((y + v) * dpi / 25.4));
      return dots.getRaster().getSample(column, row, 0) < 128 ? 0 : 255;
    }
  }

  private final Shot shot;
  private final Label label;
  private final double sineTilt;
  private final double cosineTilt;
  private final double sineTurn;
  private final double cosineTurn;

  private JarCamera(Shot shot, Label label) {
    this.shot = shot;
    this.label = label;
    this.sineTilt = Math.sin(Math.toRadians(shot.tilt()));
    this.cosineTilt = Math.cos(Math.toRadians(shot.tilt()));
    this.sineTurn = Math.sin(Math.toRadians(shot.turn()));
    this.cosineTurn = Math.cos(Math.toRadians(shot.turn()));
  }

  /** The picture of the label's code with some of what is round it, in grey. */
  static BufferedImage picture(Label label, Shot shot) {
    BufferedImage seen = new JarCamera(shot, label).look();
    BufferedImage blurred = blurred(seen, shot.blur() * shot.sharp());
    BufferedImage spoilt = spoilt(blurred, shot, label.side());
    return shot.jpeg() > 0 ? compressed(spoilt, (float) shot.jpeg()) : spoilt;
  }

  private BufferedImage look() {
    int size = (int) ((label.side() + 16) * shot.sharp());
    BufferedImage out = new BufferedImage(size, size, BufferedImage.TYPE_BYTE_GRAY);
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        double sum = 0;
        for (int part = 0; part < 9; part++) {
          double px = column + (part % 3 + 0.5) / 3 - size / 2.0;
          double py = row + (Math.floorDiv(part, 3) + 0.5) / 3 - size / 2.0;
          sum += ray(px / shot.sharp() / DISTANCE, py / shot.sharp() / DISTANCE);
        }
        out.getRaster().setSample(column, row, 0, (int) (sum / 9));
      }
    }
    return out;
  }

  /** How light it is along a ray from the camera, which looks down on the code's middle. */
  private double ray(double dx, double dy) {
    double[] from = turned(0, 0, DISTANCE);
    double[] along = turned(dx, dy, -1);
    double r = shot.jar() / 2;
    double a = along[0] * along[0] + along[2] * along[2];
    double b = 2 * (from[0] * along[0] + (from[2] + r) * along[2]);
    double c = from[0] * from[0] + (from[2] + r) * (from[2] + r) - r * r;
    double root = b * b - 4 * a * c;
    if (root < 0) {
      return GLASS;
    }
    double t = (-b - Math.sqrt(root)) / (2 * a);
    double angle = Math.atan2(from[0] + t * along[0], from[2] + t * along[2] + r);
    double v = from[1] + t * along[1];
    double light = 0.55 + 0.45 * Math.max(0, Math.cos(angle));
    return light * label.at(label.codeX() + r * angle, label.codeY() + v);
  }

  /** A direction of the camera in the frame of the jar. */
  private double[] turned(double x, double y, double z) {
    double y1 = cosineTilt * y - sineTilt * z;
    double z1 = sineTilt * y + cosineTilt * z;
    return new double[] {cosineTurn * x + sineTurn * z1, y1, -sineTurn * x + cosineTurn * z1};
  }

  private static BufferedImage blurred(BufferedImage sharp, double sigma) {
    if (sigma < 0.05) {
      return sharp;
    }
    int reach = (int) Math.ceil(3 * sigma);
    float[] weights = new float[2 * reach + 1];
    float sum = 0;
    for (int i = 0; i < weights.length; i++) {
      weights[i] = (float) Math.exp(-(i - reach) * (i - reach) / (2 * sigma * sigma));
      sum += weights[i];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    BufferedImage across =
        new ConvolveOp(new Kernel(weights.length, 1, weights), ConvolveOp.EDGE_NO_OP, null)
            .filter(sharp, null);
    return new ConvolveOp(new Kernel(1, weights.length, weights), ConvolveOp.EDGE_NO_OP, null)
        .filter(across, null);
  }

  private static BufferedImage spoilt(BufferedImage clean, Shot shot, double side) {
    BufferedImage out =
        new BufferedImage(clean.getWidth(), clean.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    Random noise = new Random(20260824);
    double spotX = clean.getWidth() / 2.0 + side * shot.sharp() / 4;
    double spotY = clean.getHeight() / 2.0 + side * shot.sharp() / 5;
    for (int row = 0; row < clean.getHeight(); row++) {
      for (int column = 0; column < clean.getWidth(); column++) {
        double grey = clean.getRaster().getSample(column, row, 0);
        grey = 127.5 + (grey - 127.5) * shot.contrast() + noise.nextGaussian() * shot.noise();
        double far = Math.hypot(column - spotX, row - spotY) / shot.sharp();
        if (shot.glare() > 0) {
          grey += 255 * Math.exp(-Math.pow(far / shot.glare(), 4));
        }
        out.getRaster().setSample(column, row, 0, (int) Math.max(0, Math.min(255, grey)));
      }
    }
    return out;
  }

  private static BufferedImage compressed(BufferedImage picture, float quality) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(quality);
      writer.setOutput(out);
      writer.write(null, new IIOImage(picture, null, null), how);
      out.flush();
      return ImageIO.read(new ByteArrayInputStream(bytes.toByteArray()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
  }
}
