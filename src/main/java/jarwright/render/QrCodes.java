package jarwright.render;

import com.google.zxing.qrcode.encoder.QRCode;
import jarwright.page.DoesNotFit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ForkJoinPool;

/**
 * Chooses and draws QR codes (ISO/IEC 18004). Of the texts offered the first is taken whose code,
 * quiet zone included, fits at the least module and stands being bent round a jar; then recovery is
 * raised from M as far as the size stays the same. The mask is chosen by penalty for the first code
 * of a group and kept for the rest, which differ in a digit or two: any mask decodes, and choosing
 * costs eight times. Other threads encode them, to be there when they are drawn.
 */
final class QrCodes {
  private static final int QUIET = 4;
  private static final double LEAST_MODULE = 0.42;
  private static final double DOT = 25.4 / 300;

  private final Map<String, CompletableFuture<Integer>> masks = new HashMap<>();

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
    QrSymbol symbol = choose(element, texts, room);
    int modules = symbol.modules();
    return new QrPicture(image(symbol, group), modules, room.module(modules), x, y, side, alt);
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
    double module(int width) {
      double module = side / (width + 2 * QUIET);
      if (standsBending(width)) {
        module = Math.min(module, most(width));
      }
      double dots = Math.floor(module / DOT + 1e-9);
      return Units.pt(dots * DOT >= LEAST_MODULE ? dots * DOT : module);
    }
  }

  /** The last text is taken even where it bows too much: it cannot be said with less. */
  private static QrSymbol choose(Element element, List<String> texts, Room room) {
    int modules = 0;
    for (String text : texts) {
      boolean last = text.equals(texts.get(texts.size() - 1));
      QrSymbol symbol = QrSymbol.of(text);
      if (symbol.version() == 0) {
        throw element.fault("no QR code can hold " + Markup.shorten(text) + ": it is too long");
      }
      modules = symbol.modules();
      if (room.holds(modules) && (last || room.standsBending(modules))) {
        return symbol;
      }
    }
    throw new DoesNotFit(
        element.where() + " the QR code", (modules + 2 * QUIET) * room.least(), room.side());
  }

  private CompletableFuture<byte[]> image(QrSymbol symbol, String group) {
    String alike = group + ":" + symbol.mode() + ":" + symbol.text().length();
    CompletableFuture<Integer> mask = group.isEmpty() ? null : masks.get(alike);
    if (mask != null) {
      return mask.thenApplyAsync(
          m -> QrPicture.image(symbol.encode(m).getMatrix()), QrCodes::elsewhere);
    }
    CompletableFuture<QRCode> first =
        CompletableFuture.supplyAsync(symbol::encode, QrCodes::elsewhere);
    masks.put(alike, first.thenApply(QRCode::getMaskPattern));
    return first.thenApply(code -> QrPicture.image(code.getMatrix()));
  }

  /** Not the pool itself: where it has one thread the JDK would begin a thread for each code. */
  private static void elsewhere(Runnable code) {
    ForkJoinPool.commonPool().execute(code);
  }
}
