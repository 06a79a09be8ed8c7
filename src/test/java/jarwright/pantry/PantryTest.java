package jarwright.pantry;

import static jarwright.pantry.InventedKitchen.BY;
import static jarwright.pantry.InventedKitchen.DAY;
import static jarwright.pantry.InventedKitchen.NOON;
import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.TOMATOES;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.facts;
import static jarwright.pantry.InventedKitchen.numbered;
import static jarwright.pantry.InventedKitchen.planned;
import static jarwright.pantry.InventedKitchen.sevenPlums;
import static jarwright.pantry.InventedKitchen.sound;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.FoodTables;
import jarwright.lot.LotCode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PantryTest {
  private final List<Entry> ledger = new ArrayList<>(sevenPlums());

  private Pantry after(Entry... more) {
    ledger.addAll(List.of(more));
    return Pantry.of(numbered(ledger), FoodTables::own);
  }

  private static Jar jar(Pantry pantry, int number) {
    return pantry.jar(PLUMS.jar(number)).orElseThrow();
  }

  private static JarWord word(Pantry pantry, int jar) {
    return Advice.word(jar(pantry, jar), NOON);
  }

  private static Entry at(OffsetDateTime when, LotCode lot, String jars, Happening what) {
    return Entry.of(when, lot, JarNumbers.parse(jars), what, BY);
  }

  @Test
  void aSealedJarStandsWhereItWasPlannedUntilMovedTakenOrTossed() {
    Pantry pantry =
        after(
            entry(PLUMS, "1 2", JarStep.moved("attic")),
            entry(PLUMS, "2", JarStep.taken("")),
            entry(PLUMS, "3", JarStep.tossed("the lid had lifted")));
    assertEquals("attic", jar(pantry, 1).shelf());
    assertEquals(new Standing.Taken(NOON), jar(pantry, 2).standing());
    assertEquals(new Standing.Tossed(NOON, "the lid had lifted"), jar(pantry, 3).standing());
    assertEquals("cellar B3", jar(pantry, 4).shelf());
    assertEquals(
        Map.of(Standing.Kind.ON_SHELF, 5, Standing.Kind.TAKEN, 1, Standing.Kind.TOSSED, 1),
        pantry.counts());
    assertEquals(5, pantry.here().count());
  }

  @Test
  void whatCannotBeIsRemarkedAndPassedOver() {
    Pantry pantry =
        after(
            entry(PLUMS, "1", JarStep.taken("")),
            entry(PLUMS, "1 2", JarStep.moved("attic")),
            entry(PLUMS, "9", JarStep.taken("")),
            entry(TOMATOES, "1", JarStep.taken("")),
            entry(PLUMS, "2", sound(1)),
            entry(PLUMS, "", planned("plums-halved-or-whole", 3)));
    assertEquals(
        List.of(
            "event 4: " + PLUMS.jar(1) + " is taken, so it was passed over",
            "event 5: " + PLUMS.jar(9) + " is not known, so it was passed over",
            "event 6: lot " + TOMATOES + " was never planned, so it was passed over",
            "event 7: " + PLUMS.jar(2) + " is on shelf already",
            "event 8: lot " + PLUMS + " has outcomes, so its plan stays as it was"),
        pantry.remarks().stream().map(Remark::toString).toList());
    assertEquals("attic", jar(pantry, 2).shelf());
    assertEquals(7, pantry.jars().count());
  }

  @Test
  void aPlanHoldsUntilAnOutcomeIsRecorded() {
    Pantry pantry =
        after(
            entry(TOMATOES, "", planned("tomatoes-crushed", 7)),
            entry(TOMATOES, "", planned("tomatoes-crushed", 5)));
    assertEquals(5, pantry.lot(TOMATOES).orElseThrow().jars().size());
    assertFalse(pantry.lot(TOMATOES).orElseThrow().isFrozen());
    assertTrue(pantry.lot(PLUMS).orElseThrow().isFrozen());
  }

  @Test
  void anUndoneEventIsAsIfItHadNotBeen() {
    Pantry pantry = after(entry(PLUMS, "1", JarStep.taken("")), Entry.undo(NOON, 3, "slip", BY));
    assertEquals("cellar B3", jar(pantry, 1).shelf());
    Pantry again = after(Entry.undo(NOON, 4, "it was right", BY));
    assertEquals(Standing.Kind.TAKEN, jar(again, 1).standing().kind());
  }

  @Test
  void anOutcomeUndoneCanBeToldAgain() {
    Pantry pantry =
        after(
            Entry.undo(NOON, 2, "wrong lot", BY),
            entry(
                PLUMS,
                "1",
                new Outcome(1, false, Liquid.NONE, "", new Verdict.ThrowAway(), List.of())));
    assertEquals(Standing.Kind.TO_THROW_AWAY, jar(pantry, 1).standing().kind());
    assertEquals(Standing.Kind.PLANNED, jar(pantry, 2).standing().kind());
    assertEquals(List.of(), pantry.remarks());
  }

  @Test
  void anEventThatOthersBuildOnIsUndoneAfterThem() {
    ledger.addAll(
        List.of(
            entry(PLUMS, "1 2", JarStep.moved("attic")),
            entry(PLUMS, "2", JarStep.taken("")),
            entry(PLUMS, "3", JarStep.taken(""))));
    List<LedgerEvent> events = numbered(ledger);
    assertEquals(
        Optional.of("event 4 came after it; undo that first"), Undone.hindrance(3, events));
    assertEquals(Optional.empty(), Undone.hindrance(4, events));
    assertEquals(Optional.of("there is no event 99"), Undone.hindrance(99, events));
    assertEquals(5, Undone.last(events).orElseThrow().number());

    ledger.add(Entry.undo(NOON, 4, "", BY));
    List<LedgerEvent> more = numbered(ledger);
    assertEquals(Optional.empty(), Undone.hindrance(3, more));
    assertEquals(Optional.of("event 4 is undone already"), Undone.hindrance(4, more));
    assertEquals(Optional.empty(), Undone.hindrance(6, more));
    ledger.add(Entry.undo(NOON, 3, "", BY));
    assertEquals(
        Optional.of("event 7 came after it; undo that first"),
        Undone.hindrance(6, numbered(ledger)));
  }

  @Test
  void aMissingJarThatIsFoundIsWhatItWas() {
    Pantry pantry =
        after(entry(PLUMS, "1", JarStep.missing()), entry(PLUMS, "1", JarStep.found("attic")));
    assertEquals(new Standing.OnShelf("attic", false), jar(pantry, 1).standing());
  }

  @Test
  void aTossedJarThatIsFoundIsNotTrusted() {
    Pantry pantry =
        after(
            entry(PLUMS, "1", JarStep.tossed("mould")),
            entry(PLUMS, "1", JarStep.found("attic")),
            entry(PLUMS, "2", JarStep.taken("")),
            entry(PLUMS, "2", JarStep.found("attic")));
    assertEquals(Standing.Kind.TO_THROW_AWAY, jar(pantry, 1).standing().kind());
    assertEquals(new Standing.OnShelf("attic", false), jar(pantry, 2).standing());
  }

  @Test
  void aFailedJarNeverGetsOntoAShelf() {
    Outcome failed =
        new Outcome(
            1,
            true,
            Liquid.NONE,
            "",
            new Verdict.Recan(NOON.plusHours(2), Optional.empty()),
            List.of("heat-lost"));
    ledger.clear();
    ledger.addAll(
        List.of(
            entry(PLUMS, "", planned("plums-halved-or-whole", 3)), entry(PLUMS, "1-3", failed)));
    Pantry pantry =
        after(
            entry(PLUMS, "1", JarStep.moved("attic")),
            entry(PLUMS, "2", JarStep.missing()),
            entry(PLUMS, "2", JarStep.found("attic")),
            at(NOON.plusHours(3), PLUMS, "3", JarStep.refrigerated(DAY.plusDays(3))));
    assertEquals(Standing.Kind.TO_RECAN, jar(pantry, 1).standing().kind());
    assertEquals(Standing.Kind.TO_RECAN, jar(pantry, 2).standing().kind());
    assertEquals(Standing.Kind.TO_RECAN, jar(pantry, 3).standing().kind());
    assertEquals(Standing.Kind.TO_THROW_AWAY, jar(pantry, 3).standingAt(NOON.plusHours(3)).kind());
    assertEquals(Standing.Kind.TO_RECAN, jar(pantry, 3).standingAt(NOON.plusHours(2)).kind());
  }

  @Test
  void aJarThatWasToBeThrownAwayIsNotEatenForHavingBeenLost() {
    Outcome failed = new Outcome(1, true, Liquid.NONE, "", new Verdict.ThrowAway(), List.of());
    ledger.set(1, entry(PLUMS, "1-7", failed));
    Pantry pantry =
        after(entry(PLUMS, "1", JarStep.missing()), entry(PLUMS, "1", JarStep.taken("")));
    assertEquals(Standing.Kind.MISSING, jar(pantry, 1).standing().kind());
    assertEquals(1, pantry.remarks().size());
  }

  /** It was lost or taken while a sibling was found spoiled: turning up does not make it sound. */
  @Test
  void aJarThatTurnsUpAgainIsInDoubtLikeItsSiblings() {
    Pantry pantry =
        after(
            entry(PLUMS, "1", JarStep.missing()),
            entry(PLUMS, "2", JarStep.taken("")),
            entry(PLUMS, "4", JarStep.tossed("broken")),
            entry(PLUMS, "3", new Spoiled("it spurted")),
            entry(PLUMS, "1 2", JarStep.found("cellar B3")));
    assertEquals("cellar B3", jar(pantry, 1).shelf());
    assertEquals(Optional.of(PLUMS.jar(3)), jar(pantry, 1).doubt().map(Doubt::cause));
    assertEquals(Optional.of(PLUMS.jar(3)), jar(pantry, 2).doubt().map(Doubt::cause));
    assertEquals(JarWord.TOSSED, word(pantry, 4));
  }

  /** A lost jar that is itself the spoiled one is not to be eaten when it is found. */
  @Test
  void aLostJarFoundSpoiledIsToBeThrownAway() {
    Pantry pantry =
        after(entry(PLUMS, "1", JarStep.missing()), entry(PLUMS, "1", new Spoiled("it spurted")));
    assertEquals(JarWord.THROW_AWAY, word(pantry, 1));
    Pantry found =
        after(
            entry(PLUMS, "1", JarStep.missing()),
            entry(PLUMS, "1", new Spoiled("it spurted")),
            entry(PLUMS, "1", JarStep.found("attic")));
    assertEquals(JarWord.THROW_AWAY, word(found, 1));
  }

  @Test
  void aClockSetBackIsRemarkedAndTheOrderOfEventsStands() {
    Pantry pantry =
        after(
            at(NOON.plusDays(1), PLUMS, "1", JarStep.moved("attic")),
            at(NOON, PLUMS, "1", JarStep.moved("kitchen")),
            at(NOON.plusDays(1).minusSeconds(30), PLUMS, "1", JarStep.moved("cellar")));
    assertEquals("cellar", jar(pantry, 1).shelf());
    assertEquals(
        List.of(
            "event 4: its time 2026-08-24T12:00-05:00 lies before"
                + " 2026-08-25T12:00-05:00 of the event before it"),
        pantry.remarks().stream().map(Remark::toString).toList());
  }

  @Test
  void timesOfDifferentZonesAreComparedAsMoments() {
    OffsetDateTime sameMomentEast = OffsetDateTime.parse("2026-08-24T19:00+02:00");
    assertEquals(
        List.of(), after(at(sameMomentEast, PLUMS, "1", JarStep.moved("attic"))).remarks());
  }

  @Test
  void anOldJarIsUnvouchedAndItsLotIsNeverReplaced() {
    LotCode old = new LotCode(DAY.minusYears(1), 'A');
    LotFacts known =
        new LotFacts(
            "plum jam",
            "plum jam",
            "",
            "pint",
            Optional.empty(),
            Optional.empty(),
            "attic",
            "",
            "",
            "",
            false);
    Pantry pantry =
        after(
            entry(old, "1-3", new Imported(known, "from aunt")),
            entry(old, "", planned("plums-halved-or-whole", 9)));
    Jar jar = pantry.jar(old.jar(2)).orElseThrow();
    assertTrue(jar.mayStandOnShelf());
    assertEquals(JarWord.UNVOUCHED, Advice.word(jar, NOON));
    assertEquals(3, pantry.lot(old).orElseThrow().jars().size());
    assertFalse(facts("x").equals(known));
  }
}
