package jarwright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the program answers, line by line against what publications print. AIB 539 is the USDA
 * Complete Guide to Home Canning, revised 2015; the others were written apart from this project's
 * tables.
 */
class PublishedProcessesTest {
  /** Minutes in boiling water, one figure for each band with the highest foot that it holds for. */
  @ParameterizedTest(name = "{0}, {1} pack, {2}: {3}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          tomatoes-whole-in-water      | raw | pint        | 1000: 40, 3000: 45, 6000: 50, above: 55 | AIB 539 p. 3-10
          tomatoes-whole-in-water      | raw | quart       | 1000: 45, 3000: 50, 6000: 55, above: 60 | AIB 539 p. 3-10
          tomatoes-whole-in-water      | hot | pint        | 1000: 40, 3000: 45, 6000: 50, above: 55 | AIB 539 p. 3-10
          tomatoes-whole-in-water      | hot | quart       | 1000: 45, 3000: 50, 6000: 55, above: 60 | AIB 539 p. 3-10
          tomatoes-whole-raw-no-liquid | raw | pint        | 1000: 85, 3000: 90, 6000: 95, above: 100 | AIB 539 p. 3-12
          tomatoes-whole-raw-no-liquid | raw | quart       | 1000: 85, 3000: 90, 6000: 95, above: 100 | AIB 539 p. 3-12
          tomato-juice                 | hot | pint        | 1000: 35, 3000: 40, 6000: 45, above: 50 | AIB 539 p. 3-6
          tomato-juice                 | hot | quart       | 1000: 40, 3000: 45, 6000: 50, above: 55 | AIB 539 p. 3-6
          grapes-whole                 | hot | pint        | 1000: 10, 3000: 15, 6000: 15, above: 20 | University of Nebraska-Lincoln, Grapes and Grape Juice
          grapes-whole                 | hot | quart       | 1000: 10, 3000: 15, 6000: 15, above: 20 | University of Nebraska-Lincoln, Grapes and Grape Juice
          grapes-whole                 | raw | pint        | 1000: 15, 3000: 20, 6000: 20, above: 25 | University of Nebraska-Lincoln, Grapes and Grape Juice
          grapes-whole                 | raw | quart       | 1000: 20, 3000: 25, 6000: 30, above: 35 | University of Nebraska-Lincoln, Grapes and Grape Juice
          plums-halved-or-whole        | raw | pint        | 1000: 20, 3000: 25, 6000: 30, above: 35 | AIB 539 Guide 2, plums
          plums-halved-or-whole        | hot | quart       | 1000: 25, 3000: 30, 6000: 35, above: 40 | AIB 539 Guide 2, plums
          peaches-halved-or-sliced     | hot | pint        | 1000: 20, 3000: 25, 6000: 30, above: 35 | AIB 539 Guide 2, peaches
          peaches-halved-or-sliced     | raw | quart       | 1000: 30, 3000: 35, 6000: 40, above: 45 | AIB 539 Guide 2, peaches
          applesauce                   | hot | pint        | 1000: 15, 3000: 20, 6000: 20, above: 25 | AIB 539 p. 2-7
          applesauce                   | hot | quart       | 1000: 20, 3000: 25, 6000: 30, above: 35 | AIB 539 p. 2-7
          apples-sliced                | hot | quart       | 1000: 20, 3000: 25, 6000: 30, above: 35 | NCHFP, Apples - Sliced (2018)
          apple-juice                  | hot | quart       | 1000: 5, 6000: 10, above: 15            | AIB 539 p. 2-7
          apple-juice                  | hot | half-gallon | 1000: 10, 6000: 15, above: 20           | AIB 539 p. 2-7
          sauerkraut                   | hot | pint        | 1000: 10, 3000: 15, 6000: 15, above: 20 | AIB 539 Guide 6, sauerkraut
          sauerkraut                   | hot | quart       | 1000: 15, 3000: 20, 6000: 20, above: 25 | AIB 539 Guide 6, sauerkraut
          sauerkraut                   | raw | pint        | 1000: 20, 3000: 25, 6000: 30, above: 35 | AIB 539 Guide 6, sauerkraut
          sauerkraut                   | raw | quart       | 1000: 25, 3000: 30, 6000: 35, above: 40 | AIB 539 Guide 6, sauerkraut
          dill-pickles-fermented       | raw | pint        | 1000: 10, 6000: 15, above: 20           | AIB 539 Guide 6, dill pickles
          dill-pickles-fermented       | raw | quart       | 1000: 15, 6000: 20, above: 25           | AIB 539 Guide 6, dill pickles
          pickled-beets                | hot | quart       | 1000: 30, 3000: 35, 6000: 40, above: 45 | AIB 539 Guide 6, pickled beets
          grape-jelly-no-added-pectin  | hot | half-pint   | 1000: 5, 6000: 10, above: 15            | University of Illinois Extension, Grape Jelly
          berry-jam-no-added-pectin    | hot | pint        | 1000: 5, 6000: 10, above: 15            | University of Georgia, So Easy to Preserve (2006)
          """)
  void boilingWater(String product, String pack, String jar, String minutes, String source) {
    assertEquals(minutes, bands(product, "boiling-water", pack, jar), source);
  }

  /** Minutes at psi; a table may offer more than one pair. */
  @ParameterizedTest(name = "{0}, {1}, {2} pack, {3} at {4}: {5}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          tomatoes-whole-in-water      | dial-gauge     | raw | pint  | 2,000 ft | 15 min at 6 psi or 10 min at 11 psi | AIB 539 p. 3-10
          tomatoes-whole-in-water      | dial-gauge     | hot | quart | 2,001 ft | 15 min at 7 psi or 10 min at 12 psi | AIB 539 p. 3-10
          tomatoes-whole-in-water      | dial-gauge     | hot | quart | 4,001 ft | 15 min at 8 psi or 10 min at 13 psi | AIB 539 p. 3-10
          tomatoes-whole-in-water      | dial-gauge     | raw | quart | 8,000 ft | 15 min at 9 psi or 10 min at 14 psi | AIB 539 p. 3-10
          tomatoes-whole-in-water      | dial-gauge     | raw | quart | 8,001 ft | not covered: ALTITUDE               | AIB 539: dial tables end at 8,000 ft
          tomatoes-whole-in-water      | weighted-gauge | raw | quart | 1,000 ft | 15 min at 5 psi or 10 min at 10 psi or 1 min at 15 psi | AIB 539 p. 3-10
          tomatoes-whole-in-water      | weighted-gauge | raw | quart | 1,001 ft | 15 min at 10 psi or 10 min at 15 psi | AIB 539 p. 3-10: 1 min is not recommended
          chicken-or-rabbit-boneless   | dial-gauge     | raw | pint  | 2,000 ft | 75 min at 11 psi  | Michigan State University Extension, record 01600482
          chicken-or-rabbit-boneless   | dial-gauge     | hot | quart | 6,001 ft | 90 min at 14 psi  | Michigan State University Extension, record 01600482
          chicken-or-rabbit-boneless   | weighted-gauge | hot | quart | 1,001 ft | 90 min at 15 psi  | Michigan State University Extension, record 01600482
          chicken-or-rabbit-bone-in    | dial-gauge     | raw | pint  | 4,001 ft | 65 min at 13 psi  | Michigan State University Extension, record 01600482
          chicken-or-rabbit-bone-in    | weighted-gauge | raw | quart | 1,000 ft | 75 min at 10 psi  | Michigan State University Extension, record 01600482
          fish-in-pint-jars            | dial-gauge     | raw | pint  | 0 ft     | 100 min at 11 psi | AIB 539 Guide 5, fish
          fish-in-quart-jars           | weighted-gauge | raw | quart | 1,001 ft | 160 min at 15 psi | AIB 539 p. 5-12
          fish-smoked                  | dial-gauge     | raw | pint  | 0 ft     | 110 min at 11 psi | AIB 539 p. 5-13
          clams                        | weighted-gauge | hot | half-pint | 0 ft | 60 min at 10 psi  | AIB 539 Guide 5, clams
          clams                        | weighted-gauge | hot | pint  | 0 ft     | 70 min at 10 psi  | AIB 539 Guide 5, clams
          """)
  void underPressure(
      String product,
      String method,
      String pack,
      String jar,
      String altitude,
      String answer,
      String source) {
    assertEquals(answer, Book.say(Book.ask(product, method, pack, jar, altitude)), source);
  }

