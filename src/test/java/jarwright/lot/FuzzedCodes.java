package jarwright.lot;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Lot, jar and QR texts of the fuzzer's making. */
public final class FuzzedCodes {
  private static final JarId JAR = new JarId(new LotCode(LocalDate.of(2026, 8, 24), 'A'), 3);
  private static final UseBy USE_BY = new UseBy(LocalDate.of(2027, 8, 24));

  /** No plan holds a longer text. */
  private static final int MOST = 300;

  private FuzzedCodes() {}

  /** What is read means the same written out and read again; no detail gets in the way of it. */
  public static void codes(byte[] input) {
    String text = new String(input, StandardCharsets.UTF_8);
    try {
      LotCode lot = LotCode.parse(text);
      same(lot, LotCode.parse(lot.toString()));
    } catch (MistypedCode e) {
      shortWords(e);
    }
    try {
      JarId jar = JarId.parse(text);
      same(jar, JarId.parse(jar.toString()));
    } catch (MistypedCode e) {
      shortWords(e);
    }
    try {
      Optional<QrText.Read> read = QrText.parse(text);
      if (read.isPresent()) {
        String address = QrText.address("http://a.b", read.get().jar(), new UseBy(read.get().useBy()));
        same(read.get().useBy(), QrText.parse(address).orElseThrow().useBy());
      }
    } catch (MistypedCode e) {
      shortWords(e);
    }
    for (String words : QrText.words(JAR, USE_BY, List.of(text.substring(0, Math.min(MOST, text.length())).split("\n")))) {
      if (words.length() <= 4_296) {
        QrText.Read back = QrText.parse(words).orElseThrow();
        same(JAR, back.jar());
        same(USE_BY.date(), back.useBy());
      }
    }
  }

  private static void same(Object expected, Object found) {
    if (!expected.equals(found)) {
      throw new AssertionError(found + " instead of " + expected);
    }
  }

  private static void shortWords(MistypedCode e) {
    if (e.getMessage().length() > 300) {
      throw new AssertionError("a message of " + e.getMessage().length() + " characters");
    }
  }
}
