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

  private Atmosphere() {}

  /** Mean pressure in kPa; every altitude that can be written lies in the layer. */
  public static double kilopascals(Altitude altitude) {
    double metres = Doubles.of(altitude.inMetres());
    double geopotential = EARTH_RADIUS_M * metres / (EARTH_RADIUS_M + metres);
    return SEA_LEVEL_KPA * Math.pow(1 - LAPSE_K_PER_M * geopotential / SEA_LEVEL_K, EXPONENT);
  }
}
