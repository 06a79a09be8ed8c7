package jarwright.pantry;

import static jarwright.pantry.InventedKitchen.BY;
import static jarwright.pantry.InventedKitchen.DAY;
import static jarwright.pantry.InventedKitchen.NOON;
import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.numbered;
import static jarwright.pantry.InventedKitchen.planned;
import static jarwright.pantry.InventedKitchen.ran;
import static jarwright.pantry.InventedKitchen.sound;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.FoodTables;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Between the canner and the test of its seal a jar is cooling, and nothing else. */
class CoolingTest {
  private static final OffsetDateTime END = NOON.plusMinutes(25);
  private static final Entry PLAN = entry(PLUMS, "", planned("plums-halved-or-whole", 7));
  private static final Entry LOAD = entry(PLUMS, "1-7", ran(1, NOON, 25));

  private static Pantry after(Entry... more) {
    List<Entry> ledger = new ArrayList<>(List.of(PLAN));
    ledger.addAll(List.of(more));
    return Pantry.of(numbered(ledger), FoodTables::own);
  }

  private static Jar jar(Pantry pantry, int number) {
    return pantry.jar(PLUMS.jar(number)).orElseThrow();
  }

  @Test
  @DisplayName("AIB 539 (2015) Guide 1: cool 12 to 24 hours, then test the seals")
  void aLoadProcessedAsTestedCoolsForTwelveHours() {
    Jar jar = jar(after(LOAD), 3);
    assertEquals(new Standing.Cooling(1, END.plusHours(12)), jar.standing());
    assertEquals(Optional.of(END.plusHours(12)), jar.moment());
    assertTrue(jar.standing().isHere());
    assertTrue(jar.isOpen());
    assertTrue(jar.wasPacked());
    assertEquals(Optional.of(DAY.plusYears(1)), jar.useBy());
  }

  /** However long ago it was: what nobody has tested is not on the shelf. */
  @Test
  void noTimeMakesACoolingJarFitToTake() {
    Pantry pantry = after(LOAD);
    for (int hours : new int[] {1, 12, 24, 24 * 300}) {
      OffsetDateTime now = END.plusHours(hours);
      JarWord word = hours < 12 ? JarWord.COOLING : JarWord.TEST_SEAL;
      assertEquals(word, Advice.word(jar(pantry, 3), now));
      assertEquals(List.of(), new UseOrder(now).toTake(pantry.here()));
      assertEquals(Optional.of("is cooling"), JarStep.taken("").hindrance(jar(pantry, 3), now));
      assertEquals(Optional.of("is cooling"), JarStep.moved("a").hindrance(jar(pantry, 3), now));
      assertEquals(
          Optional.of("is cooling"), JarStep.refrigerated(DAY).hindrance(jar(pantry, 3), now));
    }
  }

  @Test
  void itsOutcomeEndsIt() {
    Pantry pantry = after(LOAD, entry(PLUMS, "1-6", sound(1)));
    assertEquals(Standing.Kind.ON_SHELF, jar(pantry, 6).standing().kind());
    assertEquals("07", pantry.lot(PLUMS).orElseThrow().open().toString());
    assertEquals(List.of(), pantry.remarks());
  }

  @Test
  void aJarThatBrokeIsTossedAndALostOneComesBackAsItWas() {
    Pantry tossed = after(LOAD, entry(PLUMS, "3", JarStep.tossed("broke in the canner")));
    assertEquals(Standing.Kind.TOSSED, jar(tossed, 3).standing().kind());
    Pantry found =
        after(LOAD, entry(PLUMS, "4", JarStep.missing()), entry(PLUMS, "4", JarStep.found("")));
    assertEquals(Standing.Kind.COOLING, jar(found, 4).standing().kind());
    assertEquals(List.of(), found.remarks());
  }

  /** Its jars are judged at once; should that get lost, nothing says that they cool. */
  @Test
  void aLoadThatFailedDoesNotCool() {
    Pantry pantry = after(entry(PLUMS, "1-7", ran(1, NOON, 24)));
    assertEquals(Standing.Kind.PLANNED, jar(pantry, 3).standing().kind());
    assertTrue(pantry.lot(PLUMS).orElseThrow().isFrozen());
  }

  @Test
  void aLoadTakenBackLeavesItsJarsPlanned() {
    Pantry pantry = after(LOAD, Entry.undo(NOON, 2, "wrong lot", BY));
    assertEquals(Standing.Kind.PLANNED, jar(pantry, 3).standing().kind());
  }

  @Test
  void jarsBeyondThePlanCoolToo() {
    Pantry pantry = after(entry(PLUMS, "1-8", ran(1, NOON, 25)));
    assertEquals(Standing.Kind.COOLING, jar(pantry, 8).standing().kind());
  }

  @Test
  void aStockTakeThatSeesThemOnAShelfSaysThatTheyAreNotSealed() {
    Counted row =
        new Counted(PLUMS, Optional.of("attic"), JarNumbers.NONE, JarNumbers.parse("1-2"));
    Counted there =
        new Counted(PLUMS, Optional.of("cooling"), JarNumbers.NONE, JarNumbers.parse("3"));
    List<Difference> found =
        new StockTake(List.of(row, there), java.util.Map.of(), 0).against(after(LOAD), NOON);
    assertEquals(1, found.size());
    assertEquals(Difference.Kind.NOT_SEALED, found.get(0).kind());
    assertEquals("01 02", found.get(0).jars().toString());
    assertFalse(found.get(0).step().isPresent());
  }
}
