package jarwright.batch;

import static jarwright.batch.Plans.BIG_POT;
import static jarwright.batch.Plans.DIAL_POT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.BuyingTables;
import jarwright.process.Aisle;
import jarwright.process.Buying;
import jarwright.process.JarSize;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Volume;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What to buy, summed by hand from the tables of AIB 539 (2015). */
class ShoppingTest {
  private static Buying buying;

  @BeforeAll
  static void read() throws Exception {
    buying = BuyingTables.read();
  }

  @Test
  void tomatoesAreBoughtOnceForCrushedOnesAndForTheJuiceThatCovers() {
    List<ShoppingLine> lines =
        shopping(
            "product: tomatoes-crushed; pack: hot; jar: quart; produce: 35 lb; acid: citric acid",
            "product: tomatoes-whole-in-juice; pack: raw; jar: quart; jars: 7; acid: citric acid");
    Amounts.Weight tomatoes = only(lines, "tomatoes").amounts().weight().orElseThrow();
    // 35 lb there, 21 lb for 7 quarts, and 3-1/4 lb for each quart of 10-1/2 cups of juice
    assertEquals("64-17/32 lb", tomatoes.about().toString());
    // the same with 53 lb that give but 15 quarts
    assertEquals("68-127/480 lb", tomatoes.most().toString());
    assertTrue(tomatoes.estimate());
    assertEquals(2, only(lines, "tomatoes").batches().size());
    // 13 quarts that 35 lb may fill, and 7: 1/2 tsp each
    assertEquals("10 tsp", only(lines, "citric acid").amounts().volume().orElseThrow().toString());
  }

  @Test
  void saltAndSugarAreAddedUp() {
    List<ShoppingLine> lines =
        shopping(
            "product: bread-and-butter-pickles; jar: pint; jars: 8",
            "product: tomatoes-crushed; pack: hot; jar: quart; jars: 7; acid: citric acid; salt:"
                + " yes",
            "product: berries-whole; pack: raw; jar: pint; jars: 9; syrup: light");
    // 1/2 cup, and 1 tsp for each of 7 quarts
    assertEquals(
        Volume.parse("31 tsp").inMillilitres(),
        only(lines, "canning or pickling salt").amounts().volume().orElseThrow().inMillilitres());
    // 4-1/2 cups and 1-1/2 cups of 200 g each
    assertEquals(
        Fraction.of(1_200),
        only(lines, "sugar").amounts().weight().orElseThrow().about().inGrams());
    assertEquals(2, only(lines, "sugar").batches().size());
  }

  @Test
  void whatIsOptionalStandsApart() {
    List<ShoppingLine> lines =
        shopping(
            "product: bread-and-butter-pickles; jar: pint; jars: 8",
            "product: spaghetti-sauce-with-meat; jar: pint; jars: 9; method: dial-gauge");
    assertTrue(only(lines, "pickling lime").optional());
    assertTrue(only(lines, "fresh mushrooms").optional());
    assertFalse(only(lines, "ground beef or sausage").optional());
    assertEquals(
        List.of(Aisle.PRODUCE, Aisle.MEAT, Aisle.ACID, Aisle.SALT, Aisle.SUGAR, Aisle.SPICE),
        lines.stream().map(ShoppingLine::aisle).distinct().limit(6).toList());
  }

  /** AIB 539 (2015) Guide 7: a formula of pear-apple jam takes 6 oz of liquid pectin. */
  @Test
  void pectinIsBoughtInPackagesForEachPot() {
    List<ShoppingLine> lines =
        shopping(
            "product: pear-apple-jam; jar: half-pint; jars: 20",
            "product: golden-pepper-jelly; jar: half-pint; jars: 5",
            "product: blueberry-spice-jam; jar: half-pint; jars: 10");
    assertEquals(Map.of("pouch", Fraction.of(7)), only(lines, "liquid pectin").amounts().pieces());
    assertEquals(
        Map.of("box", Fraction.of(2)), only(lines, "powdered pectin, 1-3/4 oz").amounts().pieces());
  }

