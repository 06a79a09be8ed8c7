package jarwright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * AIB 539 (2015) Guide 1, "Using tables for determining proper process times": "Process times for
 * 1/2-pint and pint jars are the same, as are times for 1-1/2 pint and quart jars." (Read in the
 * National Center for Home Food Preservation's Selecting the Correct Processing Time, which prints
 * the passage.) The same centre adds that a jar larger than the largest listed has no process.
 */
class JarSubstitutionTest {
  @ParameterizedTest(name = "{0}, {1}, {2}, {3}: {4} ({5})")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          peaches-halved-or-sliced | boiling-water  | hot | half-pint  | 20 min, as pint             | pints and quarts are listed
          peaches-halved-or-sliced | boiling-water  | hot | 1-1/2-pint | 25 min, as quart            | pints and quarts are listed
          peaches-halved-or-sliced | boiling-water  | hot | 12-ounce   | not covered: JAR            | no rule for that size
          peaches-halved-or-sliced | boiling-water  | hot | half-gallon | not covered: JAR           | larger than the largest listed
          corn-cream-style         | dial-gauge     | hot | half-pint  | 85 min at 11 psi, as pint   | only pints are listed
          corn-cream-style         | dial-gauge     | hot | 1-1/2-pint | not covered: JAR            | no quarts to stand for it
          corn-cream-style         | dial-gauge     | hot | quart      | not covered: JAR            | larger than the largest listed
          clams                    | weighted-gauge | hot | half-pint  | 60 min at 10 psi            | listed itself
          crab-king-dungeness      | weighted-gauge | hot | half-pint  | 70 min at 10 psi            | listed itself
          easy-hot-sauce           | boiling-water  | hot | half-pint  | 10 min                      | listed itself
          easy-hot-sauce           | boiling-water  | hot | pint       | not covered: JAR            | a pint is not a half-pint
          green-tomato-pie-filling | boiling-water  | hot | half-pint  | not covered: JAR            | no pints to stand for it
          green-tomato-pie-filling | boiling-water  | hot | 1-1/2-pint | 15 min, as quart            | only quarts are listed
          green-tomato-pie-filling | boiling-water  | hot | pint       | not covered: JAR            | pints are not listed
          apple-juice              | boiling-water  | hot | half-gallon | 10 min                     | listed itself
          pickled-asparagus        | boiling-water  | raw | 12-ounce   | 10 min                      | listed itself
          peaches-halved-or-sliced | boiling-water  | raw | half-pint  | 25 min, as pint             | the pack's own pint time
          fish-in-quart-jars       | dial-gauge     | raw | quart      | 160 min at 11 psi           | listed itself
          fish-in-quart-jars       | dial-gauge     | raw | 1-1/2-pint | not covered: JAR            | p. 5-12 heats and vents for quarts alone
          fish-in-pint-jars        | dial-gauge     | raw | 1-1/2-pint | not covered: JAR            | no quarts to stand for it
          tomatoes-whole-in-water  | weighted-gauge | raw | half-pint  | 15 min at 5 psi or 10 min at 10 psi or 1 min at 15 psi, as pint | every option
          asparagus                | boiling-water  | raw | half-pint  | not covered: METHOD         | a smaller jar opens no method
          """)
  void onlyTheTwoPrintedPairsStandForEachOther(
      String product, String method, String pack, String jar, String answer, String why) {
    assertEquals(answer, Book.say(Book.ask(product, method, pack, jar, "0 ft")), why);
  }
}
