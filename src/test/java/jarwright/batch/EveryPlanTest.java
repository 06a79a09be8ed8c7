package jarwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.plan.Canner;
import jarwright.problem.Problems;
import jarwright.process.AcidDose;
import jarwright.process.AcidKind;
import jarwright.process.AcidRule;
import jarwright.process.Book;
import jarwright.process.JarSize;
import jarwright.process.JarYield;
import jarwright.process.Product;
import jarwright.process.SaltRule;
import jarwright.process.TableRow;
import jarwright.quantity.Altitude;
import jarwright.quantity.Fraction;
import jarwright.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Every product in every pack, jar, canner and acid, at sea level, in a higher band and above the
 * dial-gauge tables: a batch is made only of a tested process with all that belongs to it, and
 * every other plan is refused in words.
 */
class EveryPlanTest {
  private static final List<String> PACKS = List.of("", "; pack: raw", "; pack: hot");
  private static final List<String> ALTITUDES = List.of("0 ft", "1,378 ft", "8,001 ft");
  private static final List<Canner> CANNERS =
      List.of(Plans.BIG_POT, Plans.DIAL_POT, Plans.WEIGHT_POT);
  private static final List<String> ACID_FOR_ANYTHING = List.of("citric acid");
  private static final int JARS = 9;

  @Test
  void everyPlanBecomesASafeBatchOrIsRefused() {
    int made = 0;
    int refused = 0;
    for (Product product : Book.get().products()) {
      for (String plan : plans(product)) {
        for (Canner canner : CANNERS) {
          Problems problems = new Problems();
          Optional<Batch> batch = Plans.of(plan, canner).reckon(problems);
          assertEquals(batch.isEmpty(), !problems.isEmpty(), plan);
          batch.ifPresent(b -> assertSafe(b, canner, plan));
          made += batch.isPresent() ? 1 : 0;
          refused += batch.isPresent() ? 0 : 1;
        }
      }
    }
    assertTrue(made > 3_000, "batches made: " + made);
    assertTrue(refused > 40_000, "plans refused: " + refused);
  }

  private static List<String> plans(Product product) {
    List<String> acids = new ArrayList<>(List.of(""));
    List<String> named = product.acid().needsChoice() ? AcidKind.ids() : ACID_FOR_ANYTHING;
    named.forEach(id -> acids.add("; acid: " + id));
    List<String> plans = new ArrayList<>();
    for (String altitude : ALTITUDES) {
      for (JarSize jar : JarSize.values()) {
        for (String pack : PACKS) {
          for (String acid : acids) {
            plans.add(
                "product: "
                    + product.id()
                    + "; jars: "
                    + JARS
                    + "; jar: "
                    + jar
                    + "; altitude: "
                    + altitude
                    + pack
                    + acid);
          }
        }
      }
    }
    return plans;
  }

  private static void assertSafe(Batch batch, Canner canner, String plan) {
    assertTested(batch, canner, plan);
    assertAcid(batch, plan);
    assertSalt(batch, plan);
    assertFalse(batch.headspace().isEmpty(), plan);
    assertEquals(
        batch.product().headspace().of(batch.pack(), batch.jar()), batch.headspace(), plan);
    boolean sterile = !batch.method().isPressure() && batch.process().minutes() < 10;
    assertEquals(sterile, batch.sterilise().isPresent(), plan);
    assertEquals(batch.jars(), batch.lids(), plan);
    assertEquals(batch.jars(), batch.expected().most(), plan);
    batch
        .formula()
        .filter(f -> f.formula().jars().isPresent())
        .ifPresentOrElse(
            formula -> assertEnough(formula, batch, plan),
            () -> assertEquals(new JarRange(JARS, JARS, JARS), batch.expected(), plan));
    assertEquals(
        Book.get().formulas(batch.product().id()).isEmpty(), batch.formula().isEmpty(), plan);
  }

  private static void assertTested(Batch batch, Canner canner, String plan) {
    TableRow row = batch.row();
    JarSize printed = batch.printedFor().orElse(batch.jar());
    Altitude altitude = batch.kitchen().altitude();
    assertTrue(Book.get().rows(batch.product().id()).contains(row), plan);
    assertTrue(row.process().isPresent() && batch.offered().contains(row), plan);
    assertEquals(canner.method(), row.method(), plan);
    assertEquals(canner, batch.canner(), plan);
    assertTrue(row.pack().covers(batch.pack()), plan);
    assertTrue(row.band().holds(altitude.feetRoundedUp()), plan);
    assertEquals(printed, row.jar(), plan);
    assertTrue(printed.pints().compareTo(batch.jar().pints()) >= 0, plan);
    assertEquals(row.method().isPressure(), batch.process().isPressure(), plan);
  }

  private static void assertAcid(Batch batch, String plan) {
    if (!(batch.product().acid() instanceof AcidRule.PerJar rule)) {
      assertEquals(Optional.empty(), batch.acid(), plan);
      return;
    }
    AcidPerJar acid = batch.acid().orElseThrow(() -> new AssertionError("no acid: " + plan));
    Volume each = rule.dose(acid.kind(), batch.jar()).map(AcidDose::amount).orElseThrow();
    assertTrue(plan.endsWith("acid: " + acid.kind()), plan);
    assertEquals(each, acid.each(), plan);
    assertEquals(batch.jars(), acid.jars(), plan);
    assertEquals(
        each.inMillilitres().times(batch.jars()),
        acid.total().inMillilitres(),
        "no drop lost: " + plan);
  }

  private static void assertSalt(Batch batch, String plan) {
    SaltRule rule = batch.product().salt();
    Optional<Volume> needed = rule.isFixed() ? rule.perJar(batch.jar()) : Optional.empty();
    assertEquals(needed, batch.salt(), plan);
  }

  /** It may fill the jars, surely fills one, and half of it less would not do both. */
  private static void assertEnough(FormulaMultiple formula, Batch batch, String plan) {
    JarRange fills = formula.fills(batch.jar()).orElseThrow();
    assertEquals(fills, batch.expected(), plan);
    assertTrue(fills.most() >= JARS && fills.fewest() >= 1, plan);
    JarYield yield = formula.formula().jars().orElseThrow();
    Fraction times = formula.times().orElseThrow();
    Fraction step = formula.singly() ? Fraction.ONE : Fraction.of(1, 2);
    assertTrue(times.dividedBy(step).isWhole(), plan);
    Fraction smaller = times.minus(step);
    Fraction jars = yield.mostPints().times(smaller).dividedBy(batch.jar().pints());
    assertTrue(jars.compareTo(Fraction.of(JARS)) < 0, plan);
  }
}