  @Test
  void nothingIsBoughtTwiceForWhatIsMadeOfItNorForAnAlternative() {
    assertEquals(
        List.of("apples", "bottled lemon juice", "sugar"),
        names(shopping("product: apple-jelly-no-added-pectin; jar: half-pint; jars: 5")));
    List<String> rings = names(shopping("product: spiced-apple-rings; jar: pint; jars: 9"));
    assertTrue(rings.contains("red hot cinnamon candies"), rings.toString());
    assertFalse(rings.contains("cinnamon sticks"), rings.toString());
    assertFalse(rings.contains("water"), rings.toString());
    Amounts.Weight corn =
        only(
                shopping("product: succotash; pack: hot; jar: quart; jars: 7; method: dial-gauge"),
                "sweet corn, in the husk")
            .amounts()
            .weight()
            .orElseThrow();
    assertEquals("15 lb", corn.most().toString());
  }

  @Test
  void oneOfSeveralSaucesIsSaidToBeAChoiceForOneMaking() {
    List<ShoppingLine> lines =
        shopping(
            "product: beans-dry-tomato-or-molasses-sauce; jar: pint; jars: 9; method: dial-gauge");
    ShoppingLine ketchup = only(lines, "tomato ketchup");
    assertEquals("tomato sauce, version 2", ketchup.choice());
    assertTrue(ketchup.oneMaking());
    ShoppingLine pork = only(lines, "pork, ham or bacon");
    assertEquals(Map.of("each", Fraction.of(9)), pork.amounts().pieces(), "one for each jar");
    assertFalse(pork.oneMaking());
    assertEquals("", only(lines, "dried beans").choice());
  }

  @Test
  void whereNoWeightIsPrintedTheJarsAreSaid() {
    List<ShoppingLine> lines =
        shopping(
            "product: stock-chicken-or-turkey; jar: quart; jars: 7",
            "product: chicken-or-rabbit-bone-in; pack: raw; jar: pint; jars: 9");
    assertEquals(
        Map.of(JarSize.QUART, 7), only(lines, "chicken or turkey carcasses").amounts().fills());
    assertEquals(Map.of(JarSize.PINT, 9), only(lines, "chicken or rabbit").amounts().fills());
  }

  @Test
  void fruitJuiceThatCoversIsBoughtAndWaterIsNot() {
    String plums = "product: plums-halved-or-whole; pack: raw; jar: quart; jars: 14; syrup: ";
    // AIB 539 (2015) p. 2-5: 10-1/2 cups for 7 quarts
    assertEquals(
        Optional.of(Volume.parse("21 cup")),
        only(shopping(plums + "juice"), "apple or white grape juice").amounts().volume());
    assertEquals(List.of("plums"), names(shopping(plums + "water")));
    assertEquals(List.of("plums", "sugar"), names(shopping(plums + "light")));
  }

  @Test
  void aFormulasProduceThatIsThereIsSaidAsThePlanHasIt() {
    ShoppingLine tomatoes =
        only(shopping("product: tomato-ketchup; jar: pint; produce: 35 lb"), "tomatoes");
    assertEquals(
        Optional.of(Amounts.Weight.exactly(Mass.parse("35 lb"))), tomatoes.amounts().weight());
  }

