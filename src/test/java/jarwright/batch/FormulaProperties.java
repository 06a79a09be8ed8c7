package jarwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.process.Book;
import jarwright.process.Formula;
import jarwright.process.FormulaLine;
import jarwright.process.JarSize;
import jarwright.process.Product;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** However often a formula is made, its proportions are the printed ones, to the last drop. */
class FormulaProperties {
  private static final String PER_JAR = "per jar";

  @Property
  void everyProportionIsThePrintedOne(
      @ForAll("withFormula") Product product,
      @ForAll JarSize jar,
      @ForAll @IntRange(min = 1, max = 2_000) int jars) {
    FormulaMultiple taken = filling(product, jars, jar);
    List<FormulaLine> printed = taken.formula().lines();
    List<FormulaLine> all = taken.lines();
    assertEquals(printed.size(), all.size());
    for (int acid = 0; acid < printed.size(); acid++) {
      for (int food = 0; food < printed.size(); food++) {
        if (counted(printed.get(acid)) && counted(printed.get(food))) {
          assertEquals(
              printed.get(acid).least().times(all.get(food).most()),
              all.get(acid).least().times(printed.get(food).most()),
              product.id());
        }
      }
    }
  }

  private static boolean counted(FormulaLine line) {
    return !line.unit().equals(PER_JAR);
  }

  /** In halves where that is allowed, for the jars, and no half more than they call for. */
  @Property
  void itMayFillTheJarsAndHalfOfItLessMayNot(
      @ForAll("withFormula") Product product,
      @ForAll JarSize jar,
      @ForAll @IntRange(min = 1, max = 2_000) int jars) {
    FormulaMultiple taken = filling(product, jars, jar);
    Optional<JarRange> fills = taken.fills(jar);
    if (fills.isEmpty()) {
      return;
    }
    Fraction step = product.isCookedSingly() ? Fraction.ONE : Fraction.of(1, 2);
    assertTrue(taken.times().orElseThrow().dividedBy(step).isWhole());
    assertTrue(fills.get().fewest() >= 1 && fills.get().most() >= jars);
    assertTrue(fills.get().fewest() <= fills.get().likely());
    assertTrue(fills.get().likely() <= fills.get().most());
    taken
        .less(jar)
        .flatMap(less -> less.fills(jar))
        .ifPresent(less -> assertTrue(less.most() < jars, product.id()));
  }

  @Property
  void produceAtHandIsNeverExceededAndNoHalfIsLeft(
      @ForAll("withFormula") Product product,
      @ForAll JarSize jar,
      @ForAll @IntRange(min = 1, max = 200_000) int ounces) {
    Mass produce = Mass.parse(ounces + " oz");
    List<Formula> printed = Book.get().formulas(product.id());
    FormulaMultiple.from(printed, produce, jar, product)
        .filter(f -> f.mainProduce().isPresent())
        .ifPresent(
            taken -> {
              assertTrue(taken.mainProduce().orElseThrow().compareTo(produce) <= 0);
              Mass least = taken.least().mainProduce().orElseThrow();
              assertTrue(taken.mainProduce().orElseThrow().plus(least).compareTo(produce) > 0);
            });
  }

  private static FormulaMultiple filling(Product product, int jars, JarSize jar) {
    return FormulaMultiple.filling(Book.get().formulas(product.id()), jars, jar, product)
        .orElseThrow();
  }

  @Provide
  Arbitrary<Product> withFormula() {
    return Arbitraries.of(
        Book.get().products().stream()
            .filter(p -> !Book.get().formulas(p.id()).isEmpty())
            .toList());
  }
}
