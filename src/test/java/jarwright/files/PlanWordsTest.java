package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.ask.Saying;
import jarwright.plan.Cover;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import jarwright.problem.Problems;
import jarwright.process.JarSize;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Values of a plan as households write them. Sizes: AIB 539 (2015) Guide 1, NIST Handbook 44. */
class PlanWordsTest {
  private static final Place HERE = new Place("plan.yaml", 1, 1, "");
  private static PlanWords words;

  @BeforeAll
  static void readNames() throws Exception {
    words = new PlanWords(ProcessTables.ofProgram());
  }

  /** What a value is understood as, else what is wrong with it. */
  private static String read(String key, String value) throws Exception {
    Problems problems = new Problems();
    Written.Keys keys =
        new Written.Keys(
            HERE, Map.of(key, new Written.Entry(HERE, new Written.Text(HERE, value, false))));
    Fields fields = new Fields(keys, "a batch", List.of(key), Map.of(), problems);
    Optional<?> read =
        switch (key) {
          case "jar" -> new JarWord(words).read(fields, key);
          case "pack" -> PackWord.read(fields, key, words);
          case "method" -> MethodWord.read(fields, key, words);
          case "acid" -> AcidWord.read(fields, key, words);
          default ->
              words.word(fields, key, Saying.Sense.COVER, Cover::named, Cover.ids()).map(Cover::id);
        };
    assertTrue(read.isEmpty() || problems.isEmpty(), value);
    return read.isPresent()
        ? read.get().toString()
        : problems.list().stream().map(p -> line(key, p)).findFirst().orElse("none");
  }

  private static String line(String key, Problem problem) {
    assertTrue(problem.what().startsWith(key + ": "), problem.what());
    return problem.what().substring(key.length() + 2) + "; " + problem.remedy();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          jar    | pints                       | pint
          jar    | Pint jars                   | pint
          jar    | pt                          | pint
          jar    | 16 oz                       | pint
          jar    | 1 pint                      | pint
          jar    | qt                          | quart
          jar    | quarts                      | quart
          jar    | 32-oz. jars                 | quart
          jar    | half pints                  | half-pint
          jar    | 1/2 pint                    | half-pint
          jar    | 8oz                         | half-pint
          jar    | 12oz                        | 12-ounce
          jar    | 12 fl oz                    | 12-ounce
          jar    | 24-ounce                    | 1-1/2-pint
          jar    | 1.5 pint                    | 1-1/2-pint
          jar    | pint and a half             | 1-1/2-pint
          jar    | 64 oz                       | half-gallon
          jar    | half gallon                 | half-gallon
          pack   | Raw pack                    | raw
          pack   | hot pack                    | hot
          method | water bath                  | boiling-water
          method | Boiling-water canner        | boiling-water
          method | weighted gauge              | weighted-gauge
          acid   | citric                      | citric acid
          acid   | ácido cítrico               | citric acid
          acid   | jugo de limón embotellado   | bottled lemon juice
          acid   | vinagre al 5 %              | vinegar 5%
          acid   | none                        | none
          syrup  | light syrup                 | light
          syrup  | almíbar muy ligero          | very-light
          syrup  | agua                        | water
          """)
  void aNameThatMeansOneThingIsUnderstood(String key, String value, String meant) throws Exception {
    assertEquals(meant, read(key, value));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          jar    | pint or quart    | "pint or quart" can mean more than one; write pint or quart
          jar    | 7 quarts         | "7 quarts" can mean a size or how many jars there are; write jar: quart, and how many under jars:
          jar    | 2 quart          | "2 quart" can mean a size or how many jars there are; write jar: quart, and how many under jars:
          jar    | 1.000 L          | "1.000 L" can mean 1 L or 1000 L; write 1 L or 1000 L, whichever is right
          pack   | raw or hot       | "raw or hot" can mean more than one; write hot or raw
          method | pressure canner  | "pressure canner" can mean more than one; write dial-gauge or weighted-gauge
          """)
  void aNameThatMeansMoreOffersAll(String key, String value, String problem) throws Exception {
    assertEquals(problem, read(key, value));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          500 mL   | holds more than a pint jar (16 fl oz, 473 mL)  | use pint jars
          500ml    | holds more than a pint jar                     | use pint jars
          0.5 l    | holds more than a pint jar                     | use pint jars
          1/2 L    | holds more than a pint jar                     | use pint jars
          1 L      | holds more than a quart jar (32 fl oz, 946 mL) | use quart jars
          1 liter  | holds more than a quart jar                    | use quart jars
          1 litro  | holds more than a quart jar                    | use quart jars
          250 ml   | holds more than a half-pint jar                | use half-pint jars
          28 oz    | holds more than a 1-1/2-pint jar               | use 1-1/2-pint jars
          4 oz     | is smaller than the smallest jar               | use half-pint jars
          4-ounce  | is smaller than the smallest jar               | use half-pint jars
          1 gallon | holds more than a half-gallon jar              | use quart jars
          """)
  void aSizeThatIsNotInTheTablesIsRefusedWithTheReason(String jar, String why, String instead)
      throws Exception {
    String told = read("jar", jar);
    assertTrue(told.startsWith("a jar of " + jar + " ") && told.contains(why), told);
    assertTrue(told.contains("; " + instead), told);
    assertTrue(told.contains("AIB 539 Guide 1"), told);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          lemon juice              | may be fresh
          jugo de limón            | may be fresh
          limón fresco             | no known strength
          jugo de lima embotellado | not lime
          bottled lime juice       | not lime
          vinagre                  | strength is not said
          vinegar 4%               | too weak
          """)
  void anAcidWhoseStrengthNobodyKnowsIsNotTaken(String acid, String why) throws Exception {
    String told = read("acid", acid);
    assertTrue(told.contains(why) && told.contains("; "), told);
  }

  /** A plan is not guessed at: a slip is asked about. */
  @ParameterizedTest
  @CsvSource({
    "jar,qvart,did you mean quart?",
    "pack,hat,did you mean hot?",
    "method,boilin-water,did you mean boiling-water?"
  })
  void aMistypedWordIsAskedAbout(String key, String value, String remedy) throws Exception {
    String told = read(key, value);
    assertTrue(told.startsWith("\"" + value + "\" is not known; " + remedy), told);
  }

  @ParameterizedTest
  @EnumSource(JarSize.class)
  void everySizeIsReadByItsOwnNameAndByItsContent(JarSize jar) throws Exception {
    assertEquals(jar.id(), read("jar", jar.id()));
    assertEquals(jar.id(), read("jar", jar.id().replace('-', ' ')));
    assertEquals(jar.id(), read("jar", jar.pints().times(16) + " oz"));
  }
}
