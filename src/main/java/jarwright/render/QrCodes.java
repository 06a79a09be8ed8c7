package jarwright.render;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Mode;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import jarwright.page.DoesNotFit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Chooses and draws QR codes (ISO/IEC 18004). Of the texts offered the first is taken whose code,
 * quiet zone included, fits at the least module and stands being bent round a jar; then recovery is
 * raised from M as far as the size stays the same. The mask is chosen by penalty for the first code
 * of a group and kept for the rest, which differ in a digit or two: any mask decodes, and choosing
 * costs eight times.
 */
final class QrCodes {
  private static final int QUIET = 4;
  private static final double LEAST_MODULE = 0.42;
  private static final double DOT = 25.4 / 300;

  private final Map<String, Integer> masks = new HashMap<>();
  private final Map<String, ErrorCorrectionLevel> levels = new HashMap<>();

  /** Modules of a side by mode and length, which alone decide it in the alphanumeric set. */
  private final Map<String, Integer> widths = new HashMap<>();

  /** Reads a {@code qr} element to its end. */
  Canvas.Item read(Markup markup, Element element) {
    double x = element.mm("x");
    double y = element.mm("y");
    double side = element.mm("w");
    double least = element.number("module", LEAST_MODULE);
    double bend = element.number("bend", 0);
    String group = element.text("group", "");
    String alt = element.text("alt");
    element.done();
    if (!(least >= LEAST_MODULE && least <= 5)) {
      throw element.bad("module", String.valueOf(least), "from 0.42 to 5 mm");
    }
    List<String> texts = new ArrayList<>();
    for (Element child = markup.child(element); child != null; child = markup.child(element)) {
      if (!child.name().equals("try")) {
        throw child.notHere(element, "try");
      }
      child.done();
      texts.add(markup.words(child).strip());
    }
    if (texts.isEmpty() || texts.contains("")) {
      throw element.fault("<qr> needs at least one <try> with words in it");
    }
    Room room = new Room(Units.mm(side), least, bend);
    QRCode code = choose(element, texts, room, group);
    return new QrPicture(code.getMatrix(), room.module(code), x, y, side, alt);
  }

  /**
   * What a code has to fit into.
   *
   * @param side of the square in mm, quiet zone included
   * @param least mm of a module
   * @param bend diameter in mm of the jar it is bent round; 0 for none
   */
  private record Room(double side, double least, double bend) {
    /**
     * Modules by which a bent code's edge may bow when it is seen from 30 degrees above: readers
     * look for modules on straight lines. Measured with two readers in {@code LabelScanTest}.
     */
    private static final double BOW = 0.7;

    boolean holds(int width) {
      return (width + 2 * QUIET) * least <= side + 1e-6;
    }

    /** The edge's bow is the arc's height, (width · module)² / 4 bend, times the sine of 30°. */
    double most(int width) {
      return bend > 0 ? BOW * 8 * bend / (width * width) : Double.MAX_VALUE;
    }

    boolean standsBending(int width) {
      return least <= most(width) + 1e-6;
    }

    /** In pt: the largest of whole printer dots, if one is not below the least. */
    double module(QRCode code) {
      int width = code.getMatrix().getWidth();
      double module = side / (width + 2 * QUIET);
      if (standsBending(width)) {
        module = Math.min(module, most(width));
      }
      double dots = Math.floor(module / DOT + 1e-9);
      return Units.pt(dots * DOT >= LEAST_MODULE ? dots * DOT : module);
    }
  }

  /** The last text is taken even where it bows too much: it cannot be said with less. */
  private QRCode choose(Element element, List<String> texts, Room room, String group) {
    int modules = 0;
    for (String text : texts) {
      boolean last = text.equals(texts.get(texts.size() - 1));
      String alike = Encoder.chooseMode(text) + ":" + text.length();
      Integer known = widths.get(alike);
      if (known == null || fits(known, room, last)) {
        QRCode code = encode(element, text, group);
        known = code.getMatrix().getWidth();
        if (code.getMode() == Mode.ALPHANUMERIC) {
          widths.put(alike, known);
        }
        if (fits(known, room, last)) {
          return code;
        }
      }
      modules = known + 2 * QUIET;
    }
    throw new DoesNotFit(element.where() + " the QR code", modules * room.least(), room.side());
  }

  private static boolean fits(int width, Room room, boolean last) {
    return room.holds(width) && (last || room.standsBending(width));
  }

  private QRCode encode(Element element, String text, String group) {
    Mode mode = Encoder.chooseMode(text);
    String alike = group + ":" + mode + ":" + text.length();
    ErrorCorrectionLevel level = mode == Mode.ALPHANUMERIC ? levels.get(alike) : null;
    try {
      if (level == null) {
        level = highest(text);
        levels.put(alike, level);
      }
      Map<EncodeHintType, Object> hints = hints(text);
      Integer mask = group.isEmpty() ? null : masks.get(alike);
      if (mask != null) {
        hints.put(EncodeHintType.QR_MASK_PATTERN, mask);
      }
      QRCode code = Encoder.encode(text, level, hints);
      masks.put(alike, code.getMaskPattern());
      return code;
    } catch (WriterException e) {
      throw element.fault("no QR code can hold " + Markup.shorten(text) + ": it is too long");
    }
  }

  /** The highest recovery level that needs no larger code than level M. */
  private static ErrorCorrectionLevel highest(String text) throws WriterException {
    Map<EncodeHintType, Object> hints = hints(text);
    hints.put(EncodeHintType.QR_MASK_PATTERN, 0);
    int size = size(text, ErrorCorrectionLevel.M, hints);
    for (var level : List.of(ErrorCorrectionLevel.H, ErrorCorrectionLevel.Q)) {
      try {
        if (size(text, level, hints) == size) {
          return level;
        }
      } catch (WriterException e) {
        // too long at this level: the next lower one
      }
    }
    return ErrorCorrectionLevel.M;
  }

  private static int size(
      String text, ErrorCorrectionLevel level, Map<EncodeHintType, Object> hints)
      throws WriterException {
    return Encoder.encode(text, level, hints).getMatrix().getWidth();
  }

  private static Map<EncodeHintType, Object> hints(String text) {
    Map<EncodeHintType, Object> hints = new EnumMap<>(EncodeHintType.class);
    if (text.chars().anyMatch(c -> c > 0x7E)) {
      hints.put(EncodeHintType.CHARACTER_SET, "UTF-8");
    }
    return hints;
  }
}
