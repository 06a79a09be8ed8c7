package jarwright.cli;

import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import jarwright.lot.MistypedCode;
import jarwright.lot.QrText;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A code that was read or typed, so far as it says something.
 *
 * @param text as it stands in the code
 * @param lot empty where it is no jar's code, or a mistyped one
 * @param useBy as the code says; empty where only the lot was typed
 * @param fault what is wrong with it; empty where nothing is
 */
record SeenCode(
    String text,
    Optional<LotCode> lot,
    Optional<JarId> jar,
    Optional<LocalDate> useBy,
    String rest,
    String fault) {

  /** What a code in a picture says; codes of other things say nothing here. */
  static SeenCode read(String text) {
    try {
      return QrText.parse(text).map(r -> whole(text, r)).orElse(faulty(text, ""));
    } catch (MistypedCode e) {
      return faulty(text, e.getMessage());
    }
  }

  /** The same for what was typed, which may be a jar's or a lot's name alone. */
  static SeenCode typed(String text) {
    String plain = text.strip();
    try {
      Optional<QrText.Read> read = QrText.parse(plain);
      if (read.isPresent()) {
        return whole(plain, read.get());
      }
      if (plain.contains("/")) {
        JarId jar = JarId.parse(plain);
        return named(plain, jar.lot(), Optional.of(jar));
      }
      return named(plain, LotCode.parse(plain), Optional.empty());
    } catch (MistypedCode e) {
      return faulty(plain, e.getMessage());
    }
  }

  private static SeenCode whole(String text, QrText.Read read) {
    JarId jar = read.jar();
    return new SeenCode(
        text, Optional.of(jar.lot()), Optional.of(jar), Optional.of(read.useBy()), read.rest(), "");
  }

  private static SeenCode named(String text, LotCode lot, Optional<JarId> jar) {
    return new SeenCode(text, Optional.of(lot), jar, Optional.empty(), "", "");
  }

  private static SeenCode faulty(String text, String fault) {
    return new SeenCode(text, Optional.empty(), Optional.empty(), Optional.empty(), "", fault);
  }

  /** Whether it has the form of a code but cannot have been printed. */
  boolean isMistyped() {
    return !fault.isEmpty();
  }
}
