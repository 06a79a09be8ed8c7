package jarwright.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.page.Wording;
import jarwright.process.Book;
import jarwright.process.Formula;
import jarwright.process.FormulaLine;
import jarwright.process.Product;
import jarwright.quantity.Fraction;
import jarwright.quantity.Mass;
import jarwright.quantity.Units;
import jarwright.quantity.Volume;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is written of a formula makes the food no less acid and no less salt than printed. */
class FormulaAmountTest {
  private static final List<String> VOLUMES = List.of("tsp", "Tbsp", "cup", "pint", "qt", "gal");
  private static final Wording WORDS = PlannedBatch.WORDS;

  @ParameterizedTest(name = "{0} {1} of {2}: {3}")
  @CsvSource({
    "11/8, lb, carrots, 22 oz (620 g)",
    "5/4, lb, tomatoes, 1-1/4 lb (565 g)",
    "5/8, cup, white vinegar (5%), 1/2 cup + 2 Tbsp (150 mL)",
    "8, cup, onions, 8 cups (1.85 L)",
    "8, cup, vinegar, 8 cups (1.9 L)",
    "3, cup, sugar, 3 cups (710 mL)",
    "2, Tbsp, mustard seed, 2 Tbsp (30 mL)",
    "3, Tbsp, canning salt, 3 Tbsp (45 mL)"
  })
  void amounts(String amount, String unit, String ingredient, String text) {
    Fraction exact = Fraction.parse(amount);
    assertEquals(
        text,
        new FormulaAmount(WORDS, Units.BOTH)
            .of(new FormulaLine(ingredient, exact, exact, unit, ""))
            .toString());
  }

  /** US measures hold every half of every formula exactly; metric ones never less acid in it. */
  @Test
  void noRoundingMakesAFormulaLessAcid() {
    int measured = 0;
    for (Product product : Book.get().products()) {
      for (Formula formula : Book.get().formulas(product.id())) {
        for (int halves = 1; halves <= 6; halves++) {
          for (FormulaLine line : formula.lines()) {
            FormulaLine taken = line.times(Fraction.of(halves, 2));
            if (taken.most().equals(taken.least()) && isMeasured(taken)) {
              assertEquals(millilitresOrGrams(exact(taken)), base(taken, Units.US), taken + "");
              assertSafe(taken);
              measured++;
            }
          }
        }
      }
    }
    assertTrue(measured > 3_000, "lines measured: " + measured);
  }

  private static void assertSafe(FormulaLine line) {
    int less = base(line, Units.METRIC).compareTo(millilitresOrGrams(exact(line)));
    switch (line.rounding()) {
      case UP -> assertTrue(less >= 0, line + "");
      case DOWN -> assertTrue(less <= 0, line + "");
      default -> assertTrue(!line.isAcid(), line + "");
    }
  }

  private static boolean isMeasured(FormulaLine line) {
    return !line.isToTaste()
        && (VOLUMES.contains(line.unit()) || List.of("lb", "oz").contains(line.unit()));
  }

  private static String exact(FormulaLine line) {
    return line.most() + " " + line.unit();
  }

  private static Fraction base(FormulaLine line, Units units) {
    return Stream.of(new FormulaAmount(WORDS, units).of(line).main().split(" \\+ "))
        .map(FormulaAmountTest::millilitresOrGrams)
        .reduce(Fraction.ZERO, Fraction::plus);
  }

  private static Fraction millilitresOrGrams(String amount) {
    String unit = amount.substring(amount.lastIndexOf(' ') + 1);
    boolean weighed = List.of("lb", "oz", "g", "kg").contains(unit);
    return weighed ? Mass.parse(amount).inGrams() : Volume.parse(amount).inMillilitres();
  }
}
