package jarwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigInteger;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FractionTest {
  @ParameterizedTest(name = "\"{0}\" is {1}/{2}, written {3}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          3        |  3  | 1 | 3
          2.5      |  5  | 2 | 2-1/2
          .5       |  1  | 2 | 1/2
          1/4      |  1  | 4 | 1/4
          2/8      |  1  | 4 | 1/4
          1-1/2    |  3  | 2 | 1-1/2
          '1 1/2'  |  3  | 2 | 1-1/2
          ' 7 '    |  7  | 1 | 7
          -1-1/2   | -3  | 2 | -1-1/2
          -0.25    | -1  | 4 | -1/4
          0        |  0  | 1 | 0
          -0       |  0  | 1 | 0
          007      |  7  | 1 | 7
          0.125    |  1  | 8 | 1/8
          """)
  void readsKitchenNumbers(String text, long numerator, long denominator, String written) {
    Fraction read = Fraction.parse(text);
    assertEquals(Fraction.of(numerator, denominator), read);
    assertEquals(written, read.toString());
  }

  @ParameterizedTest(name = "\"{0}\"")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ''        | "" is not a number like 3, 2.5, 1/4 or 1-1/2
          abc       | "abc" is not a number like 3, 2.5, 1/4 or 1-1/2
          1,5       | "1,5" is not a number like 3, 2.5, 1/4 or 1-1/2
          1.        | "1." is not a number like 3, 2.5, 1/4 or 1-1/2
          1e3       | "1e3" is not a number like 3, 2.5, 1/4 or 1-1/2
          --1       | "--1" is not a number like 3, 2.5, 1/4 or 1-1/2
          +1        | "+1" is not a number like 3, 2.5, 1/4 or 1-1/2
          1/        | "1/" is not a number like 3, 2.5, 1/4 or 1-1/2
          1/2/3     | "1/2/3" is not a number like 3, 2.5, 1/4 or 1-1/2
          1-2       | "1-2" is not a number like 3, 2.5, 1/4 or 1-1/2
          1 - 1/2   | "1 - 1/2" is not a number like 3, 2.5, 1/4 or 1-1/2
          ½         | "½" is not a number like 3, 2.5, 1/4 or 1-1/2
          ٣         | "٣" is not a number like 3, 2.5, 1/4 or 1-1/2
          NaN       | "NaN" is not a number like 3, 2.5, 1/4 or 1-1/2
          1/0       | a fraction cannot have 0 below the line
          1-1/00    | a fraction cannot have 0 below the line
          """)
  void refusesWhatIsNoNumber(String text, String message) {
    var refused = assertThrows(IllegalArgumentException.class, () -> Fraction.parse(text));
    assertEquals(message, refused.getMessage());
  }

  @Test
  void aNumberOf24CharactersIsReadAndALongerOneIsRefusedCutShort() {
    String longest = "1".repeat(24);
    assertEquals(longest, Fraction.parse(longest).toString());
    String tooLong = "9".repeat(1_000_000);
    var refused = assertThrows(IllegalArgumentException.class, () -> Fraction.parse(tooLong));
    assertEquals(
        "\"" + "9".repeat(40) + "…\" is not a number like 3, 2.5, 1/4 or 1-1/2",
        refused.getMessage());
    assertThrows(IllegalArgumentException.class, () -> Fraction.parse("1".repeat(25)));
  }

  @Test
  void isKeptInLowestTermsWithTheSignAbove() {
    assertEquals(Fraction.of(1, 2), Fraction.of(2, 4));
    assertEquals(Fraction.of(-1, 2), Fraction.of(1, -2));
    assertEquals(Fraction.ZERO, Fraction.of(0, -7));
    assertEquals(BigInteger.ONE, Fraction.of(0, -7).denominator());
  }

  @ParameterizedTest(name = "{0}: floor {1}, ceiling {2}")
  @CsvSource({"2, 2, 2", "2.5, 2, 3", "-2.5, -3, -2", "-2, -2, -2", "0, 0, 0", "1/3, 0, 1"})
  void floorAndCeiling(String number, long floor, long ceiling) {
    assertEquals(BigInteger.valueOf(floor), Fraction.parse(number).floor());
    assertEquals(BigInteger.valueOf(ceiling), Fraction.parse(number).ceiling());
  }

  @Test
  void dividingByNothingIsRefused() {
    assertEquals(
        "a fraction cannot have 0 below the line",
        assertThrows(IllegalArgumentException.class, () -> Fraction.ONE.dividedBy(Fraction.ZERO))
            .getMessage());
  }

  /** So that a table by amounts stays quick. */
  @Test
  void smallFractionsHaveHashesOfTheirOwn() {
    Set<Fraction> fractions = new HashSet<>();
    Set<Integer> hashes = new HashSet<>();
    for (int above = 1; above <= 30; above++) {
      for (int below = 1; below <= 30; below++) {
        fractions.add(Fraction.of(above, below));
        hashes.add(Fraction.of(above, below).hashCode());
      }
    }
    assertEquals(fractions.size(), hashes.size());
  }

  @Test
  void tellsWholeFromBroken() {
    assertEquals(true, Fraction.of(4, 2).isWhole());
    assertEquals(false, Fraction.of(1, 2).isWhole());
  }
}
