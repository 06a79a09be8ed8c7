package jarwright.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;

/**
 * Text for a terminal that lacks some characters: each of those is spelled with the ones it has. A
 * question mark in its place could be read as a figure's.
 */
final class SpelledStream extends PrintStream {
  private static final Map<Integer, String> SIGNS =
      Map.ofEntries(
          Map.entry((int) '\u2010', "-"),
          Map.entry((int) '\u2011', "-"),
          Map.entry((int) '\u2012', "-"),
          Map.entry((int) '\u2013', "-"),
          Map.entry((int) '\u2014', "--"),
          Map.entry((int) '\u2212', "-"),
          Map.entry((int) '\u00B7', "-"),
          Map.entry((int) '\u00D7', "x"),
          Map.entry((int) '\u00B9', "^1"),
          Map.entry((int) '\u00B2', "^2"),
          Map.entry((int) '\u00B3', "^3"),
          Map.entry((int) '\u00B0', "deg"),
          Map.entry((int) '\u00B1', "+/-"),
          Map.entry((int) '\u2044', "/"),
          Map.entry((int) '\u2264', "<="),
          Map.entry((int) '\u2265', ">="),
          Map.entry((int) '\u2300', "dia."),
          Map.entry((int) '\u2192', "->"),
          Map.entry((int) '\u2018', "'"),
          Map.entry((int) '\u2019', "'"),
          Map.entry((int) '\u201C', "\""),
          Map.entry((int) '\u201D', "\""),
          Map.entry((int) '\u00BF', ""),
          Map.entry((int) '\u00A1', ""),
          Map.entry((int) '\u00AD', ""),
          Map.entry((int) '\u200B', ""),
          Map.entry((int) '\u00DF', "ss"),
          Map.entry((int) '\u00E6', "ae"),
          Map.entry((int) '\u00C6', "Ae"),
          Map.entry((int) '\u00F8', "o"));

  private final CharsetEncoder encoder;

  SpelledStream(OutputStream out, Charset charset) {
    super(out, false, charset);
    this.encoder = charset.newEncoder();
  }

  /** Whether a stream writes all of a text as it stands. */
  static boolean shows(PrintStream out, String text) {
    return !(out instanceof SpelledStream spelled) || spelled.encoder.canEncode(text);
  }

  @Override
  public void print(String text) {
    super.print(spelled(String.valueOf(text)));
  }

  private String spelled(String text) {
    if (encoder.canEncode(text)) {
      return text;
    }
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(c -> out.append(spelled(c, out)));
    return out.toString();
  }

  /** The character itself, a sign for it, its plain letters, or its number. */
  private String spelled(int character, CharSequence before) {
    String text = Character.toString(character);
    if (encoder.canEncode(text)) {
      return text;
    }
    String sign = SIGNS.get(character);
    if (sign == null) {
      sign =
          Normalizer.normalize(text, Normalizer.Form.NFKD)
              .replaceAll("\\p{M}+", "")
              .replace('\u2044', '/');
    }
    // One and a half is no eleven halves.
    boolean joins = sign.matches("\\d+/\\d+") && endsInDigit(before);
    return encoder.canEncode(sign)
        ? (joins ? " " : "") + sign
        : String.format(Locale.ROOT, "[U+%04X]", character);
  }

  private static boolean endsInDigit(CharSequence text) {
    return text.length() > 0 && Character.isDigit(text.charAt(text.length() - 1));
  }
}
