package jarwright.render;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tone of ink.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
record Tone(int red, int green, int blue) {
  static final Tone BLACK = new Tone(0, 0, 0);
  static final Tone WHITE = new Tone(255, 255, 255);

  private static final Pattern HEX = Pattern.compile("#([0-9a-fA-F]{6})");
  private static final Pattern PERCENT = Pattern.compile("(\\d{1,3})%");

  /** The words a template may write. */
  static final String FORMS = "black, white, accent, a share of black as 15%, or #rrggbb";

  /** The tone of that word, or null if it is none. */
  static Tone parse(String text, Tone accent) {
    Matcher hex = HEX.matcher(text);
    if (hex.matches()) {
      int rgb = Integer.parseInt(hex.group(1), 16);
      return new Tone(rgb >> 16, rgb >> 8 & 255, rgb & 255);
    }
    Matcher percent = PERCENT.matcher(text);
    if (percent.matches() && Integer.parseInt(percent.group(1)) <= 100) {
      int light = (int) Math.round(255 * (1 - Integer.parseInt(percent.group(1)) / 100.0));
      return new Tone(light, light, light);
    }
    if (text.equals("accent")) {
      return accent;
    }
    if (text.equals("white")) {
      return WHITE;
    }
    return text.equals("black") ? BLACK : null;
  }

  /** Neutral tones are set as grey, so that a laser printer uses black toner alone. */
  void fill(PdfContentByte to) {
    if (red == green && green == blue) {
      to.setGrayFill(red / 255f);
    } else {
      to.setRGBColorFill(red, green, blue);
    }
  }

  void stroke(PdfContentByte to) {
    if (red == green && green == blue) {
      to.setGrayStroke(red / 255f);
    } else {
      to.setRGBColorStroke(red, green, blue);
    }
  }
}
