package jarwright.water;

import jarwright.quantity.Altitude;
import jarwright.quantity.Fraction;
import jarwright.quantity.Temperature;

/** Where water boils under the mean air pressure of an altitude. */
public final class BoilingPoint {
  private static final double KPA_PER_MPA = 1_000;
  private static final double FREEZING_K = 273.15;
  private static final int TENTHS = 10;

  private BoilingPoint() {}

  /** Degrees Celsius; the weather moves it by about half a degree. */
  public static double celsius(Altitude altitude) {
    return Saturation.kelvin(Atmosphere.kilopascals(altitude) / KPA_PER_MPA) - FREEZING_K;
  }

  /** The same to the nearest tenth of a degree Fahrenheit. */
  public static Temperature at(Altitude altitude) {
    double fahrenheit = celsius(altitude) * 9 / 5 + 32;
    return new Temperature(
        Fraction.of(Math.round(fahrenheit * TENTHS), TENTHS), Temperature.Scale.F);
  }
}
