package jarwright.water;

import jarwright.quantity.Altitude;

/**
 * Air pressure by altitude in the lowest layer of the U.S. Standard Atmosphere, 1976 (NOAA-S/T
 * 76-1562): a mean, from which the weather departs.
 */
public final class Atmosphere {
  private static final double SEA_LEVEL_KPA = 101.325;
  private static final double SEA_LEVEL_K = 288.15;
  private static final double LAPSE_K_PER_M = 0.0065;
  private static final double EARTH_RADIUS_M = 6_356_766;

  /** g₀ M₀ / R* L, with the constants of the 1976 standard. */
  private static final double EXPONENT = 9.80665 * 0.0289644 / (8.31432 * LAPSE_K_PER_M);

  /** The layer reaches from 5 km below the sea to 11 km above it. */
  private static final double LOWEST_M = -5_000;

  private static final double HIGHEST_M = 11_000;

  private Atmosphere() {}

  /**
   * Mean pressure in kPa.
   *
   * @throws IllegalArgumentException outside −5 km to 11 km
   */
  public static double kilopascals(Altitude altitude) {
    double metres = Doubles.of(altitude.inMetres());
    double geopotential = EARTH_RADIUS_M * metres / (EARTH_RADIUS_M + metres);
    if (geopotential < LOWEST_M || geopotential > HIGHEST_M) {
      throw new IllegalArgumentException(
          "the standard's lowest layer ends at -5 and 11 km, not " + altitude);
    }
    return SEA_LEVEL_KPA * Math.pow(1 - LAPSE_K_PER_M * geopotential / SEA_LEVEL_K, EXPONENT);
  }
}
