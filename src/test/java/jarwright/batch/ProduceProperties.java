package jarwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.process.Book;
import jarwright.process.JarSize;
import jarwright.process.ProduceNeed;
import jarwright.process.Product;
import jarwright.process.Syrup;
import jarwright.process.SyrupRow;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Nobody runs short: of produce for her jars, of jars for her produce, of syrup for either. */
class ProduceProperties {
  @Property
  void theMostProduceFillsTheJarsEvenWhereItYieldsWorst(
      @ForAll("weighed") Product product,
      @ForAll JarSize jar,
      @ForAll @IntRange(min = 1, max = 2_000) int jars) {
    ProducePerJar perJar = perJar(product, jar);
    assertTrue(perJar.fromProduce(perJar.forJars(jars).most()).fewest() >= jars);
    assertEquals(jars, perJar.fromProduce(Mass.pounds(perJar.worst().times(jars))).fewest());
    assertEquals(jars, perJar.fromProduce(Mass.pounds(perJar.usual().times(jars))).likely());
    assertEquals(jars, perJar.fromProduce(Mass.pounds(perJar.least().times(jars))).most());
  }

  /** The printed weight is what she buys: a quarter pound or a tenth of a kilogram, never less. */
  @Property
  void theWeightOnPaperFillsTheJarsToo(
      @ForAll("weighed") Product product,
      @ForAll JarSize jar,
      @ForAll @IntRange(min = 1, max = 2_000) int jars) {
    ProducePerJar perJar = perJar(product, jar);
    Mass most = perJar.forJars(jars).most();
    for (Units units : List.of(Units.US, Units.METRIC)) {
      Mass bought = Mass.parse(most.text(Style.english(units), Rounding.UP).replace(",", ""));
      assertTrue(perJar.fromProduce(bought).fewest() >= jars, bought.toString());
    }
  }

  @Property
  void rangesAreInOrder(
      @ForAll("weighed") Product product,
      @ForAll JarSize jar,
      @ForAll @IntRange(min = 1, max = 50_000_000) int grams) {
    ProducePerJar perJar = perJar(product, jar);
    JarRange jars = perJar.fromProduce(Mass.parse(grams + " g"));
    assertTrue(jars.fewest() <= jars.likely() && jars.likely() <= jars.most());
    assertTrue(perJar.worst().compareTo(perJar.most()) <= 0);
    ProduceRange produce = perJar.forJars(7);
    assertTrue(produce.least().compareTo(produce.about()) <= 0);
    assertTrue(produce.about().compareTo(produce.most()) <= 0);
  }

  @Example
  void aLorryLoadDoesNotOverflow() {
    ProducePerJar perJar = perJar(Book.product("plums-halved-or-whole"), JarSize.HALF_PINT);
    Mass all = Mass.parse("9999999999999999999 kg");
    assertEquals(Integer.MAX_VALUE, perJar.fromProduce(all).fewest());
  }

  /** The load is taken from the row that is printed for the jar's kind, the averages after it. */
  @Example
  void theFigureNearestToTheJarIsTaken() {
    Optional<Fraction> seven = Optional.of(Fraction.of(21));
    Optional<Fraction> nine = Optional.of(Fraction.of(18));
    Optional<Fraction> quart = Optional.of(Fraction.of(5, 2));
    Optional<Fraction> none = Optional.empty();
    assertEquals("3 3 3 3 3", each(seven, nine, none, JarSize.QUART));
    assertEquals("2 2 2 2 2", each(seven, nine, none, JarSize.PINT));
    assertEquals("1 1 1 1 1", each(seven, nine, none, JarSize.HALF_PINT));
    assertEquals("4 4 4 4 4", each(none, nine, none, JarSize.QUART));
    assertEquals(
        "1-1/2 1-1/2 1-1/2 1-1/2 1-1/2", each(seven, none, none, JarSize.PINT), "quarts serve");
    assertEquals("2-1/2 2-1/2 2-1/2 2-1/2 2-1/2", each(none, none, quart, JarSize.QUART));
    assertEquals("2-1/2 2-1/2 3 3 3", each(seven, none, quart, JarSize.QUART), "the average");
    assertEquals("1-1/4 2 2 2 2", each(none, nine, quart, JarSize.PINT), "the load of pints");
    assertEquals(Optional.empty(), ProducePerJar.of(need(none, none, none), JarSize.PINT));
  }

  @Property
  void syrupIsNeverShort(
      @ForAll Syrup syrup, @ForAll JarSize jar, @ForAll @IntRange(min = 1, max = 2_000) int jars) {
    SyrupRow row = Book.get().syrup(syrup, jar);
    SyrupNeed need = SyrupNeed.of(row, jars, jar);
    Fraction share = row.share(jars, jar);
    assertTrue(need.water().compareTo(row.water().times(share)) >= 0);
    assertTrue(need.sugar().compareTo(row.sugar().times(share)) >= 0);
  }

  /** Of the printed strength: the sugar is over by less than a spoonful, or a sixteenth. */
  @Property
  void syrupKeepsItsStrength(
      @ForAll Syrup syrup, @ForAll JarSize jar, @ForAll @IntRange(min = 1, max = 2_000) int jars) {
    SyrupRow row = Book.get().syrup(syrup, jar);
    SyrupNeed need = SyrupNeed.of(row, jars, jar);
    Fraction exact =
        row.sugar()
            .inMillilitres()
            .times(need.water().inMillilitres())
            .dividedBy(row.water().inMillilitres());
    Fraction over = need.sugar().inMillilitres().minus(exact);
    assertTrue(over.signum() >= 0);
    assertTrue(over.compareTo(Fraction.of(15)) < 0 || over.times(16).compareTo(exact) < 0);
  }

  @Provide
  Arbitrary<Product> weighed() {
    return Arbitraries.of(
        Book.get().products().stream().filter(p -> p.produce().isPrinted()).toList());
  }

  private static ProducePerJar perJar(Product product, JarSize jar) {
    return ProducePerJar.of(product.produce(), jar).orElseThrow();
  }

  private static String each(
      Optional<Fraction> seven, Optional<Fraction> nine, Optional<Fraction> quart, JarSize jar) {
    ProducePerJar each = ProducePerJar.of(need(seven, nine, quart), jar).orElseThrow();
    return each.least()
        + " "
        + each.usual()
        + " "
        + each.worst()
        + " "
        + each.about()
        + " "
        + each.most();
  }

  private static ProduceNeed need(
      Optional<Fraction> seven, Optional<Fraction> nine, Optional<Fraction> quart) {
    return new ProduceNeed(seven, nine, quart, Optional.empty());
  }
}
