package jarwright.pantry;

import static jarwright.pantry.InventedKitchen.DAY;
import static jarwright.pantry.InventedKitchen.NOON;
import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.TOMATOES;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.numbered;
import static jarwright.pantry.InventedKitchen.planned;
import static jarwright.pantry.InventedKitchen.sevenPlums;
import static jarwright.pantry.InventedKitchen.sound;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.FoodTables;
import jarwright.lot.LotCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What becomes of a lot when one of its jars was spoiled, or when it was never made. */
class SpoiledLotTest {
  private static Pantry after(Entry... more) {
    List<Entry> ledger = new ArrayList<>(sevenPlums());
    ledger.addAll(List.of(more));
    return Pantry.of(numbered(ledger), FoodTables::own);
  }

  private static Jar jar(Pantry pantry, int number) {
    return pantry.jar(PLUMS.jar(number)).orElseThrow();
  }

  private static Checked clean() {
    return new Checked(Set.of(), "");
  }

  private static JarWord word(Pantry pantry, int jar) {
    return Advice.word(jar(pantry, jar), NOON);
  }

  @Test
  void oneSpoiledJarPutsItsSiblingsInDoubtUntilTheyAreLookedOver() {
    Pantry pantry =
        after(
            entry(TOMATOES, "", planned("tomatoes-crushed", 2)),
            entry(TOMATOES, "1 2", sound(1)),
            entry(PLUMS, "7", JarStep.taken("")),
            entry(PLUMS, "3", new Spoiled("it spurted")),
            entry(PLUMS, "5", clean()));
    assertEquals(JarWord.THROW_AWAY, word(pantry, 3));
    assertEquals(
        Optional.of(new Doubt(Doubt.Kind.TO_CHECK, PLUMS.jar(3), NOON, new Spoiled("it spurted"))),
        jar(pantry, 4).doubt());
    assertEquals(JarWord.DO_NOT_EAT_YET, word(pantry, 4));
    assertEquals(JarWord.KEEPS, word(pantry, 5));
    assertEquals(JarWord.DO_NOT_EAT_YET, word(pantry, 7));
    assertEquals(Standing.Kind.TAKEN, jar(pantry, 7).standing().kind());
    assertEquals(Optional.empty(), pantry.jar(TOMATOES.jar(1)).orElseThrow().doubt());
  }

  /** Ledgers of before knew looks told in a sentence; any sentence passed. */
  @Test
  void aLookToldInASentenceLiftsNoDoubt() {
    Pantry pantry =
        after(
            entry(PLUMS, "3", new Spoiled("it spurted")),
            entry(PLUMS, "5", new JarStep(Deed.LOOKED_AT, "lid bulging, liquid leaking")));
    assertEquals(JarWord.DO_NOT_EAT_YET, word(pantry, 5));
    assertEquals(List.of(), pantry.remarks());
  }

  @Test
  void anySignThrowsTheJarAwayAndPutsThoseThatWereClearedInDoubtAgain() {
    Checked leaking = new Checked(Set.of(Sign.LEAKS), "");
    Pantry pantry =
        after(
            entry(PLUMS, "3", new Spoiled("it spurted")),
            entry(PLUMS, "5 6", clean()),
            entry(PLUMS, "6", leaking));
    assertEquals(JarWord.THROW_AWAY, word(pantry, 6));
    assertEquals(JarWord.DO_NOT_EAT_YET, word(pantry, 5));
    Reason first = Advice.of(jar(pantry, 6), NOON).reasons().get(0);
    assertEquals(new Reason.FoundSpoiled(NOON, new Spoiled(Set.of(Sign.LEAKS), "", "")), first);
  }

