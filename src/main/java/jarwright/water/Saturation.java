package jarwright.water;

/**
 * The saturation line of water: region 4 of IAPWS-IF97, equations 30 and 31 (IAPWS R7-97(2012)),
 * from 273.15 to 647.096 K.
 */
public final class Saturation {
  /** Coefficients n₁ to n₁₀ of Table 34. */
  private static final double[] N = {
    0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5,
    -0.32325550322333e7, 0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6,
    -0.23855557567849e0, 0.65017534844798e3,
  };

  private static final double LOWEST_K = 273.15;
  private static final double CRITICAL_K = 647.096;
  private static final double LOWEST_MPA = 611.213e-6;
  private static final double CRITICAL_MPA = 22.064;

  private Saturation() {}

  /**
   * Pressure in MPa at which water boils at a temperature in kelvin.
   *
   * @throws IllegalArgumentException outside the range of the equation
   */
  public static double megapascals(double kelvin) {
    if (!(kelvin >= LOWEST_K && kelvin <= CRITICAL_K)) {
      throw new IllegalArgumentException("273.15 K to 647.096 K, not " + kelvin + " K");
    }
    double theta = kelvin + N[8] / (kelvin - N[9]);
    double a = (theta + N[0]) * theta + N[1];
    double b = (N[2] * theta + N[3]) * theta + N[4];
    double c = (N[5] * theta + N[6]) * theta + N[7];
    return Math.pow(2 * c / (-b + Math.sqrt(b * b - 4 * a * c)), 4);
  }

  /**
   * Temperature in kelvin at which water boils under a pressure in MPa.
   *
   * @throws IllegalArgumentException outside the range of the equation
   */
  public static double kelvin(double megapascals) {
    if (!(megapascals >= LOWEST_MPA && megapascals <= CRITICAL_MPA)) {
      throw new IllegalArgumentException("611.213 Pa to 22.064 MPa, not " + megapascals + " MPa");
    }
    double beta = Math.sqrt(Math.sqrt(megapascals));
    double e = (beta + N[2]) * beta + N[5];
    double f = (N[0] * beta + N[3]) * beta + N[6];
    double g = (N[1] * beta + N[4]) * beta + N[7];
    double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
    double sum = N[9] + d;
    return (sum - Math.sqrt(sum * sum - 4 * (N[8] + N[9] * d))) / 2;
  }
}
