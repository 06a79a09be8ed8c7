package jarwright.render;

import com.google.zxing.ChecksumException;
import com.google.zxing.DecodeHintType;
import com.google.zxing.FormatException;
import com.google.zxing.ResultPoint;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.DetectorResult;
import com.google.zxing.common.PerspectiveTransform;
import com.google.zxing.qrcode.decoder.Decoder;
import java.util.Map;
import java.util.Optional;

/**
 * A code whose place is known and whose modules do not lie on straight lines, as round a jar seen
 * from above. A line across the jar is then an arc, which a parabola follows closely enough. The
 * bows are tried until the code's own recovery (ISO/IEC 18004) finds nothing amiss.
 */
final class BentCode {
  private static final Map<DecodeHintType, ?> PLAIN = Map.of();

  /** Modules from a code's edge to the middle of the pattern in its corner (ISO/IEC 18004). */
  private static final float CORNER = 3.5f;

  /** The same to the pattern that codes from 25 modules on have in the fourth corner. */
  private static final float FOURTH = 6.5f;

  /** By so many modules a line may bow in its middle: half a code's height, seen very steeply. */
  private static final double MOST_BOW = 3.5;

  private static final double BOW_STEP = 0.35;

  /** The modules on one side may be that much nearer to each other: the jar is turned away. */
  private static final double MOST_SQUEEZE = 1.4;

  private static final double SQUEEZE_STEP = 0.7;

  private static final int LEAST_WIDTH = 21;
  private static final int MOST_WIDTH = 57;
  private static final int VERSION_STEP = 4;

  private final BitMatrix picture;
  private final ResultPoint[] corners;
  private final Decoder decoder = new Decoder();

  private BentCode(BitMatrix picture, ResultPoint... corners) {
    this.picture = picture;
    this.corners = corners;
  }

  /**
   * What the code says; empty where no bow lets it be read.
   *
   * @param picture black and white
   * @param place lower left, upper left and upper right corner patterns, in pixels
   */
  static Optional<String> read(BitMatrix picture, DetectorResult place) {
    BentCode code = new BentCode(picture, place.getPoints());
    int width = place.getBits().getWidth();
    for (int other : new int[] {0, VERSION_STEP, -VERSION_STEP}) {
      int modules = width + other;
      if (modules >= LEAST_WIDTH && modules <= MOST_WIDTH) {
        Optional<String> text = code.read(modules);
        if (text.isPresent()) {
          return text;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<String> read(int width) {
    for (double bow = BOW_STEP; bow <= MOST_BOW; bow += BOW_STEP) {
      for (double squeeze = 0; squeeze <= MOST_SQUEEZE; squeeze += SQUEEZE_STEP) {
        for (int sign = 0; sign < 4; sign++) {
          double down = (sign & 1) == 0 ? bow : -bow;
          double along = (sign & 2) == 0 ? squeeze : -squeeze;
          Optional<String> text = read(width, along, down);
          if (text.isPresent()) {
            return text;
          }
        }
      }
    }
    return Optional.empty();
  }

  private Optional<String> read(int width, double along, double down) {
    PerspectiveTransform straight = straight(width, along, down);
    BitMatrix modules = new BitMatrix(width);
    float[] at = new float[2];
    for (int row = 0; row < width; row++) {
      for (int column = 0; column < width; column++) {
        double bulge = bulge(column + 0.5, width);
        at[0] = (float) (column + 0.5 + along * bulge);
        at[1] = (float) (row + 0.5 + down * bulge);
        straight.transformPoints(at);
        int x = (int) at[0];
        int y = (int) at[1];
        if (x < 0 || y < 0 || x >= picture.getWidth() || y >= picture.getHeight()) {
          return Optional.empty();
        }
        if (picture.get(x, y)) {
          modules.set(column, row);
        }
      }
    }
    try {
      return Optional.of(decoder.decode(modules, PLAIN).getText());
    } catch (FormatException | ChecksumException e) {
      return Optional.empty();
    }
  }

  /** How far a line has bowed, from 0 at the middles of both corner patterns to 1 between them. */
  private static double bulge(double column, int width) {
    double share = 2 * (column - CORNER) / (width - 2 * CORNER) - 1;
    return 1 - share * share;
  }

  /** From modules of the flattened code to pixels, by the corner patterns that were found. */
  private PerspectiveTransform straight(int width, double along, double down) {
    float far = width - CORNER;
    ResultPoint left = corners[1];
    ResultPoint right = corners[2];
    ResultPoint foot = corners[0];
    float fourth = far;
    float x = right.getX() - left.getX() + foot.getX();
    float y = right.getY() - left.getY() + foot.getY();
    float fourthX = far;
    float fourthY = far;
    if (corners.length > 3) {
      fourth = width - FOURTH;
      double bulge = bulge(fourth, width);
      fourthX = (float) (fourth + along * bulge);
      fourthY = (float) (fourth + down * bulge);
      x = corners[3].getX();
      y = corners[3].getY();
    }
    return PerspectiveTransform.quadrilateralToQuadrilateral(
        CORNER,
        CORNER,
        far,
        CORNER,
        fourthX,
        fourthY,
        CORNER,
        far,
        left.getX(),
        left.getY(),
        right.getX(),
        right.getY(),
        x,
        y,
        foot.getX(),
        foot.getY());
  }
}
