package jarwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.BuyingTables;
import jarwright.files.EveryProduct;
import jarwright.process.Buying;
import jarwright.process.FormulaLine;
import jarwright.process.JarSize;
import jarwright.process.Purchase;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Volume;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;

/** What is bought is enough for every batch of a day, and stands once. */
class ShoppingProperties {
  private static final List<Batch> ALL = everyBatch();
  private static final Buying BUYING = buying();

  @Property(tries = 300)
  void eachThingStandsOnce(@ForAll("batches") @Size(min = 1, max = 6) List<Batch> batches) {
    Set<List<Object>> seen = new HashSet<>();
    for (ShoppingLine line : Shopping.of(batches, BUYING)) {
      assertTrue(
          seen.add(List.of(line.what(), line.optional(), line.choice(), line.oneMaking())),
          line.what());
      assertTrue(batches.containsAll(line.batches()) && !line.batches().isEmpty(), line.what());
    }
  }

  @Property(tries = 300)
  void jarsAndLidsAreAllThatAreMadeReady(
      @ForAll("batches") @Size(min = 1, max = 6) List<Batch> batches) {
    Map<JarSize, Integer> jars = Shopping.jars(batches);
    assertEquals(
        batches.stream().mapToInt(Batch::lids).sum(),
        jars.values().stream().mapToInt(Integer::intValue).sum());
  }

  /** All of two days bought at once is what both take, to the last spoon. */
  @Property(tries = 300)
  void togetherItIsTheSum(
      @ForAll("batches") @Size(min = 1, max = 3) List<Batch> one,
      @ForAll("batches") @Size(min = 1, max = 3) List<Batch> other) {
    List<Batch> both = new ArrayList<>(one);
    both.addAll(other);
    for (ShoppingLine line : Shopping.of(both, BUYING)) {
      Fraction pounds = pounds(one, line).plus(pounds(other, line));
      assertEquals(
          pounds,
          line.amounts().weight().map(w -> w.most().inPounds()).orElse(Fraction.ZERO),
          line.what());
      assertEquals(
          millilitres(one, line).plus(millilitres(other, line)),
          line.amounts().volume().map(Volume::inMillilitres).orElse(Fraction.ZERO),
          line.what());
    }
  }

  /** The produce fills the jars where it yields worst, and every measure of a formula is there. */
  @Property
  void itIsEnoughForABatch(@ForAll("batch") Batch batch) {
    List<ShoppingLine> lines = Shopping.of(List.of(batch), BUYING);
    ProducePerJar.of(batch.product().produce(), batch.jar())
        .filter(p -> batch.formula().isEmpty())
        .ifPresent(
            perJar ->
                assertTrue(
                    perJar.fromProduce(Mass.pounds(allPounds(lines))).fewest() >= batch.jars(),
                    batch.product().id()));
    for (FormulaLine line : batch.formula().map(FormulaMultiple::lines).orElse(List.of())) {
      Purchase purchase = BUYING.of(line);
      if (!purchase.isNothing() && !line.isInstead() && !line.isToTaste()) {
        assertThere(line, purchase, lines);
      }
    }
  }

  private static void assertThere(FormulaLine line, Purchase purchase, List<ShoppingLine> lines) {
    Amounts amounts =
        lines.stream()
            .filter(
                l ->
                    l.what().equals(purchase.what())
                        && l.optional() == line.isOptional()
                        && l.choice().equals(line.choice()))
            .map(ShoppingLine::amounts)
            .reduce(Amounts::plus)
            .orElseThrow(() -> new AssertionError("not bought: " + line));
    Optional<Mass> weighed = purchase.weighing().flatMap(w -> w.of(line.most(), line.unit()));
    if (weighed.isPresent()) {
      assertTrue(amounts.weight().isPresent() || !amounts.pieces().isEmpty(), line + "");
    }
    Mass.Unit.named(line.unit())
        .filter(u -> purchase.piece().isEmpty())
        .ifPresent(
            unit ->
                assertTrue(
                    amounts.weight().orElseThrow().most().compareTo(new Mass(line.most(), unit))
                        >= 0,
                    line + ""));
    Volume.Unit.named(line.unit())
        .filter(u -> weighed.isEmpty())
        .ifPresent(
            unit ->
                assertTrue(
                    amounts.volume().orElseThrow().compareTo(Volume.of(line.most(), unit)) >= 0,
                    line + ""));
  }

  private static Fraction allPounds(List<ShoppingLine> lines) {
    return lines.stream()
        .flatMap(l -> l.amounts().weight().stream())
        .map(w -> w.most().inPounds())
        .reduce(Fraction.ZERO, Fraction::plus);
  }

  private static Fraction pounds(List<Batch> batches, ShoppingLine like) {
    return same(batches, like)
        .flatMap(l -> l.amounts().weight())
        .map(w -> w.most().inPounds())
        .orElse(Fraction.ZERO);
  }

  private static Fraction millilitres(List<Batch> batches, ShoppingLine like) {
    return same(batches, like)
        .flatMap(l -> l.amounts().volume())
        .map(Volume::inMillilitres)
        .orElse(Fraction.ZERO);
  }

  private static Optional<ShoppingLine> same(List<Batch> batches, ShoppingLine like) {
    return Shopping.of(batches, BUYING).stream()
        .filter(
            l ->
                l.what().equals(like.what())
                    && l.optional() == like.optional()
                    && l.choice().equals(like.choice())
                    && l.oneMaking() == like.oneMaking())
        .findFirst();
  }

  @Provide
  Arbitrary<Batch> batch() {
    return Arbitraries.of(ALL);
  }

  @Provide
  Arbitrary<List<Batch>> batches() {
    return batch().list();
  }

  private static List<Batch> everyBatch() {
    try {
      return EveryProduct.batches();
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  private static Buying buying() {
    try {
      return BuyingTables.read();
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }
}