  /** CDC, Home-Canned Foods: you cannot see, smell or taste the toxin. */
  @Test
  void aSpoiledJarOfLowAcidFoodCondemnsItsLotWhateverIsSeen() {
    LotCode beans = new LotCode(DAY, 'C');
    Pantry pantry =
        after(
            entry(beans, "", planned("beans-snap-italian", 3, 2)),
            entry(beans, "1-3", sound(1)),
            entry(beans, "1", new Spoiled("it spurted")),
            entry(beans, "4 5", sound(2)),
            entry(beans, "2..5", clean()));
    for (int jar = 1; jar <= 5; jar++) {
      assertEquals(JarWord.THROW_AWAY, Advice.word(pantry.jar(beans.jar(jar)).orElseThrow(), NOON));
    }
    Jar second = pantry.jar(beans.jar(2)).orElseThrow();
    assertEquals("cellar B3", second.shelf(), "where it is to be taken from");
    assertTrue(JarStep.taken("").hindrance(second, NOON).isPresent());
    assertTrue(JarStep.moved("attic").hindrance(second, NOON).isPresent());
    assertTrue(new Checked(Set.of(), "").hindrance(second, NOON).isPresent());
    assertEquals(Optional.empty(), JarStep.tossed("").hindrance(second, NOON));
  }

  @Test
  void whatIsWrongWithTheWholeLotCondemnsAcidFoodToo() {
    Spoiled acid = new Spoiled(Set.of(Sign.MOLD), "", "acid left out");
    Pantry pantry = after(entry(PLUMS, "3", acid), entry(PLUMS, "5", clean()));
    assertEquals(JarWord.THROW_AWAY, word(pantry, 5));
  }

  @Test
  void aFindingTakenBackStaysToBeReadOnEveryJar() {
    Pantry pantry =
        after(
            entry(PLUMS, "3", new Spoiled("mold")),
            Entry.undo(NOON.plusDays(1), 3, "it was another lot", ""));
    assertEquals(JarWord.KEEPS, word(pantry, 5));
    assertEquals(
        List.of(new Reason.Withdrawn(NOON, NOON.plusDays(1), "it was another lot")),
        Advice.of(jar(pantry, 5), NOON).reasons().stream()
            .filter(Reason.Withdrawn.class::isInstance)
            .toList());
    assertTrue(Undone.needsWhy(new Spoiled("mold")));
    assertTrue(Undone.needsWhy(new Checked(Set.of(Sign.MOLD), "")));
    assertFalse(Undone.needsWhy(clean()));
  }

  /** What was eaten was eaten, whatever the stricter reading now says of it. */
  @Test
  void aJarOfACondemnedLotThatWasTakenStaysTakenAndIsNotToBeEaten() {
    LotCode beans = new LotCode(DAY, 'C');
    Pantry pantry =
        after(
            entry(beans, "", planned("beans-snap-italian", 3)),
            entry(beans, "1-3", sound(1)),
            entry(beans, "1", new Spoiled("it spurted")),
            entry(beans, "2", new JarStep(Deed.LOOKED_AT, "clear")),
            entry(beans, "2", JarStep.taken("")));
    Jar taken = pantry.jar(beans.jar(2)).orElseThrow();
    assertEquals(Standing.Kind.TAKEN, taken.standing().kind());
    assertEquals(JarWord.THROW_AWAY, Advice.word(taken, NOON));
    assertEquals(List.of(), pantry.remarks());
  }

  @Test
  void aCancelledLotIsNeitherPackedNorTouchedUntilThatIsTakenBack() {
    List<Entry> entries =
        new ArrayList<>(
            List.of(
                entry(TOMATOES, "", planned("tomatoes-crushed", 2)),
                entry(TOMATOES, "", new Cancelled("no tomatoes")),
                entry(TOMATOES, "1", sound(1))));
    Pantry pantry = after(entries.toArray(Entry[]::new));
    Lot lot = pantry.lot(TOMATOES).orElseThrow();
    assertEquals("no tomatoes", lot.cancelled().orElseThrow().why());
    assertEquals(0, lot.jars().stream().filter(Jar::wasPacked).count());
    assertEquals(JarWord.CANCELLED, Advice.word(lot.jar(1).orElseThrow(), NOON));
    assertEquals(1, pantry.remarks().size());
    assertEquals(Optional.of("is cancelled already"), Cancelled.hindrance(lot));
    entries.set(2, Entry.undo(NOON, 4, "", ""));
    Lot back = after(entries.toArray(Entry[]::new)).lot(TOMATOES).orElseThrow();
    assertEquals(Standing.Kind.PLANNED, back.jar(1).orElseThrow().standing().kind());
    assertEquals(Optional.empty(), Cancelled.hindrance(back));
    Lot packed = pantry.lot(PLUMS).orElseThrow();
    assertTrue(Cancelled.hindrance(packed).isPresent());
  }
}
