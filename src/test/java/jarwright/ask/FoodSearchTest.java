package jarwright.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.NameTables;
import jarwright.files.ProcessTables;
import jarwright.files.SayingRows;
import jarwright.files.UntestedRows;
import jarwright.page.Language;
import jarwright.problem.Refused;
import jarwright.process.Product;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people say, and what is understood; common usage, no source. */
class FoodSearchTest {
  private static FoodSearch search;
  private static List<Product> products;
  private static List<Untested> untested;

  @BeforeAll
  static void read() throws Exception {
    ProcessTables tables = ProcessTables.ofProgram();
    search = SayingRows.search(tables);
    products = tables.products();
    untested = UntestedRows.read();
  }

  /** Product first found, {@code !refusal}, {@code ?words not understood}, or {@code -}. */
  private static String answer(Meaning food) {
    if (food instanceof Meaning.Known known) {
      return known.products().get(0).id();
    }
    if (food instanceof Meaning.Refused refused) {
      return "!" + refused.untested().key();
    }
    return food instanceof Meaning.Unknown unknown ? "?" + String.join(" ", unknown.words()) : "-";
  }

  private static String said(Said said) {
    List<String> parts = new ArrayList<>();
    said.pack().ifPresent(p -> parts.add(p.id()));
    said.jar().ifPresent(j -> parts.add(j.id()));
    said.untestedJar().ifPresent(j -> parts.add("untested " + j.key()));
    said.methods().forEach(m -> parts.add(m.id()));
    parts.addAll(said.times());
    said.altitude().ifPresent(parts::add);
    return String.join(" ", parts);
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/jarwright/ask/asked.csv",
      useHeadersInDisplayName = true,
      nullValues = {})
  void whatIsAskedIsUnderstood(String asked, String answer, String language, String said) {
    Heard heard = search.hear(asked);
    assertEquals(answer, answer(heard.food()), asked);
    assertEquals(said == null ? "" : said, said(heard.said()), asked);
    assertEquals(language, heard.language(), asked);
  }

  @Test
  void everyProductIsFoundByItsOwnNameInEveryLanguage() throws Exception {
    for (String language : Language.tags()) {
      Map<String, String> names = NameTables.products(language);
      for (Product product : products) {
        String name = names.getOrDefault(product.id(), product.name());
        assertEquals(product.id(), answer(search.hear(name).food()), name);
        assertEquals(product.id(), answer(search.hear(product.id()).food()));
        assertTrue(search.hear(product.id()).said().isNothing(), product.id());
      }
    }
  }

  @Test
  void everyRefusalIsFoundByEachOfItsNames() {
    for (Untested one : untested) {
      for (Untested.Told told : one.told().values()) {
        for (String name : told.names()) {
          Heard heard = search.hear(name);
          String found =
              one.kind() == Untested.Kind.JAR
                  ? heard.said().untestedJar().map(Untested::key).orElse("nothing")
                  : refusal(heard.food());
          assertEquals(one.key(), found, name);
        }
      }
    }
  }

  /** The refusal, or the doubt that stands beside a product of the same name. */
  private static String refusal(Meaning food) {
    return food instanceof Meaning.Known known
        ? known.doubt().map(Untested::key).orElse(known.products().get(0).id())
        : answer(food).substring(1);
  }

  /** A table may hold what a later source doubts; nothing else is both tested and refused. */
  @Test
  void onlyMangoSauceIsBothTestedAndDoubted() {
    List<String> both = new ArrayList<>();
    for (Untested one : untested) {
      for (String name : one.told("en").names()) {
        if (search.hear(name).food() instanceof Meaning.Known) {
          both.add(name);
        }
      }
    }
    both.removeIf(name -> untested.stream().anyMatch(u -> isJar(u, name)));
    assertEquals(List.of("mango sauce"), both);
  }

  private static boolean isJar(Untested one, String name) {
    return one.kind() == Untested.Kind.JAR && one.isCalled(name);
  }

