package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.process.Book;
import jarwright.process.Product;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Looking processes up, in a kitchen at 420 m. */
class ProcessTest {
  private static final List<String> COLUMNS =
      List.of(
          "product_id",
          "method",
          "pack",
          "jar",
          "alt_min_ft",
          "alt_max_ft",
          "outcome",
          "minutes",
          "psi",
          "source");

  @TempDir Path folder;

  private Household house;

  @BeforeEach
  void moveIn() throws Exception {
    house = new Household(folder);
  }

  private int process(String words) throws Exception {
    return house.run(("process " + words).split(" "));
  }

  /** Every row of the table, in its order and spelling, with just these columns. */
  @Test
  void allRowsAreListedAsTheTableHasThem() throws Exception {
    assertEquals(0, process("--all --format csv"), house.told());
    CSVFormat form = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream in =
            ProcessTest.class.getResourceAsStream("/jarwright/process/process-times.csv");
        CSVParser listed = CSVParser.parse(house.said(), form);
        CSVParser printed =
            CSVParser.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8), form)) {
      assertEquals(COLUMNS, listed.getHeaderNames());
      List<CSVRecord> own = listed.getRecords();
      List<CSVRecord> table = printed.getRecords();
      assertEquals(1_590, own.size());
      assertEquals(table.size(), own.size());
      for (int i = 0; i < own.size(); i++) {
        CSVRecord row = table.get(i);
        assertEquals(COLUMNS.stream().map(row::get).toList(), own.get(i).toList());
      }
    }
  }

  /** AIB 539 (2015) Guide 2, peaches, raw pack, quarts: 30, 35, 40 and 45 minutes. */
  @Test
  void theHouseholdsBandIsMarked() throws Exception {
    assertEquals(0, process("--product peaches-halved-or-sliced --pack raw --jar quart"));
    String text = house.said();
    assertTrue(text.contains("0–1,000         1,001–3,000 *   3,001–6,000     6,001+"), text);
    assertTrue(text.contains("30 min          35 min *        40 min          45 min"), text);
    assertTrue(text.contains("source: AIB 539 (2015) p. 2-"), text);
    assertEquals(0, process("--product peaches-halved-or-sliced --jar quart --format json"));
    String own =
        house
            .said()
            .lines()
            .filter(l -> l.matches(".*\"(alt_min_ft|own_band)\".*"))
            .map(l -> l.replaceAll("[\", ]", ""))
            .collect(Collectors.joining(" "));
    assertTrue(own.contains("alt_min_ft:1001 own_band:yes alt_min_ft:3001 "), own);
    assertFalse(own.contains("alt_min_ft:3001 own_band"), own);
  }

  /** AIB 539 (2015) Guide 1, p. 1-22: half-pints as pints, where they are not listed. */
  @Test
  void aServedJarIsShownWithTheTimeThatServesIt() throws Exception {
    assertEquals(0, process("--product peaches-halved-or-sliced --pack raw --jar half-pint"));
    String text = house.said();
    assertTrue(text.contains("boiling-water, raw, pint"), text);
    assertTrue(text.contains("half-pint: no time is printed; the pint time is used"), text);
  }

  @Test
  void aboveEightThousandFeetTheTableIsShownWithACaution() throws Exception {
    assertEquals(0, process("peaches raw quart --altitude 8,001ft"));
    assertTrue(house.said().contains("45 min *"), house.said());
    assertTrue(house.said().contains("one state service boils longer"), house.said());
    assertEquals(0, process("snap beans quart --altitude 8,001ft"));
    assertTrue(house.said().contains("no dial-gauge pressure is tested"), house.said());
    assertTrue(house.said().contains("pressure for a weighted gauge, but none for a"));
    assertFalse(house.said().contains("boils longer"), house.said());
    assertEquals(0, process("peaches raw quart --altitude 8,000ft"));
    assertFalse(house.said().contains("boils longer"), house.said());
  }

  /** A point is read as thousands by half of the world, and the lower band has less pressure. */
  @ParameterizedTest
  @CsvSource({"1.500m,2 m,1500 m", "2.4m,3 m,2400 m", "1.000ft,1 ft,1000 ft"})
  void anAltitudeThatCanBeReadTwiceIsAskedFor(String written, String low, String high)
      throws Exception {
    assertEquals(1, process("snap beans quart --altitude " + written));
    assertEquals("", house.said());
    assertEquals("process: --altitude: \"" + written + "\"", house.told().split(" can mean")[0]);
    assertTrue(house.told().contains("write " + low + " or " + high + ", whichever is right"));
    assertEquals(0, process("snap beans quart --altitude " + high.replace(" ", "")));
    assertEquals(0, process("snap beans quart --altitude " + low.replace(" ", "")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          tuna quart               | longer time for a larger jar cannot   | Use pints or half-pints
          half-gallon peaches      | half-gallon jars of anything but      | Use quart jars.
          24 oz spaghetti sauce    | is not made for canning               | Ask for 1-1/2-pint
          500 ml peaches           | more than a pint (473 mL)             | Use pint jars.
          peaches 1 liter          | more than a quart (946 mL)            | Use quart jars.
          applesauce 12 oz         | some fish alone                       | Use pint jars
          jam in 4 oz jars         | prints no time for them               | Use half-pint jars
          green beans boiling      | Boiling water is not hot enough       | pressure canner, raw or hot pack: pints, quarts
          green beans 3 hours      | however long it boils                 | pressure canner, raw or hot pack: pints, quarts
          asparagus boiling water  | Boiling water is not hot enough       | --product pickled-asparagus
          water bath chicken       | Boiling water is not hot enough       | pressure canner, raw or hot pack: pints, quarts
          pumpkin puree            | may not reach the center              | Freeze the puree.
          oven canned tomatoes     | tested process for oven canning       | a boiling-water canner or a pressure canner
          apple juice weighted     | no such jar, pack or method           | boiling-water canner, hot pack: pints, quarts, half-gallons
          xyzzy                    | not known here: xyzzy                 | freeze or refrigerate
          stewed tomatoes          | No product here has all of these      | --product tomatoes-whole-in-water
          beats                    | not known here: beats                 | beets
          """)
  void aRefusalSaysWhyAndWhatIsTested(String asked, String why, String instead) throws Exception {
    for (String format : List.of("text", "csv", "json")) {
      assertEquals(1, process(asked + " --format " + format));
      assertEquals("", house.said());
      String told = house.told().replaceAll("\\s+", " ");
      assertTrue(told.contains(why) && told.contains(instead), told);
      assertTrue(told.contains("Ask: your local extension service"), told);
    }
  }

  /** Tables that hold, and the later source that warns of them. */
  @Test
  void aProductThatALaterSourceDoubtsIsShownWithItsCaution() throws Exception {
    assertEquals(0, process("mango sauce"));
    assertTrue(house.said().contains("Caution: "), house.said());
    assertTrue(house.said().contains("one state service says no mango sauce"));
  }

  /** The words' own language, else the one that is asked for, else the kitchen's. */
  @Test
  void theAnswerIsInTheLanguageOfTheWords() throws Exception {
    assertEquals(0, process("durazno crudo cuarto"), house.told());
    assertTrue(house.said().startsWith("Duraznos"), house.said());
    assertTrue(house.said().contains("30 min"), house.said());
    assertEquals(0, process("durazno --language en"));
    assertTrue(house.said().startsWith("Peaches"), house.said());
    assertEquals(1, process("albahaca en aceite"));
    assertTrue(house.told().contains("Haga esto: Guarde el ajo en aceite"), house.told());
    assertTrue(house.told().contains("Pregunte: a su servicio de extensión"), house.told());
    assertEquals(1, process("basil in oil --language es"));
    assertTrue(house.told().contains("Haga esto: Guarde el ajo en aceite"), house.told());
    house.write("pantry/kitchen.yaml", "altitude: 420 m\nlanguage: es\n");
    assertEquals(1, process("bananas"));
    assertTrue(house.told().contains("Haga esto: Congélelos."), house.told());
  }

  @ParameterizedTest
  @CsvSource({"en", "es"})
  void everyProductIsPrintedInEveryLanguage(String language) throws Exception {
    for (Product product : Book.get().products()) {
      assertEquals(0, process("--product " + product.id() + " --language " + language));
      assertTrue(house.said().contains("(" + product.id() + ")"), house.said());
    }
  }

  @Test
  void aTimeThatWasSaidIsNotUsedAndAMistypedWordIsTold() throws Exception {
    assertEquals(0, process("corn 20 minutes"));
    assertTrue(house.said().startsWith("You said 20 minutes. Only the times below"), house.said());
    assertTrue(house.said().contains("55 min"), house.said());
    assertEquals(0, process("peches raw quart"));
    assertTrue(house.said().startsWith("\"peches\" was read as \"peaches\".\nPeaches"));
  }

  /** AIB 539 (2015) p. 2-7: apple juice in half-gallons 10, 15 and 20 minutes. */
  @Test
  void aJarThatFewProductsHaveIsShownForThose() throws Exception {
    assertEquals(0, process("half-gallon apple juice"), house.told());
    assertTrue(house.said().contains("10 min"), house.said());
  }

  /** A point before three digits may part thousands, in the words as in the option. */
  @Test
  void anAltitudeInTheWordsIsReadAsStrictly() throws Exception {
    assertEquals(0, process("peaches raw quart 5,400 ft"), house.told());
    assertTrue(house.said().contains("40 min *"), house.said());
    assertEquals(1, process("peaches raw quart 1.500 m"));
    assertEquals("", house.said());
    assertTrue(house.told().contains("1.500 m"), house.told());
  }

  @Test
  void aFoodThatIsNotProcessedSaysSo() throws Exception {
    assertEquals(0, process("horseradish"));
    assertTrue(house.said().contains("do not: this food is not processed"), house.said());
    assertEquals(0, process("tomato juice weighted"));
    assertTrue(house.said().contains("do not: the guide gives no process"), house.said());
  }

  @Test
  void whatANameLeavesOutIsNotFoundByIt() throws Exception {
    assertEquals(0, process("tuna"));
    assertFalse(house.said().contains("fish-in-quart-jars"), house.said());
  }
}
