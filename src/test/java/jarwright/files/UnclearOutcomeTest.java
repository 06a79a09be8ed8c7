package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pressure that was seen in the canner, keyed in. */
class UnclearOutcomeTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          11.000     | can mean 11 psi or 11000 psi
          11.000 psi | can mean 11 psi or 11000 psi
          76.000 kPa | can mean 76 kPa or 76000 kPa
          """)
  void aPressureThatCanBeReadTwiceIsAskedFor(String text, String readings) {
    assertEquals(
        "lowest-psi: \"" + text + "\" " + readings,
        KeyedOutcome.fault("lowest-psi", text).orElseThrow().what());
  }
}