  /** University of Minnesota Extension, Canning quick reference guides, for 1,001 to 2,000 ft. */
  @ParameterizedTest(name = "{0}, {1} pack, {2}: {3} min at {4} psi dial, {5} psi weighted")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          asparagus                    | hot | pint  | 30 | 11 | 15
          asparagus                    | raw | quart | 40 | 11 | 15
          beans-lima-fresh             | hot | pint  | 40 | 11 | 15
          beans-lima-fresh             | raw | quart | 50 | 11 | 15
          beans-snap-italian           | raw | pint  | 20 | 11 | 15
          beans-snap-italian           | hot | quart | 25 | 11 | 15
          beets                        | hot | pint  | 30 | 11 | 15
          beets                        | hot | quart | 35 | 11 | 15
          carrots                      | raw | pint  | 25 | 11 | 15
          carrots                      | hot | quart | 30 | 11 | 15
          corn-cream-style             | hot | pint  | 85 | 11 | 15
          corn-whole-kernel            | raw | pint  | 55 | 11 | 15
          corn-whole-kernel            | hot | quart | 85 | 11 | 15
          peas-green-english           | raw | pint  | 40 | 11 | 15
          peas-green-english           | hot | quart | 40 | 11 | 15
          peppers                      | hot | pint  | 35 | 11 | 15
          potatoes-white               | hot | pint  | 35 | 11 | 15
          potatoes-white               | hot | quart | 40 | 11 | 15
          pumpkin-winter-squash-cubed  | hot | pint  | 55 | 11 | 15
          pumpkin-winter-squash-cubed  | hot | quart | 90 | 11 | 15
          spinach-and-other-greens     | hot | pint  | 70 | 11 | 15
          spinach-and-other-greens     | hot | quart | 90 | 11 | 15
          soups                        | hot | pint  | 60 | 11 | 15
          soups                        | hot | quart | 75 | 11 | 15
          meat-ground-or-chopped       | hot | pint  | 75 | 11 | 15
          meat-ground-or-chopped       | hot | quart | 90 | 11 | 15
          applesauce                   | hot | pint  |  8 |  6 | 10
          applesauce                   | hot | quart | 10 |  6 | 10
          apples-sliced                | hot | pint  |  8 |  6 | 10
          berries-whole                | raw | pint  |  8 |  6 | 10
          berries-whole                | raw | quart | 10 |  6 | 10
          cherries-whole               | hot | pint  |  8 |  6 | 10
          cherries-whole               | raw | quart | 10 |  6 | 10
          grapefruit-and-orange-sections | raw | pint |  8 |  6 | 10
          peaches-halved-or-sliced     | raw | quart | 10 |  6 | 10
          pears-halved                 | hot | pint  | 10 |  6 | 10
          plums-halved-or-whole        | raw | quart | 10 |  6 | 10
          rhubarb-stewed               | hot | pint  |  8 |  6 | 10
          """)
  void bothGauges(String product, String pack, String jar, int minutes, int dial, int weighted) {
    assertEquals(
        minutes + " min at " + dial + " psi",
        Book.say(Book.ask(product, "dial-gauge", pack, jar, "1,500 ft")));
    assertEquals(
        minutes + " min at " + weighted + " psi",
        Book.say(Book.ask(product, "weighted-gauge", pack, jar, "1,500 ft")));
  }

  private static String bands(String product, String method, String pack, String jar) {
    return Book.get().rows(product).stream()
        .filter(r -> r.method().id().equals(method) && r.jar().id().equals(jar))
        .filter(r -> r.pack().covers(Pack.named(pack).orElseThrow()))
        .map(
            r ->
                (r.band().toFeet().isPresent() ? r.band().toFeet().getAsInt() : "above")
                    + ": "
                    + r.process().orElseThrow().minutes())
        .collect(Collectors.joining(", "));
  }
}