  @Test
  void everyHouseholdNameFindsWhatItStandsFor() throws Exception {
    for (Saying saying : foods()) {
      Heard heard = search.hear(saying.words());
      assertTrue(saying.means().contains(answer(heard.food())), saying.words());
      Meaning.Known known = (Meaning.Known) heard.food();
      if (saying.means().size() > 1) {
        assertTrue(known.products().size() > 1, saying.words());
        assertFalse(known.one().isPresent(), saying.words());
      }
    }
  }

  private static List<Saying> foods() throws IOException, Refused {
    return SayingRows.read(products).stream().filter(s -> s.sense() == Saying.Sense.FOOD).toList();
  }

  /** Whatever stands beside a refused food, no other food is shown first. */
  @ParameterizedTest
  @ValueSource(strings = {"raw %s quart", "%s water bath", "how to can %s", "hot %s pints"})
  void aRefusedFoodIsRefusedInAnySetting(String asked) {
    for (Untested one : untested) {
      for (String name : one.told("en").names()) {
        boolean jarOrMethod = !search.hear(name).said().isNothing();
        if (one.kind() == Untested.Kind.FOOD && !jarOrMethod) {
          Meaning food = search.hear(asked.formatted(name)).food();
          boolean shown = food instanceof Meaning.Known known && known.doubt().isEmpty();
          assertFalse(shown, asked.formatted(name) + ": " + answer(food));
        }
      }
    }
  }

  /** A product with a word too many is offered by name or refused, never shown. */
  @Test
  void noProductIsShownForAWordThatItDoesNotHave() {
    for (Product product : products) {
      String asked = product.id() + " xyzzy";
      Meaning food = search.hear(asked).food();
      assertFalse(food instanceof Meaning.Known, asked + ": " + answer(food));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "green beans, beans-snap-italian",
    "tomato sauce, tomato-sauce-standard",
    "mango sauce, mango-sauce",
    "ejotes, beans-snap-italian",
    "durazno, peaches-halved-or-sliced",
  })
  void aNameOfOneProductAloneMeansThatOne(String asked, String id) {
    Meaning.Known known = (Meaning.Known) search.hear(asked).food();
    assertEquals(id, known.one().orElseThrow().id());
    assertEquals(List.of(id), known.products().stream().map(Product::id).toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"strawberry jam", "dill pickles", "salsa", "chicken", "pepinillos"})
  void aNameOfSeveralMeansNoneForSure(String asked) {
    assertTrue(((Meaning.Known) search.hear(asked).food()).one().isEmpty());
  }

  @Test
  void aMistypedWordIsToldAndNeverTakenForSure() {
    Meaning.Known known = (Meaning.Known) search.hear("apple juyce").food();
    assertEquals("apple-juice", known.products().get(0).id());
    assertTrue(known.one().isEmpty());
    assertEquals(Map.of("juyce", "juice"), known.readAs());
  }

  /** A mistyped jar is no jar: nobody would be told what it was read as. */
  @Test
  void aMistypedWordBesideNoFoodIsNotTaken() {
    assertEquals("?qvart", answer(search.hear("qvart").food()));
    assertTrue(search.hear("qvart").said().isNothing());
  }

  @Test
  void whatIsNotUnderstoodIsNamedWithWhatItIsNearTo() {
    Meaning.Unknown unknown = (Meaning.Unknown) search.hear("pickled beats").food();
    assertEquals(List.of("beats"), unknown.words());
    assertTrue(unknown.guesses().contains("beets"), unknown.guesses().toString());
    assertFalse(unknown.near().isEmpty());
  }

  @Test
  void whatElseWasSaidIsOfferedBesideTheRefusal() {
    Meaning.Refused refused = (Meaning.Refused) search.hear("oven peaches").food();
    assertEquals("oven", refused.untested().key());
    assertEquals("peaches-halved-or-sliced", refused.near().get(0).id());
  }

  @ParameterizedTest
  @CsvSource({
    "1-1/2 pint peaches, 1-1/2-pint",
    "peaches 1½ pint, 1-1/2-pint",
    "9 pints of salsa, pint",
    "peaches pt, pint",
    "duraznos en pintas, pint",
    "peaches 32 oz, quart",
  })
  void jarsAreUnderstood(String asked, String jar) {
    assertEquals(jar, search.hear(asked).said().jar().orElseThrow().id());
  }
}
