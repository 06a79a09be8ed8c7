package jarwright.lot;

import java.text.Normalizer;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a jar's QR code says, in the alphanumeric set of ISO/IEC 18004 so that the symbol stays
 * small: as plain words, or as an address that still shows lot and use-by date.
 */
public final class QrText {
  private static final Pattern OUTSIDE_SET = Pattern.compile("[^0-9A-Z $%*+\\-./:]+");
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
  private static final Pattern WORDS =
      Pattern.compile("LOT ([^ ]+) USE BY (\\d{4}-\\d{2}-\\d{2})(?: (.*))?");
  private static final Pattern ADDRESS =
      Pattern.compile("HTTPS?://[^ ]+/([^/]+/\\d+)/USE-BY-(\\d{4}-\\d{2}-\\d{2})");
  private static final int LONGEST = 4_296;

  /** What a code was found to say. */
  public record Read(JarId jar, LocalDate useBy, String rest) {}

  private QrText() {}

  /**
   * The texts a code may hold, the fullest first: each next one leaves out the last detail. The
   * last holds lot, jar and use-by date alone.
   *
   * @param details product, pack, jar, method, minutes, altitude, acid, in order of weight
   */
  public static List<String> words(JarId jar, UseBy useBy, List<String> details) {
    String least = "LOT " + jar + " USE BY " + useBy;
    List<String> printable = details.stream().map(QrText::inSet).filter(d -> !d.isEmpty()).toList();
    List<String> texts = new ArrayList<>();
    for (int kept = printable.size(); kept >= 0; kept--) {
      StringBuilder text = new StringBuilder(least);
      printable.subList(0, kept).forEach(d -> text.append(' ').append(d));
      texts.add(text.toString());
    }
    return texts;
  }

  /**
   * An address below the given base, all in capitals: scheme and host are read alike in either case
   * (RFC 3986, 6.2.2.1).
   *
   * @param base such as {@code http://pantry.lan:8080}, no path
   */
  public static String address(String base, JarId jar, UseBy useBy) {
    String trimmed = base.endsWith("/") ? base.substring(0, base.length() - 1) : base;
    return trimmed.toUpperCase(Locale.ROOT) + "/" + jar + "/USE-BY-" + useBy;
  }

  /**
   * Reads either form back; none when the text is not a jar's code at all.
   *
   * @throws MistypedCode when it has the form of one but its lot cannot have been printed
   */
  public static Optional<Read> parse(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    String code = text.strip().toUpperCase(Locale.ROOT);
    for (Pattern form : List.of(WORDS, ADDRESS)) {
      Matcher found = form.matcher(code);
      if (found.matches()) {
        String rest = form == WORDS && found.group(3) != null ? found.group(3) : "";
        return Optional.of(new Read(JarId.parse(found.group(1)), date(found.group(2)), rest));
      }
    }
    return Optional.empty();
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new MistypedCode("\"" + text + "\" is no date");
    }
  }

  private static String inSet(String words) {
    String plain = Normalizer.normalize(words, Normalizer.Form.NFD);
    String capitals = ACCENTS.matcher(plain).replaceAll("").toUpperCase(Locale.ROOT);
    return OUTSIDE_SET.matcher(capitals).replaceAll(" ").strip().replaceAll(" {2,}", " ");
  }
}
