package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.batch.Batch;
import jarwright.files.BuyingTables;
import jarwright.files.NameTables;
import jarwright.process.AcidKind;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.Product;
import jarwright.render.WordBundle;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What to gather for a day, in the household's words and units. */
class DayGatherTest {
  private static PlannedBatch crushed() {
    return PlannedBatch.of("tomatoes-crushed", Method.BOILING_WATER, Pack.HOT, JarSize.QUART)
        .acid(AcidKind.VINEGAR);
  }

  @Test
  void eachThingStandsOnceInWhatIsBought() throws Exception {
    assertEquals(
        List.of(
            "tomatoes | about 37-1/4 lb (16.9 kg) | Chile salsa II, Tomatoes, crushed (no added"
                + " liquid)",
            "chile peppers | about 2-3/4 lb (1.25 kg) | Chile salsa II",
            "onions | about 1-3/4 lb (715 g) | Chile salsa II",
            "vinegar (5%) | 1 quart (1 L) | Chile salsa II, Tomatoes, crushed (no added liquid)",
            "canning or pickling salt | 1 Tbsp (15 mL) | Chile salsa II",
            "black pepper | 1/2 tsp (2.5 mL) | Chile salsa II",
            "Jars | 9 pints | ",
            "Jars | 12 quarts | ",
            "New lids | 9 for pints | ",
            "New lids | 12 for quarts | "),
        items(
            "en",
            PlannedBatch.of("chile-salsa-ii", Method.BOILING_WATER, Pack.HOT, JarSize.PINT).jars(9),
            crushed().produce("32-3/4 lb").jars(1)));
  }

  @Test
  void oneFoodNeedsNoNameBesideWhatItTakes() throws Exception {
    assertEquals(
        List.of(
            "chicken or turkey carcasses | enough for 7 quarts | ",
            "Jars | 7 quarts | ",
            "New lids | 7 for quarts | "),
        items(
            "en",
            PlannedBatch.of("stock-chicken-or-turkey", Method.DIAL_GAUGE, Pack.HOT, JarSize.QUART)
                .jars(7)));
  }

  @Test
  void spanishHasTheSameThings() throws Exception {
    assertEquals(
        List.of(
            "jitomates (tomates) | cerca de 22 lb (10 kg) | ",
            "vinagre (5 %) | 1 pinta (500 mL) | "),
        items("es", crushed().jars(7)).subList(0, 2));
  }

  private static List<String> items(String language, PlannedBatch... planned) throws Exception {
    List<Batch> batches = Stream.of(planned).map(PlannedBatch::batch).toList();
    Map<String, String> names = NameTables.ingredients(language);
    return new DayGather(
            batches,
            BuyingTables.read(),
            WordBundle.load(language),
            Product::name,
            english -> names.getOrDefault(english, english))
        .items().stream().map(i -> i.what() + " | " + i.amount() + " | " + i.note()).toList();
  }
}
