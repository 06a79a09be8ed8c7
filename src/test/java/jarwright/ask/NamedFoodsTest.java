package jarwright.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.ProcessTables;
import jarwright.files.SayingRows;
import jarwright.process.Product;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A household's own names for foods: what is not understood for sure is not understood. */
class NamedFoodsTest {
  private static List<String> meant(String name) throws Exception {
    NamedFoods foods = new NamedFoods(SayingRows.search(ProcessTables.ofProgram()));
    return foods.meant(name).stream().map(Product::id).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "Peaches, peaches-halved-or-sliced",
    "Plum jam, jams-and-jellies-with-added-pectin",
    "Green beans, beans-snap-italian",
    "Sauerkraut, sauerkraut",
    "crushed tomatoes, tomatoes-crushed",
    "apple pie filling, apple-pie-filling",
    "asparagus, asparagus",
  })
  void whatCanMeanOneThingMeansIt(String name, String product) throws Exception {
    assertEquals(List.of(product), meant(name));
  }

  /** The tables know these only made acid, which the name does not say. */
  @ParameterizedTest
  @ValueSource(
      strings = {"onions", "cayenne pepper", "horseradish", "jicama", "okra jam", "cebollas"})
  void whatIsAcidByItsFormulaAloneIsNotMeantByThePlainFood(String name) throws Exception {
    List<String> meant = meant(name);
    assertTrue(meant.isEmpty() || meant.contains("okra") || meant.contains("peppers"), name);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "of the", "banana", "plum surprise", "42", "peches"})
  void oneWordThatIsNotUnderstoodIsEnoughToKnowNothing(String name) throws Exception {
    assertEquals(List.of(), meant(name));
  }

  @Test
  void aNameThatCanMeanMoreMeansAllOfIt() throws Exception {
    assertFalse(meant("salsa").size() < 10);
    assertFalse(meant("beans").contains("pickled-dilled-beans"));
    assertTrue(meant("beans").contains("beans-snap-italian"));
  }
}
