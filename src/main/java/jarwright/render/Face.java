package jarwright.render;

import com.lowagie.text.pdf.BaseFont;
import java.security.SecureRandom;
import java.util.Arrays;

/** One weight of the typeface: widths, heights, and which characters it has. */
final class Face {
  private static final int CACHED = 0x2300;

  private final BaseFont font;
  private final float[] widths = new float[CACHED];
  private final double capHeight;
  private final boolean evenDigits;

  Face(BaseFont font) {
    this.font = font;
    Arrays.fill(widths, -1);
    font.setIncludeCidSet(false);
    font.setSecureRandom(new SameTag());
    this.capHeight = font.getFontDescriptor(BaseFont.CAPHEIGHT, 1);
    this.evenDigits = "123456789".chars().allMatch(c -> width((char) c) == width('0'));
  }

  BaseFont font() {
    return font;
  }

  String name() {
    return font.getPostscriptFontName();
  }

  /** Whether all digits are as wide as each other. */
  boolean hasEvenDigits() {
    return evenDigits;
  }

  /** The height of a capital letter at 1 pt. */
  double capHeight() {
    return capHeight;
  }

  boolean has(int codePoint) {
    return codePoint <= 0xFFFF && font.charExists(codePoint);
  }

  /** The advance of a character at 1 pt. */
  double width(char c) {
    if (c >= CACHED) {
      return font.getWidthPoint(c, 1);
    }
    float width = widths[c];
    if (width < 0) {
      width = font.getWidthPoint(c, 1);
      widths[c] = width;
    }
    return width;
  }

  double width(String text, double size) {
    double width = 0;
    for (int i = 0; i < text.length(); i++) {
      width += width(text.charAt(i));
    }
    return width * size;
  }

  /** The letters before a subset's name are drawn by chance; the same bytes need the same. */
  private static final class SameTag extends SecureRandom {
    private static final long serialVersionUID = 1L;

    SameTag() {
      super(null, null);
    }

    @Override
    public void nextBytes(byte[] bytes) {
      Arrays.fill(bytes, (byte) 0x5A);
    }
  }
}
