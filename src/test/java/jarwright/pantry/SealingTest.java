package jarwright.pantry;

import static jarwright.pantry.InventedKitchen.BY;
import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.TOMATOES;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.numbered;
import static jarwright.pantry.InventedKitchen.planned;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import jarwright.files.FoodTables;
import jarwright.files.VerdictTable;
import jarwright.problem.Refused;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SealingTest {
  private static final OffsetDateTime TEN = OffsetDateTime.parse("2026-08-24T10:00-05:00");
  private static final OffsetDateTime NEXT_DAY = TEN.plusHours(14);
  private static Judge judge;

  private final List<Entry> ledger =
      new ArrayList<>(List.of(entry(PLUMS, "", planned("plums-halved-or-whole", 7, 6))));

  @BeforeAll
  static void readTheRules() throws Exception {
    judge = new Judge(VerdictTable.read());
  }

  private static Observed ran(int minutes) {
    return new Observed(
        Optional.of(TEN),
        Optional.empty(),
        Optional.of(TEN.plusMinutes(minutes)),
        Ticked.YES,
        Optional.empty(),
        0,
        Ticked.NO,
        Ticked.BLANK,
        Ticked.BLANK);
  }

  private static LoadReport report(int load, Observed seen, String unsealed, String some) {
    return Told.of(PLUMS, load).ran(seen).look(unsealed, some, "none").report();
  }

  private Pantry pantry() {
    return Pantry.of(numbered(ledger), FoodTables::own);
  }

  private Sealed seal(LoadReport... reports) throws Refused {
    Sealed sealed = Sealing.of(List.of(reports), pantry(), judge, NEXT_DAY, BY);
    ledger.addAll(sealed.entries());
    return sealed;
  }

  private List<String> refusals(LoadReport... reports) {
    Refused refused =
        assertThrows(
            Refused.class, () -> Sealing.of(List.of(reports), pantry(), judge, NEXT_DAY, BY));
    return refused.problems().stream().map(p -> p.what()).toList();
  }

  private Standing.Kind standing(int jar) {
    return pantry().jar(PLUMS.jar(jar)).orElseThrow().standing().kind();
  }

  @Test
  void aLoadIsOneEntryAndJarsOfOneOutcomeAreAnother() throws Exception {
    Sealed sealed = seal(report(1, ran(25), "3", "5 6"));
    assertEquals(
        List.of("load 01..07", "outcome 01 02 04 07", "outcome 03", "outcome 05 06"),
        sealed.entries().stream().map(e -> e.what().kind() + " " + e.jars()).toList());
    assertEquals(7, sealed.verdicts().size());
    assertEquals(Standing.Kind.ON_SHELF, standing(1));
    assertEquals(Standing.Kind.TO_RECAN, standing(3));
    assertEquals(Standing.Kind.ON_SHELF, standing(5));
    assertEquals(true, pantry().jar(PLUMS.jar(5)).orElseThrow().isUsedFirst());
    assertEquals("cellar B3", pantry().jar(PLUMS.jar(1)).orElseThrow().shelf());
    assertEquals(Standing.Kind.PLANNED, standing(8));
    assertEquals("08..13", pantry().lot(PLUMS).orElseThrow().open().toString());
    assertEquals(true, pantry().lot(PLUMS).orElseThrow().isFrozen());
  }

  @Test
  void theJarsOfALoadAreThoseThatThePlanPutIntoIt() throws Exception {
    seal(report(2, ran(25), "none", "none"));
    assertEquals(Standing.Kind.PLANNED, standing(7));
    assertEquals(Standing.Kind.ON_SHELF, standing(8));
    assertEquals(Standing.Kind.ON_SHELF, standing(13));
  }

  @Test
  void oneMinuteShortTakesTheWholeLoadAndNoOther() throws Exception {
    seal(report(1, ran(24), "none", "none"), report(2, ran(25), "none", "none"));
    for (int jar = 1; jar <= 7; jar++) {
      assertEquals(Standing.Kind.TO_THROW_AWAY, standing(jar));
    }
    assertEquals(Standing.Kind.ON_SHELF, standing(8));
  }

  @Test
  void aDayHandedInTwiceIsRecordedOnce() throws Exception {
    seal(report(1, ran(25), "3", "none"));
    Sealed again = seal(report(1, ran(25), "3", "none"), report(2, ran(25), "none", "none"));
    assertEquals(
        List.of("load 08..13", "outcome 08..13"),
        again.entries().stream().map(e -> e.what().kind() + " " + e.jars()).toList());
  }

  @Test
  void aDayOfWhichHalfReachedTheDiskIsCompleted() throws Exception {
    List<Entry> all = seal(report(1, ran(25), "3", "none")).entries();
    ledger.removeAll(all.subList(1, all.size()));
    assertEquals(
        List.of("outcome 01 02 04..07", "outcome 03"),
        seal(report(1, ran(25), "3", "none")).entries().stream()
            .map(e -> e.what().kind() + " " + e.jars())
            .toList());
  }

  @Test
  void aSecondStoryOfTheSameLoadIsRefused() throws Exception {
    seal(report(1, ran(25), "3", "none"));
    assertEquals(
        List.of("load 1 of lot " + PLUMS + " is recorded already, otherwise"),
        refusals(report(1, ran(26), "3", "none")));
    assertEquals(
        List.of(
            "jar " + PLUMS.jar(3) + " is to recan already, told otherwise",
            "jar " + PLUMS.jar(4) + " is on shelf already, told otherwise"),
        refusals(report(1, ran(25), "4", "none")));
  }

  @Test
  void jarsNeverFilledAreLeftOut() throws Exception {
    LoadReport short12 =
        Told.of(PLUMS, 2)
            .ran(ran(25))
            .look("none", "none", "none")
            .unfilled("12 13")
            .note(8, "a nick in the rim")
            .report();
    seal(short12);
    assertEquals(Standing.Kind.UNFILLED, standing(13));
    assertEquals(Standing.Kind.ON_SHELF, standing(11));
    assertEquals(
        "a nick in the rim",
        pantry().jar(PLUMS.jar(8)).orElseThrow().outcome().orElseThrow().note());
  }

  @Test
  void allThatIsWrongIsSaidAtOnce() {
    Observed backwards =
        new Observed(
            Optional.of(TEN),
            Optional.of(TEN.plusMinutes(5)),
            Optional.of(TEN.minusMinutes(1)),
            Ticked.YES,
            Optional.empty(),
            0,
            Ticked.NO,
            Ticked.BLANK,
            Ticked.BLANK);
    LoadReport tomatoes = Told.of(TOMATOES, 1).ran(ran(25)).report();
    LoadReport contradicts = Told.of(PLUMS, 2).ran(ran(25)).look("1", "9", "9").report();
    assertEquals(
        List.of(
            "lot " + TOMATOES + " is not in the ledger",
            "a last start is given, but no restart",
            "the end 2026-08-24T09:59-05:00 lies before the start 2026-08-24T10:00-05:00",
            "load 3 is not planned for lot " + PLUMS,
            "unsealed: 01 are not of load 2",
            "jars 09 are said to have lost some and half"),
        refusals(
            tomatoes,
            report(1, backwards, "none", "none"),
            report(3, ran(25), "none", "none"),
            contradicts));
  }

  @Test
  void timesThatCannotBeAreRefused() {
    Observed tomorrow =
        new Observed(
            Optional.of(NEXT_DAY),
            Optional.empty(),
            Optional.of(NEXT_DAY.plusMinutes(25)),
            Ticked.YES,
            Optional.empty(),
            0,
            Ticked.NO,
            Ticked.BLANK,
            Ticked.BLANK);
    assertEquals(
        List.of("2026-08-25T00:25-05:00 has not come yet"),
        refusals(Told.of(PLUMS, 1).ran(tomorrow).report()));
    assertEquals(
        List.of("from 2026-08-24T10:00-05:00 to 2026-08-24T22:01-05:00 is more than 12 hours"),
        refusals(Told.of(PLUMS, 1).ran(ran(12 * 60 + 1)).report()));
  }

  @Test
  void aJarInTwoLoadsIsRefused() {
    LoadReport wide =
        Told.of(PLUMS, 2).jars("7-13").ran(ran(25)).look("none", "none", "none").report();
    assertEquals(
        List.of("jar " + PLUMS.jar(7) + " is listed twice"),
        refusals(report(1, ran(25), "none", "none"), wide));
  }
}
