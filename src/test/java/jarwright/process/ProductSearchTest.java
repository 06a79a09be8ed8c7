package jarwright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Finding products by the cook's words; common practice, no source. */
class ProductSearchTest {
  private static List<String> found(String asked) {
    return new ProductSearch(Book.get().products()).find(asked).stream().map(Product::id).toList();
  }

  /** Among products of the given names, whose ids are numbers. */
  private static List<String> among(String asked, String... names) {
    List<Product> products = Stream.of(names).map(name -> named("0", name)).toList();
    return new ProductSearch(products).find(asked).stream().map(Product::name).toList();
  }

  private static Product named(String id, String name) {
    Product figs = Book.product("figs");
    return new Product(
        id, name, 2, "fruit", figs.headspace(), figs.acid(), figs.salt(), figs.produce(), "");
  }

  @ParameterizedTest
  @CsvSource({
    "peaches, peaches-halved-or-sliced",
    "green beans, beans-snap-italian",
    "tuna, tuna",
    "berries whole, berries-whole",
    "blueberry pies, blueberry-pie-filling",
    "crushed tomatoes, tomatoes-crushed",
    "tomatos crushed, tomatoes-crushed",
    "peches halved, peaches-halved-or-sliced",
    "Raspberry JAM, berry-jam-no-added-pectin",
  })
  void theCooksWordsFindIt(String asked, String first) {
    assertEquals(first, found(asked).get(0), () -> found(asked).toString());
  }

  @Test
  void whatNobodyCansIsNotFound() {
    assertEquals(List.of(), found("xyzzy"));
    assertEquals(List.of(), found(""));
    assertEquals(List.of(), found("and of the"));
  }

  /** Tomatoes are no mistyped potatoes, nor tomatillos. */
  @Test
  void aWordThatIsKnownMeansNoOther() {
    assertEquals(List.of("tomato"), among("tomatoes", "tomatillo", "potato", "tomato"));
    assertEquals(List.of("tomato"), among("tomatos", "tomatillo", "potato", "tomato"));
    assertEquals(List.of("tomatillo", "tomato"), among("tomat", "tomatillo", "tomato"));
    assertFalse(found("tomatoes").contains("potatoes-white"));
  }

  @Test
  void moreSharedWordsGoBeforeFewer() {
    assertEquals(List.of("plum jam"), among("plum jam", "plum", "plum jam", "jam"));
    assertEquals(List.of("plum", "pear"), among("plum pear", "plum", "pear"));
  }

  /** The word asked for early in the name, then the shorter name. */
  @Test
  void thePlainestNameGoesFirst() {
    assertEquals(
        List.of("plum", "plum jam", "sweet plum", "very sweet plum"),
        among("plum", "very sweet plum", "sweet plum", "plum jam", "plum"));
    assertEquals(
        List.of("plum jam", "plum jam sweet"), among("plum", "plum jam sweet", "plum jam"));
  }

  @Test
  void equallyPlainNamesStandByTheirIds() {
    List<Product> products = List.of(named("2", "plum rum"), named("1", "plum tart"));
    assertEquals(
        List.of("1", "2"),
        new ProductSearch(products).find("plum").stream().map(Product::id).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "plums, plum, true",
    "cherry, cherries, true",
    "pie, pies, true",
    "py, pies, false",
    "potatoes, potato, true",
    "ga, gas, false",
    "gas, gas, true",
    "plum, plumcot, true",
    "plu, plum, false",
    "plumcots, plum, true",
    "figgy, fig, false",
    "peech, peach, true",
    "plim, plum, false",
    "x, x ray, false",
    "ab, ab, true",
    "tuna, 'fish except tuna, smoked', false",
    "smoked, 'fish except tuna, smoked', true",
  })
  void wordsAreAlikeOrNot(String asked, String name, boolean alike) {
    assertEquals(alike ? List.of(name) : List.of(), among(asked, name));
  }
}
