package jarwright.pantry;

import static jarwright.pantry.InventedKitchen.DAY;
import static jarwright.pantry.InventedKitchen.NOON;
import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.TOMATOES;
import static jarwright.pantry.InventedKitchen.oldFacts;
import static jarwright.pantry.InventedKitchen.planned;
import static jarwright.pantry.InventedKitchen.sound;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import jarwright.files.FoodTables;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Years reckoned by hand beside each check; the rules of pace are the program's own, no source. */
class YearBookTest {
  private static final OffsetDateTime SILVESTER = OffsetDateTime.parse("2026-12-31T23:30:00-06:00");

  private final List<Entry> entries = new ArrayList<>();

  private void at(OffsetDateTime when, jarwright.lot.LotCode lot, String jars, Happening what) {
    entries.add(Entry.of(when, lot, JarNumbers.parse(jars), what, ""));
  }

  private void twentyPlums() {
    at(NOON, PLUMS, "", planned("plums-halved-or-whole", 20));
    at(NOON, PLUMS, "1..20", sound(1));
  }

  private YearBook book(int year, OffsetDateTime now) {
    return YearBook.of(InventedKitchen.numbered(entries), year, now, FoodTables::own);
  }

  private FoodYear only(int year, OffsetDateTime now) {
    List<FoodYear> foods = book(year, now).foods();
    assertEquals(1, foods.size());
    return foods.get(0);
  }

  @Test
  void jarsArePutUpEatenAndLostInTheirOwnYear() {
    twentyPlums();
    at(NOON.plusDays(9), PLUMS, "1 2", JarStep.taken(""));
    at(NOON.plusDays(10), PLUMS, "3", JarStep.tossed("Lid bulged"));
    at(NOON.plusDays(11), PLUMS, "4", JarStep.tossed(" lid  bulged"));
    at(NOON.plusDays(12), PLUMS, "5", JarStep.missing());
    at(NOON.plusYears(1), PLUMS, "6..9", JarStep.taken(""));
    FoodYear first = only(2026, NOON.plusYears(2));
    assertEquals(20, first.putUp());
    assertEquals(2, first.eaten());
    assertEquals(Map.of("lid bulged", 2, YearBook.NOT_FOUND, 1), first.lost());
    assertEquals(15, first.stock());
    FoodYear second = only(2027, NOON.plusYears(2));
    assertEquals(0, second.putUp());
    assertEquals(4, second.eaten());
    assertEquals(Map.of(), second.lost());
    assertEquals(11, second.stock());
  }

  @Test
  void theStockLastsAtTheHouseholdsOwnPace() {
    twentyPlums();
    // Eight of twenty jars eaten over the 100 days from August 24 to December 1.
    at(NOON.plusDays(50), PLUMS, "1..8", JarStep.taken(""));
    FoodYear plums = only(2026, NOON.plusDays(99));
    assertEquals(Optional.of(new Pace(8, 100)), plums.pace());
    // 12 jars x 100 days / 8 jars = 150 days = 21.4 weeks.
    assertEquals(OptionalInt.of(21), plums.weeks());
    // 8 / 100 x 365 = 29.2, so 30 a year; 12 keep until August 2027.
    assertEquals(OptionalInt.of(18), plums.toPutUp());
  }

  @Test
  void whatWillBePastItsDateIsPutUpAgain() {
    twentyPlums();
    at(NOON.plusDays(50), PLUMS, "1..8", JarStep.taken(""));
    // On August 1, 2027: 8 jars in 343 days make 9 a year; the 12 left are due within that year.
    FoodYear plums = only(2027, NOON.plusDays(342));
    assertEquals(12, plums.stock());
    assertEquals(0, plums.keeping());
    assertEquals(OptionalInt.of(9), plums.toPutUp());
  }

