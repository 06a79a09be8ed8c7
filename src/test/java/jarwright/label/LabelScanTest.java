package jarwright.label;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.label.JarCamera.Shot;
import jarwright.page.LabelShape;
import jarwright.page.LabelStock;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A label of every stock, on a jar or its lid in a kitchen, is read by two readers. */
class LabelScanTest {
  private static final int PRINTER = 300;

  static Stream<String> everyStock() {
    return LabelSamples.stocks().stream().map(LabelStock::id);
  }

  private static PrintedCodes code(String stock, int dpi) {
    JarLabel label = LabelSamples.label("Tomatoes, whole or halved, in water", 14);
    return PrintedCodes.of(List.of(label), LabelSamples.stock(stock), dpi).get(0);
  }

  /** Round labels lie flat on the lid. */
  private static BufferedImage picture(PrintedCodes code, String stock, Shot shot) {
    boolean flat = LabelSamples.stock(stock).shape() == LabelShape.CIRCLE;
    return JarCamera.picture(code.seen(), flat ? shot.jar(Shot.FLAT) : shot);
  }

  @ParameterizedTest
  @MethodSource("everyStock")
  void aJarInTheHandIsRead(String stock) {
    PrintedCodes code = code(stock, PRINTER);
    BufferedImage picture = picture(code, stock, Shot.KITCHEN);
    assertTrue(code.isRight(CodeReaders.first(picture)), "by the first reader");
    assertTrue(code.isRight(CodeReaders.second(picture)), "by the second reader");
  }

  /** The camera spoils pictures in earnest: else the test above could not fail. */
  @Test
  void aCodeBlurredOverTwoModulesIsReadByNone() {
    PrintedCodes code = code("letter-30up", PRINTER);
    BufferedImage picture = picture(code, "letter-30up", Shot.KITCHEN.blur(2 * 0.42));
    assertFalse(code.isRight(CodeReaders.first(picture)));
    assertFalse(code.isRight(CodeReaders.second(picture)));
  }

  /** How far each condition can go, the others as in a kitchen; a row each, for DEVELOPERS.md. */
  @Test
  @Tag("envelope")
  void theEnvelopeIsWritten() throws IOException {
    StringBuilder table =
        new StringBuilder("| condition | first reader | second reader |\n|---|---|---|\n");
    Shot k = Shot.KITCHEN;
    for (int dpi : new int[] {203, 300, 600}) {
      table.append(row("printed at " + dpi + " dpi", dpi, k));
    }
    Map<String, Shot> shots = new LinkedHashMap<>();
    for (double mm : new double[] {64, 70, 80, 99}) {
      shots.put("jar " + (int) mm + " mm across", k.jar(mm));
    }
    for (double degrees : new double[] {0, 15, 30, 40, 50, 60}) {
      shots.put("tilted " + (int) degrees + "°", k.tilt(degrees));
    }
    for (double degrees : new double[] {10, 20, 30, 40}) {
      shots.put("turned " + (int) degrees + "°", k.turn(degrees));
    }
    for (double pixels : new double[] {5, 7, 9, 12.5, 20}) {
      shots.put(pixels + " pixels a mm", k.sharp(pixels));
    }
    for (double mm : new double[] {0.05, 0.12, 0.2, 0.25, 0.3}) {
      shots.put("blur " + mm + " mm", k.blur(mm));
    }
    for (double levels : new double[] {3, 10, 20, 40}) {
      shots.put("noise of " + (int) levels + " of 255", k.noise(levels));
    }
    for (double share : new double[] {0.8, 0.4, 0.2, 0.1}) {
      shots.put("contrast " + share, k.contrast(share));
    }
    for (double mm : new double[] {1, 2, 3}) {
      shots.put("glare over " + (int) (2 * mm) + " mm", k.glare(mm));
    }
    for (double quality : new double[] {0.8, 0.4, 0.2, 0.1}) {
      shots.put("JPEG quality " + quality, k.jpeg(quality));
    }
    shots.forEach((what, shot) -> table.append(row(what, PRINTER, shot)));
    Files.writeString(Path.of("target", "scan-envelope.md"), table);
  }

  private static String row(String what, int dpi, Shot shot) {
    int first = 0;
    int second = 0;
    List<String> stocks = everyStock().toList();
    for (String stock : stocks) {
      PrintedCodes code = code(stock, dpi);
      BufferedImage picture = picture(code, stock, shot);
      first += code.isRight(CodeReaders.first(picture)) ? 1 : 0;
      second += code.isRight(CodeReaders.second(picture)) ? 1 : 0;
    }
    return "| "
        + what
        + " | "
        + first
        + " of "
        + stocks.size()
        + " | "
        + second
        + " of "
        + stocks.size()
        + " |\n";
  }
}
