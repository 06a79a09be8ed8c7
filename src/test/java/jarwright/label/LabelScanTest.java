package jarwright.label;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.page.LabelStock;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A label of every stock, round a jar in a kitchen, is read by two readers. */
class LabelScanTest {

  static Stream<String> everyStock() {
    return LabelSamples.stocks().stream().map(LabelStock::id);
  }

  @ParameterizedTest
  @MethodSource("everyStock")
  void aJarInTheHandIsRead(String id) {
    JarLabel label = LabelSamples.label("Tomatoes, whole or halved, in water", 14);
    PrintedCodes code = PrintedCodes.of(List.of(label), LabelSamples.stock(id), 300).get(0);
    BufferedImage picture = JarCamera.picture(code.seen(), JarCamera.Shot.KITCHEN);
    assertTrue(code.isRight(CodeReaders.first(picture)), "by the first reader");
    assertTrue(code.isRight(CodeReaders.second(picture)), "by the second reader");
  }

  /** The camera spoils pictures in earnest: else the test above could not fail. */
  @Test
  void aCodeBlurredOverTwoModulesIsReadByNone() {
    JarLabel label = LabelSamples.label("Plums, halved or whole", 1);
    PrintedCodes code =
        PrintedCodes.of(List.of(label), LabelSamples.stock("letter-30up"), 300).get(0);
    BufferedImage picture =
        JarCamera.picture(code.seen(), JarCamera.Shot.KITCHEN.blur(2 * 0.42));
    assertFalse(code.isRight(CodeReaders.first(picture)));
    assertFalse(code.isRight(CodeReaders.second(picture)));
  }
}
