package jarwright.render;

import com.google.zxing.Binarizer;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.DetectorResult;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.detector.MultiDetector;
import com.google.zxing.qrcode.QRCodeReader;
import com.google.zxing.qrcode.decoder.Decoder;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Finds the QR codes in a picture. It looks in several ways, each of which reads pictures that the
 * others do not; {@code PictureCodesTest} counts how many.
 */
final class CodeFinder {
  private static final Map<DecodeHintType, ?> HARD = Map.of(DecodeHintType.TRY_HARDER, true);

  /** Of a smaller picture no part is looked at by itself. */
  private static final int SMALLEST_TILE = 240;

  /** A larger picture is sharp enough as it is. */
  private static final long MOST_TO_DOUBLE = 4_000_000;

  private static final long MOST_TO_DOUBLE_AND_TURN = 1_000_000;

  /** A way of looking at a picture. */
  enum Look {
    /** As it is, against the brightness round each place. */
    WHOLE,
    /** Its noise smoothed and its edges drawn out: out of focus, or in a dim cellar. */
    SHARPENED,
    /** Turned by half a right angle: a code that stands on its corner is missed. */
    TURNED,
    /** At twice its size, for codes far off. */
    DOUBLED,
    /** Against one brightness for all of it. */
    EVENLY,
    /** In overlapping parts, so that the corners of several codes are not mixed up. */
    TILED
  }

  private CodeFinder() {}

  /** The texts of all codes found, each once. */
  static Set<String> texts(GreyPicture picture) {
    return texts(picture, EnumSet.allOf(Look.class));
  }

  static Set<String> texts(GreyPicture picture, Collection<Look> looks) {
    Set<String> found = new LinkedHashSet<>();
    for (Look look : looks) {
      look(picture, look, found);
    }
    return found;
  }

  private static void look(GreyPicture picture, Look look, Set<String> found) {
    switch (look) {
      case WHOLE -> read(picture, HybridBinarizer::new, found);
      case SHARPENED -> read(picture.smoothed(1).sharpened(), HybridBinarizer::new, found);
      case TURNED -> {
        boolean small = (long) picture.w() * picture.h() <= MOST_TO_DOUBLE_AND_TURN;
        GreyPicture sharp = small ? picture.doubled() : picture;
        read(sharp.turned(), HybridBinarizer::new, found);
      }
      case DOUBLED -> {
        if ((long) picture.w() * picture.h() <= MOST_TO_DOUBLE) {
          read(picture.doubled(), HybridBinarizer::new, found);
        }
      }
      case EVENLY -> read(picture, GlobalHistogramBinarizer::new, found);
      case TILED -> {
        tiles(picture, 2, found);
        tiles(picture, 4, found);
      }
    }
  }

  /** Parts of a given share of each side, every half of a part. */
  private static void tiles(GreyPicture picture, int share, Set<String> found) {
    int w = picture.w() / share;
    int h = picture.h() / share;
    if (Math.min(w, h) < SMALLEST_TILE) {
      return;
    }
    for (int top = 0; top + h <= picture.h(); top += h / 2) {
      for (int left = 0; left + w <= picture.w(); left += w / 2) {
        read(picture.part(left, top, w, h), HybridBinarizer::new, found);
      }
    }
  }

  static void read(
      GreyPicture picture, Function<LuminanceSource, Binarizer> how, Set<String> found) {
    if (picture.w() == 0 || picture.h() == 0) {
      return;
    }
    LuminanceSource grey =
        new PlanarYUVLuminanceSource(
            picture.levels(), picture.w(), picture.h(), 0, 0, picture.w(), picture.h(), false);
    BinaryBitmap bitmap = new BinaryBitmap(how.apply(grey));
    try {
      BitMatrix black = bitmap.getBlackMatrix();
      for (DetectorResult place : new MultiDetector(black).detectMulti(HARD)) {
        straight(place).or(() -> BentCode.read(black, place)).ifPresent(found::add);
      }
    } catch (ReaderException e) {
      // Where it cannot tell several codes apart the reader for one may still see one.
      one(bitmap, found);
    }
  }

  private static Optional<String> straight(DetectorResult place) {
    try {
      return Optional.of(new Decoder().decode(place.getBits(), HARD).getText());
    } catch (ReaderException e) {
      return Optional.empty();
    }
  }

  private static void one(BinaryBitmap bitmap, Set<String> found) {
    try {
      found.add(new QRCodeReader().decode(bitmap, HARD).getText());
    } catch (ReaderException e) {
      return;
    }
  }
}
