package jarwright.page;

import java.util.List;
import java.util.Locale;

/**
 * A sheet of paper, upright, in millimetres.
 *
 * @param name the name users write, in lower case
 * @param width shorter or equal side in mm
 * @param height longer or equal side in mm
 */
public record PaperSize(String name, double width, double height) {

  /** US letter, 8½ × 11 in (ANSI/ASME Y14.1). */
  public static final PaperSize LETTER = new PaperSize("letter", 215.9, 279.4);

  /** A4, 210 × 297 mm (ISO 216). */
  public static final PaperSize A4 = new PaperSize("a4", 210, 297);

  /** The named sizes in the order in which they are offered. */
  public static final List<PaperSize> NAMED = List.of(LETTER, A4);

  /**
   * Checks the sides.
   *
   * @throws IllegalArgumentException if a side is not between 20 and 1,200 mm
   */
  public PaperSize {
    if (!(width >= 20 && width <= 1200 && height >= 20 && height <= 1200)) {
      throw new IllegalArgumentException(
          "paper " + name + " of " + width + " × " + height + " mm; a side is 20 to 1200 mm");
    }
  }

  /**
   * The named size.
   *
   * @throws IllegalArgumentException naming the sizes there are
   */
  public static PaperSize parse(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    return NAMED.stream()
        .filter(p -> p.name.equals(wanted))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("paper \"" + text + "\"; there are letter, a4"));
  }

  /** The same paper lying on its long side. */
  public PaperSize turned() {
    return new PaperSize(name, /* width= */ height, /* height= */ width);
  }
}
