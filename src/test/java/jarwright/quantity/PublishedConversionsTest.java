package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every unit against a published factor, each line with the publication that prints it. */
class PublishedConversionsTest {
  private static final MathContext SEVEN_DIGITS = new MathContext(7);

  @ParameterizedTest(name = "1 {0} = {1} mL: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          tsp    |    4.928922 | NIST SP 811 (2008) App. B.8, teaspoon
          Tbsp   |   14.78676  | NIST SP 811 (2008) App. B.8, tablespoon
          fl-oz  |   29.57353  | NIST SP 811 (2008) App. B.8, fluid ounce (US)
          cup    |  236.5882   | NIST SP 811 (2008) App. B.8, cup (US)
          pint   |  473.1765   | NIST SP 811 (2008) App. B.8, pint (US liquid)
          quart  |  946.3529   | NIST SP 811 (2008) App. B.8, quart (US liquid)
          gal    | 3785.412    | NIST SP 811 (2008) App. B.8, gallon (US)
          L      | 1000        | NIST SP 811 (2008) 5.1.2, litre
          """)
  void volumes(String unit, BigDecimal millilitres, String source) {
    assertPrinted(millilitres, Volume.parse("1 " + unit).inMillilitres(), source);
  }

  @ParameterizedTest(name = "1 {0} = {1} g: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          oz |   28.34952 | NIST SP 811 (2008) App. B.8, ounce (avoirdupois)
          lb |  453.5924  | NIST SP 811 (2008) App. B.8, pound (avoirdupois)
          kg | 1000       | NIST SP 330 (2019), kilogram
          """)
  void masses(String unit, BigDecimal grams, String source) {
    assertPrinted(grams, Mass.parse("1 " + unit).inGrams(), source);
  }

  @ParameterizedTest(name = "1 {0} = {1} mm: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          in | 25.4 | NIST SP 811 (2008) App. B.8, inch (exact)
          cm | 10   | NIST SP 330 (2019), prefixes
          """)
  void lengths(String unit, BigDecimal millimetres, String source) {
    assertPrinted(millimetres, Length.parse("1 " + unit).inMillimetres(), source);
  }

  /** Exact by definition, so compared as fractions. */
  @ParameterizedTest(name = "{0} = {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1 gal    | 473176473/125000   mL | NIST Handbook 44 App. C: 231 cubic inches exactly
          1 quart  | 473176473/500000   mL | NIST Handbook 44 App. C: 57.75 cubic inches exactly
          1 pint   | 473176473/1000000  mL | NIST Handbook 44 App. C: 28.875 cubic inches exactly
          128 fl-oz| 1                 gal | NIST Handbook 44 App. C: 128 fluid ounces in a gallon
          4 quart  | 1                 gal | NIST Handbook 44 App. C: 4 quarts in a gallon
          2 pint   | 1               quart | NIST Handbook 44 App. C: 2 pints in a quart
          2 cup    | 1                pint | NIST Handbook 44 App. C: 1 cup is 8 fluid ounces
          2 Tbsp   | 1               fl-oz | NIST Handbook 44 App. C: 1 tablespoon is 1/2 fluid ounce
          3 tsp    | 1                Tbsp | NIST Handbook 44 App. C: 3 teaspoons in a tablespoon
          """)
  void volumesByDefinition(String one, String other, String source) {
    assertEquals(0, Volume.parse(one).compareTo(Volume.parse(other)), source);
  }

  @ParameterizedTest(name = "{0} = {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1 lb  | 45359237/100 000 g | NIST Handbook 44 App. C: 453.59237 grams exactly
          16 oz | 1 lb               | NIST Handbook 44 App. C: 16 ounces in a pound
          """)
  void massesByDefinition(String one, String other, String source) {
    assertEquals(0, Mass.parse(one).compareTo(Mass.parse(other.replace(" 000", "000"))), source);
  }

  @ParameterizedTest(name = "{0} = {1}: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1,000 ft  | 304.8 m  | NIST SP 811 (2008) App. B.8: a foot is 0.3048 m exactly
          3,000 ft  | 914.4 m  | NIST SP 811 (2008) App. B.8
          6,000 ft  | 1828.8 m | NIST SP 811 (2008) App. B.8
          8,000 ft  | 2438.4 m | NIST SP 811 (2008) App. B.8
          """)
  void altitudesByDefinition(String feet, String metres, String source) {
    assertEquals(0, Altitude.parse(feet).compareTo(Altitude.parse(metres)), source);
  }

  @ParameterizedTest(name = "{0} °F = {1} °C: {2}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          32  | 0   | NIST SP 811 (2008) App. B.8: t/°C = (t/°F - 32)/1.8
          140 | 60  | AIB 539 (2015) Guide 1: canner water for raw pack
          212 | 100 | NIST SP 811 (2008) App. B.8
          -40 | -40 | NIST SP 811 (2008) App. B.8
          """)
  void temperatures(String fahrenheit, String celsius, String source) {
    Temperature f = Temperature.parse(fahrenheit + " °F");
    Temperature c = Temperature.parse(celsius + " °C");
    assertEquals(0, f.compareTo(c), source);
    assertEquals(c.degrees(), f.inCelsius(), source);
    assertEquals(f.degrees(), c.inFahrenheit(), source);
  }

  /** NIST SP 811 (2008) App. B.8: 1 psi is 6.894757 kPa. */
  @ParameterizedTest(name = "1 psi = {0} kPa")
  @CsvSource("6.894757")
  void pressure(BigDecimal kilopascals) {
    Fraction psiInKilopascal = GaugePressure.parse("1 kPa").inPsi();
    assertPrinted(kilopascals, Fraction.ONE.dividedBy(psiInKilopascal), "NIST SP 811 App. B.8");
  }

  private static void assertPrinted(BigDecimal printed, Fraction exact, String source) {
    BigDecimal rounded =
        new BigDecimal(exact.numerator()).divide(new BigDecimal(exact.denominator()), SEVEN_DIGITS);
    assertEquals(0, printed.compareTo(rounded), () -> source + ": " + rounded.toPlainString());
  }
}
