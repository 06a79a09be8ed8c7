package jarwright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.UntestedRows;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people ask for that has no tested process, in the words they use; sources in its rows. */
class UntestedSearchTest {
  private static UntestedSearch search;

  @BeforeAll
  static void read() throws Exception {
    search = new UntestedSearch(UntestedRows.read(), Book.get().products());
  }

  private static String found(String asked) {
    return search.find(asked).map(Untested::what).orElse("nothing");
  }

  @ParameterizedTest
  @CsvSource({
    "pumpkin puree, pumpkin or winter squash",
    "winter squash puree, pumpkin or winter squash",
    "thickened chicken soup, thickened or creamed soups",
    "half-gallon peaches, half-gallon jars",
    "white peaches in syrup, white-flesh peaches",
    "Elderberry Jam, elderberries",
    "mango puree, ripe mango",
    "cream, nothing",
    "heavy cream, 'milk, cream'",
    "dairy, 'milk, cream'",
    "chicken noodle soup, 'noodles, pasta'",
    "bread in jars, bread or cake",
    "inversion, inversion",
    "oven canned plums, oven canning",
    "boiling water green beans, low-acid food in a boiling-water canner",
    "pickles with rice vinegar, 'homemade vinegar'",
  })
  void aWordOfWhyIsFoundHoweverItIsAsked(String asked, String what) {
    assertTrue(found(asked).startsWith(what), () -> asked + ": " + found(asked));
  }

  /** The longest name that is asked for tells most of what is meant. */
  @Test
  void theLongestNameGoesFirst() {
    assertTrue(found("rice vinegar from the shop").startsWith("homemade vinegar"));
    assertTrue(found("rice from the shop").startsWith("noodles"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bread and butter pickles",
        "creamed corn style",
        "apple butter",
        "pickled cauliflower",
        "mango chutney",
        "tuna",
        "peaches"
      })
  void whatAProductIsCalledIsNotRefused(String asked) {
    assertEquals("nothing", found(asked));
  }

  /** Every product's own name and id is free of refusals, save where a later source warns. */
  @Test
  void noProductIsRefusedByItsOwnName() {
    List<String> warned =
        Book.get().products().stream()
            .filter(p -> search.find(p.id().replace('-', ' ')).isPresent())
            .map(Product::id)
            .toList();
    assertEquals(List.of("mango-sauce"), warned);
    assertTrue(search.isProduct("Mango  sauce") && search.isProduct("mango-sauce"));
    assertFalse(search.isProduct("mango"));
  }

  @Test
  void theRemedyNamesWhatIsTestedAndWhomToAsk() {
    assertEquals(
        "freeze; use yellow-flesh fruit; tested: peaches-halved-or-sliced,"
            + " nectarines-halved-or-sliced; ask your local extension service",
        search.called("white peaches").orElseThrow().remedy());
    assertEquals(
        "freeze; ask your local extension service",
        search.called("broccoli").orElseThrow().remedy());
    assertEquals(
        "use a boiling-water canner; ask your local extension service for its steam canner rules",
        search.called("steam canner").orElseThrow().remedy());
  }
}