  /** Amounts by the quart, the jar, the pound and the gallon, and what merely covers. */
  @Test
  void whatStepsCallForIsBoughtToo() {
    // 1/2 cup for each quart of rhubarb; 7 quarts
    assertEquals(
        Optional.of(Volume.parse("3-1/2 cup")),
        only(shopping("product: rhubarb-stewed; jar: quart; jars: 7"), "sugar").amounts().volume());
    // a quart for a quart; 9 pints
    assertEquals(
        Optional.of(Volume.parse("4-1/2 quart")),
        only(shopping("product: apple-juice; jar: pint; jars: 9"), "fresh-pressed apple juice")
            .amounts()
            .volume());
    // 1/8 tsp for each of 9 jars
    ShoppingLine acid =
        only(
            shopping("product: mushrooms; jar: pint; jars: 9; method: dial-gauge"),
            "ascorbic acid (vitamin C)");
    assertEquals(Optional.of(Volume.parse("1-1/8 tsp")), acid.amounts().volume());
    assertTrue(acid.optional());
    // no more than 3 cups for 22 lb of tomatoes
    assertEquals(
        Optional.of(Volume.parse("6 cup")),
        only(
                shopping(
                    "product: tomato-vegetable-juice-blend; jar: quart; produce: 44 lb; acid:"
                        + " citric acid"),
                "celery, onions, carrots, peppers")
            .amounts()
            .volume());
    // 1 tsp for each gallon of water, whoever else takes it
    assertEquals(
        Optional.of(Volume.parse("1 tsp")),
        only(
                shopping(
                    "product: peaches-halved-or-sliced; pack: hot; jar: quart; jars: 7",
                    "product: pears-halved; pack: hot; jar: quart; jars: 7"),
                "ascorbic acid (vitamin C)")
            .amounts()
            .eachGallon());
    assertTrue(
        only(shopping("product: bread-and-butter-pickles; jar: pint; jars: 8"), "ice")
            .amounts()
            .enough());
    assertTrue(
        only(shopping("product: fruit-purees; pack: hot; jar: pint; jars: 7"), "sugar")
            .amounts()
            .toTaste());
  }

  @Test
  void someThingsAreForOnePackAlone() {
    String meat =
        "product: meat-strips-cubes-chunks; jar: quart; jars: 7; method: dial-gauge; pack: ";
    assertEquals(
        Optional.of(Volume.parse("10-1/2 cup")),
        only(shopping(meat + "hot"), "broth or tomato juice").amounts().volume());
    assertEquals(List.of("meat to cut up"), names(shopping(meat + "raw")));
  }

  @Test
  void saltForTasteIsBoughtBesideAFormulaThatHasNone() {
    String vegetables =
        "product: mixed-vegetables; pack: hot; jar: quart; jars: 7; method: dial-gauge";
    assertFalse(names(shopping(vegetables)).contains("canning or pickling salt"));
    assertEquals(
        Optional.of(Volume.parse("7 tsp")),
        only(shopping(vegetables + "; salt: yes"), "canning or pickling salt").amounts().volume());
    // 1/4 tsp for each of 9 half-pints stands in the formula already
    assertEquals(
        Optional.of(Volume.parse("2-1/4 tsp")),
        only(
                shopping("product: marinated-peppers; jar: half-pint; jars: 9"),
                "canning or pickling salt")
            .amounts()
            .volume());
  }

  @Test
  void jarsAreThoseThatAreMadeReady() {
    List<Batch> batches =
        batches(
            "product: chile-salsa-ii; jar: pint; jars: 8",
            "product: bread-and-butter-pickles; jar: pint; jars: 9",
            "product: pear-apple-jam; jar: half-pint; jars: 8");
    assertEquals(
        Map.of(JarSize.PINT, 21, JarSize.HALF_PINT, 8), Shopping.jars(batches), "9 and 12, 8");
  }

  private static List<ShoppingLine> shopping(String... plans) {
    return Shopping.of(batches(plans), buying);
  }

  private static List<Batch> batches(String... plans) {
    return Stream.of(plans)
        .map(
            plan ->
                plan.contains("chicken") || plan.contains("method: dial")
                    ? Plans.of(plan, DIAL_POT).batch()
                    : Plans.of(plan, BIG_POT).batch())
        .toList();
  }

  private static List<String> names(List<ShoppingLine> lines) {
    return lines.stream().map(ShoppingLine::what).toList();
  }

  private static ShoppingLine only(List<ShoppingLine> lines, String what) {
    List<ShoppingLine> found = lines.stream().filter(l -> l.what().equals(what)).toList();
    assertEquals(1, found.size(), what + " once among " + names(lines));
    return found.get(0);
  }
}
