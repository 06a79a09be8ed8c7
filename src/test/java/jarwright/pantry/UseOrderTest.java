package jarwright.pantry;

import static jarwright.pantry.InventedKitchen.DAY;
import static jarwright.pantry.InventedKitchen.NOON;
import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.facts;
import static jarwright.pantry.InventedKitchen.numbered;
import static jarwright.pantry.InventedKitchen.oldFacts;
import static jarwright.pantry.InventedKitchen.planned;
import static jarwright.pantry.InventedKitchen.sound;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.FoodTables;
import jarwright.lot.LotCode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class UseOrderTest {
  /** One sound jar that is to be used by that day. */
  private static List<Entry> shelved(LotCode lot, LocalDate useBy) {
    LotFacts known =
        new LotFacts(
            "plum-jam",
            "Plum jam",
            "hot",
            "pint",
            Optional.of(lot.packed()),
            Optional.of(useBy),
            "",
            "",
            "",
            "",
            true);
    Required required = new Required(10, Optional.empty(), false);
    return List.of(
        entry(lot, "", new Planned(known, 1, List.of(1), required)), entry(lot, "1", sound(1)));
  }

  private static Outcome outcome(Liquid lost, Verdict verdict) {
    return new Outcome(1, true, lost, "", verdict, List.of());
  }

  private final List<Entry> ledger = new ArrayList<>();

  @BeforeEach
  void fill() {
    ledger.addAll(shelved(new LotCode(DAY.minusYears(2), 'A'), DAY.minusYears(1)));
    ledger.addAll(shelved(new LotCode(DAY.minusMonths(11), 'A'), DAY.plusMonths(1)));
    ledger.addAll(shelved(new LotCode(DAY.minusMonths(2), 'A'), DAY.plusMonths(10)));
    LotCode old = new LotCode(DAY.minusYears(3), 'A');
    ledger.add(entry(old, "1", new Imported(oldFacts("beans", Optional.of(old.packed())), "")));
    ledger.add(entry(PLUMS, "", planned("plums-halved-or-whole", 6)));
    ledger.add(entry(PLUMS, "1", sound(1)));
    ledger.add(entry(PLUMS, "2", outcome(Liquid.SOME, new Verdict.UseFirst())));
    ledger.add(entry(PLUMS, "3", outcome(Liquid.HALF_OR_MORE, new Verdict.Refrigerate(DAY))));
    Verdict recan = new Verdict.Recan(NOON.plusHours(1), Optional.of(DAY.plusDays(2)));
    ledger.add(entry(PLUMS, "4 5", outcome(Liquid.NONE, recan)));
  }

  private Pantry pantry() {
    return Pantry.of(numbered(ledger), FoodTables::own);
  }

  private static List<String> order(List<Jar> jars, java.time.OffsetDateTime now) {
    return jars.stream()
        .map(j -> Advice.word(j, now).word() + " " + j.id().lot().packed())
        .toList();
  }

  @Test
  void whatIsUrgentStandsFirstThenWhatIsDueSoonest() {
    assertEquals(
        List.of(
            "throw-away 2023-08-24",
            "recan 2026-08-24",
            "recan 2026-08-24",
            "refrigerator 2026-08-24",
            "overdue 2024-08-24",
            "use-first 2026-08-24",
            "due-soon 2025-09-24",
            "keeps 2026-06-24",
            "keeps 2026-08-24"),
        order(new UseOrder(NOON).of(pantry().here()), NOON));
  }

  @Test
  void whatIsOverIsToBeThrownAway() {
    List<Jar> later = new UseOrder(NOON.plusDays(1)).of(pantry().here());
    assertEquals(
        List.of("throw-away 2026-08-24", "throw-away 2026-08-24", "throw-away 2026-08-24"),
        order(later, NOON.plusDays(1)).subList(1, 4));
  }

  /** CDC, Home-Canned Foods: what was not canned by a tested process may hold the toxin. */
  @Test
  void aJarWhoseProcessNobodyKnowsIsNeverHandedOut() {
    List<Jar> toTake = new UseOrder(NOON).toTake(pantry().here());
    assertTrue(toTake.stream().allMatch(j -> j.facts().madeHere()), toTake.toString());
  }

  @Test
  void theJarToTakeIsTheFirstThatIsFitToEat() {
    List<Jar> toTake = new UseOrder(NOON).toTake(pantry().here());
    assertEquals(PLUMS.jar(3), toTake.get(0).id());
    List<Jar> tomorrow = new UseOrder(NOON.plusDays(1)).toTake(pantry().here());
    assertEquals(new LotCode(DAY.minusYears(2), 'A').jar(1), tomorrow.get(0).id());
    ledger.add(entry(PLUMS, "3", new Spoiled("mould")));
    assertEquals(
        List.of("overdue 2024-08-24", "due-soon 2025-09-24", "keeps 2026-06-24"),
        order(new UseOrder(NOON).toTake(pantry().here()), NOON));
  }

  @Test
  void aJarIsCalledByAnyWordsOfItsProduct() {
    LotFacts crushed = facts("tomatoes-crushed");
    assertTrue(UseOrder.isCalled(crushed, "tomatoes"));
    assertTrue(UseOrder.isCalled(crushed, "Crushed  tom"));
    assertTrue(UseOrder.isCalled(crushed, "crushed quart"));
    assertTrue(UseOrder.isCalled(facts("plum jam"), "plums"));
    assertFalse(UseOrder.isCalled(crushed, "tomato juice"));
    assertFalse(UseOrder.isCalled(crushed, "!?"));
    assertFalse(UseOrder.isCalled(crushed, ""));
  }
}
