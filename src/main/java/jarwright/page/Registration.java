package jarwright.page;

import java.util.Locale;

/**
 * How a household's printer is brought into register with label stock: measured on an alignment
 * page, applied to the whole sheet.
 *
 * @param right mm by which everything moves to the right (negative: left)
 * @param down mm by which everything moves down (negative: up)
 * @param scale factor by which lengths are multiplied about the sheet's upper left corner, for a
 *     printer that prints too small or too large
 */
public record Registration(double right, double down, double scale) {

  /** Most mm by which anything may be moved; no alignment page would give more. */
  public static final int MOST_OFFSET = 10;

  /** Most percent by which lengths may be changed. */
  public static final int MOST_STRETCH = 2;

  /** A printer that prints true. */
  public static final Registration TRUE = new Registration(0, 0, 1);

  /**
   * Checks the measures.
   *
   * @throws IllegalArgumentException if an offset is beyond {@value #MOST_OFFSET} mm or the scale
   *     beyond {@value #MOST_STRETCH} percent
   */
  public Registration {
    if (!(Math.abs(right) <= MOST_OFFSET && Math.abs(down) <= MOST_OFFSET)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "sheet offset %s, %s mm; from -%d to %d mm can be",
              right,
              down,
              MOST_OFFSET,
              MOST_OFFSET));
    }
    if (!(Math.abs(scale - 1) <= MOST_STRETCH / 100.0 + 1e-9)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "sheet scale %s; from %d to %d percent can be",
              scale,
              100 - MOST_STRETCH,
              100 + MOST_STRETCH));
    }
  }
}
