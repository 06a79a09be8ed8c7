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

  /** A printer that prints true. */
  public static final Registration TRUE = new Registration(0, 0, 1);

  /**
   * Checks the measures.
   *
   * @throws IllegalArgumentException if an offset is beyond 10 mm or the scale beyond 2 percent,
   *     which no alignment page would give
   */
  public Registration {
    if (!(Math.abs(right) <= 10 && Math.abs(down) <= 10)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT, "sheet offset %s, %s mm; from -10 to 10 mm can be", right, down));
    }
    if (!(scale >= 0.98 && scale <= 1.02)) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "sheet scale %s; from 0.98 to 1.02 can be", scale));
    }
  }
}
