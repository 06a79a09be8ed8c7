package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Batches that were planned and never made, and those that are planned twice. */
class CancelTest {
  private static final String PLUMS = Household.PLUMS;

  @TempDir Path folder;
  private Household house;

  @BeforeEach
  void plan() throws Exception {
    house = Household.withKit(folder);
  }

  private String run(String... args) {
    assertEquals(0, house.run(args), house.told());
    return house.shown();
  }

  @Test
  void aCancelledLotCountsNowhereAndSaysNothingButThat() throws Exception {
    String told = run("cancel", PLUMS, "--why", "rained in", "--by", "Ana");
    assertTrue(told.contains("260824A-T Plums, halved or whole, quart: cancelled"), told);
    assertTrue(house.lastEvent().contains(",260824A-T,,cancelled,why=rained in,Ana,"), "event");
    assertFalse(run("shelf").contains(PLUMS), house.shown());
    house.at("2026-09-01T12:00:00-05:00");
    assertTrue(
        run("shelf", "--year").contains("18 jars planned, results not recorded"), "the others");
    assertFalse(house.shown().contains("Plums"), house.shown());
    String scanned = run("scan", "260824A-T/03");
    assertTrue(scanned.contains("CANCELLED ON AUGUST 24, 2026: NEVER MADE"), scanned);
    assertTrue(scanned.contains("do not eat it: nothing is known of it"), scanned);
    assertFalse(scanned.contains("30 min") || scanned.contains("2027"), scanned);
    assertTrue(run("trace", PLUMS).contains("cancelled (rained in): it was never made"));
    run("pages", "-o", "site");
    assertFalse(Files.readString(house.file("site/index.html")).contains(PLUMS));
    String page = Files.readString(house.file("site/260824A-T/index.html"));
    assertTrue(page.contains("Cancelled on August 24, 2026") && !page.contains("30 min"), page);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 | cancel 260824A-T | is cancelled already",
        "1 | take 260824A-T/01 | Cancelled on August 24, 2026: never made",
        "1 | take plums | no jar in the house goes by that name",
        "1 | labels 260824A-T -o l.pdf | none of these jars gets a label",
        "1 | kit plan.yaml | this batch is lot 260824A-T, cancelled on 2026-08-24",
        "1 | check plan.yaml | jarwright undo 5",
        "1 | toss 260824A-T/01 --why broken | Cancelled on",
        "1 | seal 260824A-T --load 1 --start 12:00 --end 12:30 --kept yes --cloudy no --sealed all"
            + " | was cancelled on",
        "1 | trace 260824A-T/01 --spoiled leaks | is cancelled",
      })
  void nothingIsDoneWithJarsThatNeverWere(int exit, String line, String told) throws Exception {
    run("cancel", PLUMS);
    List<String> before = house.ledger();
    assertEquals(exit, house.run(line.split(" ")), house.shown());
    assertTrue(house.told().contains(told), house.told());
    assertEquals(before, house.ledger());
  }

  @Test
  void takenBackItIsPlannedAsBefore() {
    run("cancel", PLUMS);
    run("undo");
    assertTrue(run("shelf").contains("Results not recorded yet: 260824A-T"), house.shown());
    run("kit", "plan.yaml");
    run("labels", PLUMS, "-o", "l.pdf");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 | cancel | cancel needs whole lots",
        "2 | cancel 260824A-T/03 | cancel needs whole lots",
        "2 | cancel plums | cancel needs whole lots",
        "1 | cancel 260824A-X | is mistyped",
        "1 | cancel 260824Z-G | no lot of this code",
      })
  void wrongUseIsTold(int exit, String line, String told) throws Exception {
    List<String> before = house.ledger();
    assertEquals(exit, house.run(line.split(" ")), house.shown());
    assertTrue(house.told().contains(told), house.told());
    assertEquals(before, house.ledger());
  }

  @Test
  void whatWasPackedIsNotCancelled() throws Exception {
    run("toss", "260824A-T/01", "--why", "broken");
    List<String> before = house.ledger();
    assertEquals(1, house.run("cancel", PLUMS, "260824B-R"));
    assertTrue(house.told().contains("something has been recorded of it"), house.told());
    assertEquals(before, house.ledger());
  }

  /** The plan was renamed: its jars would be there twice. */
  @Test
  void thePlanUnderAnotherNameSaysThatItsLotsAreThere() throws Exception {
    Files.copy(house.file("plan.yaml"), house.file("renamed.yaml"));
    run("check", "renamed.yaml");
    assertTrue(
        house
            .told()
            .contains(
                "The same 14 jars of Plums, halved or whole on 2026-08-24 are there already as lot"
                    + " 260824A-T, of plan plan.yaml, batch 1."),
        house.told());
    assertEquals(3, house.told().lines().filter(l -> l.startsWith("The same ")).count());
    run("kit", "renamed.yaml");
    assertTrue(house.told().contains("are there already as lot 260824A-T"), house.told());
    run("kit", "plan.yaml");
    run("cancel", "260824D-N");
    run("check", "plan.yaml");
    assertEquals(2, house.told().lines().filter(l -> l.startsWith("The same ")).count());
  }

  @Test
  void theSamePlanAgainSaysNothing() {
    run("kit", "plan.yaml");
    assertFalse(house.told().contains("The same "), house.told());
  }
}
