package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.problem.Refused;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A table that somebody damaged stops the program, and the message says where. */
class DoctoredTablesTest {
  private static final Map<String, String> SOUND = new TreeMap<>();

  @BeforeAll
  static void readSound() throws Exception {
    for (String file :
        List.of(
            ProcessTables.TIMES,
            ProcessTables.PRODUCTS,
            ProcessTables.RECIPES,
            ProcessTables.SYRUPS)) {
      SOUND.put(file, ProcessTables.resource(file));
    }
  }

  /** Each line: file, what stands there, what is put instead, part of the message. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      value = {
        // the form of a row
        "process-times.csv~alt_min_ft~alt_from_ft~the columns are",
        "process-times.csv~figs,boiling-water,hot,pint,0,~figs,boiling-water,hot,pint,0,0,~13 cells",
        "process-times.csv~figs,boiling-water,hot,pint,0~figs,boiling,hot,pint,0~method \"boiling\" is none of",
        "process-times.csv~figs,boiling-water,hot,pint,0~figs,boiling-water,warm,pint,0~pack \"warm\" is none of",
        "process-times.csv~figs,boiling-water,hot,pint,0~figs,boiling-water,hot,pints,0~jar \"pints\" is none of",
        "process-times.csv~0,1000,process,45~0,1000,processed,45~outcome \"processed\" is neither",
        "process-times.csv~0,1000,process,45,~0,1000,process,,~minutes \"\" is no whole number",
        "process-times.csv~0,1000,process,45,~0,1000,process,045,~minutes \"045\" is no whole number",
        "process-times.csv~0,1000,process,45,~0,1000,process,45,10~psi belongs to pressure canners",
        "process-times.csv~process,20,6,~process,20,,~psi belongs to pressure canners",
        "process-times.csv~1001,,not-recommended,,~1001,,not-recommended,10,~neither minutes nor psi",
        "process-times.csv~AIB 539 (2015) p. 2-6~AIB 539 p. 2-6~is not like",
        "process-times.csv~AIB 539 (2015) p. 2-6,yes~AIB 539 (2015) p. 2-6,maybe~second_source is yes or no",
        // what rows are to each other
        "process-times.csv~figs,boiling-water,hot,pint,0,1000~figs,boiling-water,hot,pint,1,1000~starts above 0 ft",
        "process-times.csv~figs,boiling-water,hot,pint,1001~figs,boiling-water,hot,pint,1002~leaves a gap",
        "process-times.csv~figs,boiling-water,hot,pint,1001~figs,boiling-water,hot,pint,1000~leaves a gap to the one before, or overlaps it",
        "process-times.csv~figs,boiling-water,hot,pint,6001,,~figs,boiling-water,hot,pint,6001,9000,~the highest band ends where",
        "process-times.csv~tomato-juice,dial-gauge,hot,pint,6001,8000~tomato-juice,dial-gauge,hot,pint,6001,~the highest band ends where",
        "process-times.csv~3-6,yes,option 1 of 2~3-6,yes,option 2 of 2~runs of bands",
        "process-times.csv~3-6,yes,option 1 of 2~3-6,yes,~runs of bands",
        "process-times.csv~sterile-jars~pints only~under 10 min without its note",
        "process-times.csv~acid in every jar~sterile-jars~a note without its reason",
        "process-times.csv~figs,boiling-water,hot,pint,1001,3000,process,50~figs,boiling-water,hot,pint,1001,3000,process,44~asks for less than the band below",
        "process-times.csv~tomato-juice,dial-gauge,hot,pint,2001,4000,process,20,7~tomato-juice,dial-gauge,hot,pint,2001,4000,process,20,5~asks for less than the band below",
        "process-times.csv~tomatoes-whole-in-water,boiling-water,raw-or-hot,quart,0~tomatoes-whole-in-water,boiling-water,raw,pint,0~one row for both packs beside",
        "process-times.csv~figs,boiling-water~fig,boiling-water~that products.csv does not have",
        // products
        "products.csv~figs,Figs~fig,Figs~that process-times.csv does not have",
        "products.csv~figs,Figs~apple-butter,Figs~the same product twice",
        "products.csv~figs,Figs~Figs,Figs~not small-words-and-hyphens",
        "products.csv~figs,Figs,2~figs,Figs,8~guides 2 to 7",
        "products.csv~figs,Figs,2,fruit,1/2~figs,Figs,2,fruit,half~is not a number",
        "products.csv~figs,Figs,2,fruit,1/2~figs,Figs,2,fruit,0~is not like 1/2",
        "products.csv~solids:1;liquid:1/2~solids:1;juice:1/2~measures to \"juice\"",
        "products.csv~solids:1;liquid:1/2~solids:1;1/2~is not like 1/2",
        "products.csv~1 Tbsp bottled lemon juice | 1/4 tsp citric acid~1 Tbsp lime juice~acid \"1 Tbsp lime juice\"",
        "products.csv~1 Tbsp bottled lemon juice | 1/4 tsp citric acid~1 tsp citric acid | 1/4 tsp citric acid~doses one acid twice",
        "products.csv~,none,none,none,16,10,~,none,none,a pinch,16,10,~salt_per_quart \"a pinch\"",
        "products.csv~17-19~19-17~upside down",
        "products.csv~17-19~about 18~is not like 17.5",
        "products.csv~48,16,19,2.75~48,19,16,2.75~the yield of a container is upside down",
        "products.csv~48,16,19,2.75~48,,19,2.75~is not a number",
        // formulas and syrups
        "recipes.csv~apple-butter,about 8 to 9 pints~apple-butter,plenty~yield_text \"plenty\"",
        "recipes.csv~apple-butter,about 8 to 9 pints~apple-spread,about 8 to 9 pints~that products.csv does not have",
        "recipes.csv~apples,8,lb~apples,8 or so,lb~quantity \"8 or so\"",
        "recipes.csv~apples,8,lb~apples,0,lb~is nothing",
        "recipes.csv~apples,8,lb~apples,8,stone~unit \"stone\" is none of",
        "recipes.csv~apples,8,lb~,8,lb~an amount of nothing",
        "syrups.csv~light,20,9-pint~light,20,9-jar~load \"9-jar\"",
        "syrups.csv~light,20,7-quart~light,20,9-pint~the same load twice",
        "syrups.csv~very-light,10~faint,10~syrup \"faint\" is none of",
      })
  void isFound(String file, String from, String to, String message) throws Exception {
    String sound = SOUND.get(file);
    int at = sound.indexOf(from);
    assertTrue(at >= 0, "nothing to doctor: " + from);
    Refused refused =
        refused(file, sound.substring(0, at) + to + sound.substring(at + from.length()));
    long line = 1 + sound.substring(0, at).chars().filter(c -> c == '\n').count();
    String told = refused.getMessage();
    assertTrue(told.contains("the program's own table is faulty: "), told);
    assertTrue(told.contains(message), told);
    assertTrue(told.contains(file + ":" + line + ": ") || told.contains("does not have"), told);
  }

  @Test
  void aRowTwiceIsFound() throws Exception {
    String row = "figs,boiling-water,hot,pint,1001,";
    String sound = SOUND.get(ProcessTables.TIMES);
    int from = sound.indexOf(row);
    int to = sound.indexOf('\n', from) + 1;
    String doubled = sound.substring(0, to) + sound.substring(from);
    assertTrue(refused(ProcessTables.TIMES, doubled).getMessage().contains("overlaps it"));
  }

  @Test
  void aFormulaThatIsGoneIsFound() throws Exception {
    String without = SOUND.get(ProcessTables.RECIPES).replaceAll("(?m)^mango-sauce,.*\n", "");
    assertEquals(
        "its formula is not in recipes.csv",
        refused(ProcessTables.RECIPES, without).problems().get(0).what().split(": ")[1]);
  }

  @Test
  void anEmptyTableIsFound() throws Exception {
    assertTrue(refused(ProcessTables.SYRUPS, "").getMessage().contains("0 lines make 0 rows"));
  }

  @Test
  void anOpenQuoteIsFound() throws Exception {
    String open = SOUND.get(ProcessTables.TIMES).replaceFirst("apple-juice,", "\"apple-juice,");
    assertTrue(refused(ProcessTables.TIMES, open).getMessage().contains("faulty"));
  }

  private static Refused refused(String file, String text) {
    Map<String, String> texts = new TreeMap<>(SOUND);
    texts.put(file, text);
    return assertThrows(Refused.class, () -> ProcessTables.of(texts).book());
  }
}