  @Test
  void enoughInStockMeansNothingToPutUp() {
    twentyPlums();
    at(NOON.plusDays(80), PLUMS, "1..3", JarStep.taken(""));
    // 3 / 100 x 365 = 10.95, so 11 a year; 17 keep.
    assertEquals(OptionalInt.of(0), only(2026, NOON.plusDays(99)).toPutUp());
  }

  @Test
  void tooLittleIsSaidToBeTooLittle() {
    twentyPlums();
    at(NOON.plusDays(3), PLUMS, "1 2", JarStep.taken(""));
    assertEquals(OptionalInt.empty(), only(2026, NOON.plusDays(99)).weeks());
    at(NOON.plusDays(4), PLUMS, "3", JarStep.taken(""));
    // The 83rd day is too early, the 84th is not.
    assertEquals(OptionalInt.empty(), only(2026, NOON.plusDays(82)).toPutUp());
    assertEquals(Optional.of(new Pace(3, 84)), only(2026, NOON.plusDays(83)).pace());
    assertThrows(IllegalArgumentException.class, () -> new Pace(2, 200));
  }

  @Test
  void onlyTheLastYearTellsThePace() {
    twentyPlums();
    at(NOON.plusDays(10), PLUMS, "1..9", JarStep.taken(""));
    at(NOON.plusDays(400), PLUMS, "10..13", JarStep.taken(""));
    assertEquals(Optional.of(new Pace(4, 365)), only(2027, NOON.plusDays(400)).pace());
  }

  @Test
  void jarsInDoubtAndThoseToBeThrownAwayAreNoStock() {
    twentyPlums();
    at(NOON.plusDays(1), PLUMS, "1", new Spoiled("mould"));
    assertEquals(0, only(2026, NOON.plusDays(2)).stock());
    assertEquals(19, only(2026, NOON.plusDays(2)).doubtful());
    assertEquals(1, only(2026, NOON.plusDays(2)).toThrowAway());
    at(NOON.plusDays(1), PLUMS, "2..9", new Checked(Set.of(), ""));
    assertEquals(8, only(2026, NOON.plusDays(2)).stock());
  }

  @Test
  void whatWasTakenBackLaterNeverHappened() {
    twentyPlums();
    at(NOON.plusDays(1), PLUMS, "1", JarStep.taken(""));
    entries.add(Entry.undo(NOON.plusYears(1), 3, "", ""));
    assertEquals(0, only(2026, NOON.plusYears(1)).eaten());
  }

  /** It is 2026 where the jar was taken, though already 2027 in Greenwich. */
  @Test
  void aDayIsThatOfTheKitchensClock() {
    twentyPlums();
    at(SILVESTER, PLUMS, "1", JarStep.taken(""));
    assertEquals(1, only(2026, SILVESTER.plusDays(3)).eaten());
    assertEquals(0, only(2027, SILVESTER.plusDays(3)).eaten());
    assertEquals(1, book(2026, SILVESTER.plusDays(3)).eaten().get(11));
  }

  @Test
  void jarsFromOldListsCountWhereTheirDayIsKnown() {
    at(NOON, PLUMS, "1..3", new Imported(oldFacts("jam", Optional.of(DAY.minusYears(1))), ""));
    at(NOON, TOMATOES, "1..2", new Imported(oldFacts("jam", Optional.empty()), ""));
    assertEquals(0, only(2026, NOON).putUp());
    assertEquals(5, only(2026, NOON).before());
    assertEquals(5, only(2026, NOON).doubtful());
    Vouched vouched = new Vouched("Ana", "guide", ToldProcess.NOTHING);
    at(NOON, PLUMS, "", vouched);
    assertEquals(3, only(2026, NOON).stock());
    assertEquals(List.of(), book(2025, NOON).foods());
  }

  @Test
  void aYearToComeHasNoBook() {
    assertThrows(IllegalArgumentException.class, () -> book(2027, NOON));
    assertEquals(List.of(), book(2026, NOON).foods());
  }
}
