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

  /** The same to the row and the column in which dark and light take turns. */
  private static final int TIMING = 6;

  /** The same to the pattern that codes from 25 modules on have in the fourth corner. */
  private static final float FOURTH = 6.5f;

  /** By so many modules a line may bow in its middle: half a code's height, seen very steeply. */
  private static final double MOST_BOW = 3.5;

  private static final double BOW_STEP = 0.35;

  /** The modules on one side may be that much nearer to each other: the jar is turned away. */
  private static final double MOST_SQUEEZE = 1.4;

  private static final double SQUEEZE_STEP = 0.7;

  /** Of the modules that take turns so many may be spoilt, as by a glare: one in so many. */
  private static final int SPOILT = 6;

  /** The lower edge against the upper one, by perspective, where the fourth pattern is not seen. */
  private static final float[] SPREADS = {1, 0.96f, 1.04f, 0.92f, 1.08f};

  private static final int LEAST_WIDTH = 21;
  private static final int MOST_WIDTH = 57;
  private static final int VERSION_STEP = 4;

  private final BitMatrix picture;
  private final ResultPoint[] corners;
  private final int width;
  private final Decoder decoder = new Decoder();

  private BentCode(BitMatrix picture, ResultPoint[] corners, int width) {
    this.picture = picture;
    this.corners = corners;
    this.width = width;
  }

  /**
   * What the code says; empty where no bow lets it be read.
   *
   * @param picture black and white
   * @param place lower left, upper left and upper right corner patterns in pixels, and the fourth
   *     where it was seen
   */
  static Optional<String> read(BitMatrix picture, DetectorResult place) {
    int width = place.getBits().getWidth();
    for (int modules : new int[] {width, width + VERSION_STEP, width - VERSION_STEP}) {
      if (modules >= LEAST_WIDTH && modules <= MOST_WIDTH) {
        Optional<String> text = new BentCode(picture, place.getPoints(), modules).read();
        if (text.isPresent()) {
          return text;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<String> read() {
    for (double bow = 0; bow <= MOST_BOW; bow += BOW_STEP) {
      for (double squeeze = 0; squeeze <= MOST_SQUEEZE; squeeze += SQUEEZE_STEP) {
        for (int sign = 0; sign < 4; sign++) {
          double down = (sign & 1) == 0 ? bow : -bow;
          double along = (sign & 2) == 0 ? squeeze : -squeeze;
          Optional<String> text = read(along, down);
          if (text.isPresent()) {
            return text;
          }
        }
      }
    }
    return Optional.empty();
  }

  private Optional<String> read(double along, double down) {
    if (corners.length > 3) {
      Optional<String> text = read(new Grid(byFour(along, down), along, down));
      if (text.isPresent()) {
        return text;
      }
    }
    for (float spread : SPREADS) {
      Optional<String> text = read(new Grid(byThree(spread), along, down));
      if (text.isPresent()) {
        return text;
      }
    }
    return Optional.empty();
  }

  private Optional<String> read(Grid grid) {
    if (!keepsTime(grid)) {
      return Optional.empty();
    }
    BitMatrix modules = new BitMatrix(width);
    for (int row = 0; row < width; row++) {
      for (int column = 0; column < width; column++) {
        if (isDark(grid, column, row)) {
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

  /** Whether dark and light take turns where they should: a quick look before all is read. */
  private boolean keepsTime(Grid grid) {
    int spoilt = 0;
    for (int i = TIMING; i < width - TIMING; i++) {
      boolean dark = i % 2 == 0;
      spoilt += isDark(grid, i, TIMING) == dark ? 0 : 1;
      spoilt += isDark(grid, TIMING, i) == dark ? 0 : 1;
    }
    return spoilt <= 2 * (width - 2 * TIMING) / SPOILT;
  }

  private boolean isDark(Grid grid, int column, int row) {
    double bulge = bulge(column + 0.5);
    float[] at = {
      (float) (column + 0.5 + grid.along() * bulge), (float) (row + 0.5 + grid.down() * bulge)
    };
    grid.flat().transformPoints(at);
    int x = (int) at[0];
    int y = (int) at[1];
    return x >= 0
        && y >= 0
        && x < picture.getWidth()
        && y < picture.getHeight()
        && picture.get(x, y);
  }

  /**
   * Where modules are.
   *
   * @param flat from modules to pixels, were the code flat
   * @param along modules by which the middle of a line is shifted along itself
   * @param down modules by which it is shifted across
   */
  private record Grid(PerspectiveTransform flat, double along, double down) {}

  /** How far a line has bowed: 0 at the middles of both corner patterns, 1 half way. */
  private double bulge(double column) {
    double share = 2 * (column - CORNER) / (width - 2 * CORNER) - 1;
    return 1 - share * share;
  }

  private PerspectiveTransform byFour(double along, double down) {
    float fourth = width - FOURTH;
    double bulge = bulge(fourth);
    return flat((float) (fourth + along * bulge), (float) (fourth + down * bulge), corners[3]);
  }

  private PerspectiveTransform byThree(float spread) {
    float x = corners[0].getX() + spread * (corners[2].getX() - corners[1].getX());
    float y = corners[0].getY() + spread * (corners[2].getY() - corners[1].getY());
    return flat(width - CORNER, width - CORNER, new ResultPoint(x, y));
  }

  private PerspectiveTransform flat(float column, float row, ResultPoint fourth) {
    float far = width - CORNER;
    return PerspectiveTransform.quadrilateralToQuadrilateral(
        CORNER,
        CORNER,
        far,
        CORNER,
        column,
        row,
        CORNER,
        far,
        corners[1].getX(),
        corners[1].getY(),
        corners[2].getX(),
        corners[2].getY(),
        fourth.getX(),
        fourth.getY(),
        corners[0].getX(),
        corners[0].getY());
  }
}
