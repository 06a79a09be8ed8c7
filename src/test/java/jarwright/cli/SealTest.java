package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How what happened gets into the ledger: by options and from a file, at two times; and how not.
 */
class SealTest {
  private static final String PLUMS = Household.PLUMS;
  private static final String FIRST = "--load 1 --start 12:00 --end 12:30 --kept yes --cloudy no";
  private static final String SECOND = "--load 2 --start 11:00 --end 11:30 --kept yes --cloudy no";

  @TempDir Path folder;
  private Household house;

  @BeforeEach
  void makeTheKit() throws Exception {
    house = Household.withKit(folder);
  }

  private int seal(String line) {
    return house.run(("seal " + line).split(" "));
  }

  private void nextDay() {
    house.at("2026-08-25T08:00:00-05:00");
  }

  @Test
  @DisplayName("AIB 539 (2015) Guide 1: cool 12 to 24 hours, then test the seals")
  void theLoadIsRecordedAtItsEndAndItsSealsTwelveHoursLater() throws Exception {
    assertEquals(0, seal(PLUMS + " " + FIRST), house.told());
    assertTrue(house.shown().contains("processed as tested"), house.shown());
    assertTrue(house.shown().contains("jars 01..07: COOLING."), house.shown());
    assertTrue(house.shown().contains("Test the seals from 2026-08-25 00:30 on"), house.shown());
    assertTrue(house.lastEvent().contains(",01..07,load,"), house.lastEvent());
    List<String> once = house.ledger();

    house.at("2026-08-25T00:29:59-05:00");
    assertEquals(1, seal(PLUMS + " --sealed all"));
    assertTrue(
        house.told().contains("still cooling: their seals can be told from 2026-08-25 00:30 on"),
        house.told());
    assertEquals(once, house.ledger());

    house.at("2026-08-25T00:30:00-05:00");
    assertEquals(0, seal(PLUMS + " --sealed all --unsealed 3 --note 4=seeds"), house.told());
    assertTrue(house.shown().contains("jars 01 02 04..07: OK FOR THE SHELF"), house.shown());
    assertTrue(house.shown().contains("jar 03: DO NOT SHELVE"), house.shown());
    assertTrue(house.ledger().toString().contains("note=seeds"), house.ledger().toString());
  }

  /** Said together, a minute after the boil or eleven hours: nothing is sound that early. */
  @ParameterizedTest
  @CsvSource({"2026-08-24T12:31:00-05:00", "2026-08-25T00:29:59-05:00"})
  void noSealIsBelievedBeforeTheJarsHaveCooled(String time) throws Exception {
    house.at(time);
    List<String> before = house.ledger();
    assertEquals(1, seal(PLUMS + " " + FIRST + " --sealed all"));
    assertTrue(house.told().contains("from 2026-08-25 00:30 on"), house.told());
    assertEquals(1, seal(PLUMS + " " + FIRST + " --unsealed 3 --some-lost none --half-lost none"));
    assertEquals(1, seal(PLUMS + " " + FIRST + " --sealed all --otherwise bulges=3"));
    assertEquals("", house.shown());
    assertEquals(before, house.ledger());
  }

  @Test
  void aCoolingJarIsShownAsCoolingAndCannotBeTaken() throws Exception {
    assertEquals(0, seal(PLUMS + " " + FIRST), house.told());
    assertEquals(0, house.run("shelf"));
    assertTrue(house.shown().contains("COOLING: DO NOT EAT YET: test the seals"), house.shown());
    assertTrue(house.shown().contains("test from 2026-08-25 00:30"), house.shown());
    assertEquals(1, house.run("take", PLUMS + "/01"));
    assertTrue(house.told().contains("Cooling"), house.told());
    assertEquals(1, house.run("take", "plums"));
    assertEquals(1, house.run("move", PLUMS + "/01", "--to", "attic"));
    assertEquals(0, house.run("scan", PLUMS + "/01"), house.told());
    assertTrue(house.shown().contains("COOLING: TEST THE SEAL FROM"), house.shown());
    nextDay();
    assertEquals(0, house.run("scan", PLUMS + "/01"), house.told());
    assertTrue(house.shown().contains("TEST THE SEAL NOW"), house.shown());
    assertEquals(1, house.run("take", "plums"));
    assertEquals(1, house.run("labels", PLUMS, "--sealed", "-o", "x.pdf"), house.told());
    assertEquals(0, house.run("labels", PLUMS, "-o", "x.pdf"), house.told());
    assertTrue(house.told().contains("cooling: put their labels on when"), house.told());
  }

  /** What has to be done at once is said at once: the two hours do not wait for the seals. */
  @Test
  void aLoadThatFailedSaysAtOnceWhatToDo() throws Exception {
    assertEquals(0, seal(PLUMS + " " + FIRST.replace("12:30", "12:29")), house.told());
    assertTrue(house.shown().contains("RE-CAN, FREEZE OR REFRIGERATE BY 2026-08-24 14:29"));
    nextDay();
    assertEquals(0, seal(PLUMS + " --load 1 --sealed all"), house.told());
    assertTrue(house.shown().contains("recorded already"), house.shown());
  }

  @Test
  void nothingIsTakenForSealedBySilence() throws Exception {
    nextDay();
    List<String> before = house.ledger();
    assertEquals(1, seal(PLUMS + " " + FIRST + " --unsealed none"));
    for (String list : List.of("some-lost", "half-lost")) {
      assertTrue(house.told().contains(list + ": is missing"), house.told());
    }
    assertEquals(1, seal(PLUMS + " --load 1 --sealed all"));
    assertTrue(house.told().contains("nothing tells how load 1"), house.told());
    assertEquals(1, seal(PLUMS + " --load 1 --sealed all --start 12:00"));
    assertTrue(house.told().contains("end: is missing"), house.told());
    assertTrue(house.told().contains("kept: is missing"), house.told());
    assertEquals(1, seal(Household.TOMATOES + " " + FIRST + " --sealed all"));
    assertTrue(house.told().contains("acid-in-every-jar: is missing"), house.told());
    assertEquals(1, seal(Household.BEANS + " " + FIRST + " --sealed all"));
    assertTrue(house.told().contains("vented: is missing"), house.told());
    assertTrue(house.told().contains("gauge-tested: is missing"), house.told());
    assertEquals(before, house.ledger());
    assertEquals(
        0, seal(PLUMS + " " + FIRST + " --unsealed none --some-lost none --half-lost none"));
    assertEquals(0, seal(PLUMS + " " + SECOND.replace(" --cloudy no", "")), house.told());
    assertEquals(1, seal(PLUMS + " --load 2 --sealed all"));
    assertTrue(house.told().contains("cloudy: is missing"), house.told());
    assertEquals(0, seal(PLUMS + " --load 2 --sealed all --cloudy no"), house.told());
    assertTrue(house.shown().contains("jars 08..14: OK FOR THE SHELF, cellar"), house.shown());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 | 260824A-X --start 12:00 | mistyped: its check character does not fit",
        "1 | 260825A-P --start 12:00 | the ledger has no lot of this code",
        "2 | %s --start 12:00 --end 12:30 | has 2 loads; say before each one's times which",
        "1 | %s --load 3 --start 12:00 --end 12:30 --kept yes | load 3 is not planned",
        "1 | %s --load 1 --start noon --end 12:30 --kept yes | \"noon\" is no time of day",
        "1 | %s --load 1 --start 12:00 --end 12:30 --kept perhaps | is neither yes nor no",
        "1 | %s --load 1 --start 13:00 --end 13:31 --kept yes | has not come yet",
        "1 | %s --load 1 --start 12:30 --end 12:00 --kept yes | lies before the start 12:30",
        "1 | %s --load 1 --date 2026-08-23 --start 12:00 --end 12:30 --kept yes"
            + "| 2026-08-23 lies before the packing day 2026-08-24",
        "1 | %s --load 1 --start 12:00 --end 12:30 --kept yes --otherwise larger-jar=8"
            + "| 08 are not of load 1",
        "1 | %s --load 1 --start 12:00 --end 12:30 --kept yes --otherwise forced-cooling"
            + "| cannot be said of this canner",
        "1 | %s --load 1 --start 12:00 --end 12:30 --kept yes --otherwise burnt"
            + "| \"burnt\" is none of the words",
        "1 | 260824B-R --start 12:00 --end 12:45 --kept yes --acid-missing 10"
            + "| acid missing: 10 are not of load 1",
        "1 | 260824B-R --start 12:00 --end 12:45 --kept yes --acid yes --acid-missing 3"
            + "| acid-missing: does not agree with acid-in-every-jar",
        "1 | %s --load 1 --start 12:00 --end 12:30 --kept yes --note 3=nick"
            + "| comes before its seal is told",
        "2 | %s --load 1 --start 12:00 --end 12:30 --kept yes --cloudy no --sealed 1..7"
            + "| --sealed takes all",
        "2 | %s --load 1 --start 12:00 --start 12:01 | --start is given twice",
        "2 | %s | tell seal what happened",
        "2 | %s 260824B-R --start 12:00 | seal needs one lot",
        "2 | --from day.csv %s | from the file; leave them out",
        "3 | --from day.csv | there is no such file",
      })
  void refusesWithOneClearMessageAndLeavesTheLedgerAlone(int exit, String line, String message)
      throws Exception {
    List<String> before = house.ledger();
    assertEquals(exit, seal(line.strip().replace("%s", PLUMS)), house.told());
    assertTrue(house.told().contains(message), house.told());
    assertEquals("", house.shown());
    assertEquals(before, house.ledger());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--unsealed 8 | unsealed: 08 are not of load 1",
        "--some-lost 3 --half-lost 3 | said to have lost some and half",
        "--otherwise bulges | needs the jars' numbers after it",
        "--unsealed 3 --in-refrigerator 3 | since: is missing",
        "--unsealed 3 --in-refrigerator 3 --since 2026-08-25T08:01 | has not come yet",
        "--unsealed 3 --in-refrigerator 3 --since 2026-08-24T12:29 | before the end",
        "--unsealed 3 --in-freezer 3 --in-refrigerator 3 --since 23:00"
            + "| in the refrigerator and in the freezer",
      })
  void refusesSealsThatMakeNoSense(String line, String message) throws Exception {
    assertEquals(0, seal(PLUMS + " " + FIRST), house.told());
    nextDay();
    List<String> before = house.ledger();
    assertEquals(1, seal(PLUMS + " --load 1 --sealed all " + line.strip()), house.shown());
    assertTrue(house.told().contains(message), house.told());
    assertEquals(before, house.ledger());
  }

  @Test
  void whereThereIsNoHouseholdItSaysSo() throws Exception {
    assertEquals(1, seal(PLUMS + " " + FIRST + " --pantry nowhere"));
    assertTrue(house.told().contains("no ledger yet"), house.told());
    assertFalse(Files.exists(house.file("nowhere")));
  }

  @Test
  void whatStandsBeforeTheFirstLoadHoldsForAll() throws Exception {
    nextDay();
    String line =
        PLUMS
            + " --kept yes --cloudy no --sealed all --load 1 --start 11:00 --end 11:30 --load 2"
            + " --start 12:00 --end 12:30 --some-lost 9 --note 9=seeds_under_the_lid";
    assertEquals(0, seal(line), house.told());
    assertTrue(house.shown().contains("jars 01..07: OK FOR THE SHELF, cellar B3."));
    assertTrue(house.shown().contains("jars 08 10..14: OK FOR THE SHELF, cellar B3."));
    assertTrue(house.shown().contains("jar 09: OK FOR THE SHELF, USE FIRST, cellar B3."));
    assertTrue(house.lastEvent().contains("note=seeds_under_the_lid"), house.lastEvent());
  }

  /** Jars are numbered through the lot, so nobody has to know which load each was in. */
  @Test
  void theSealsOfAllLoadsAreToldInOneGo() throws Exception {
    assertEquals(0, seal(PLUMS + " " + FIRST + " " + SECOND), house.told());
    nextDay();
    assertEquals(0, seal(PLUMS + " --sealed all --unsealed 3,9 --otherwise leaks=10"));
    // One leaking jar puts the others of its lot in doubt, in both loads.
    assertTrue(house.shown().contains("jars 01 02 04..07: DO NOT EAT YET"), house.shown());
    assertTrue(house.shown().contains("jars 08 11..14: DO NOT EAT YET"), house.shown());
    assertTrue(house.shown().contains("jar 10: THROW AWAY"), house.shown());
    assertEquals(1, seal(PLUMS + " --sealed all --unsealed 15"));
    assertTrue(house.told().contains("15 are not of load 1"), house.told());
  }

  /** One jar without acid condemns itself, not the load. */
  @Test
  void acidIsToldJarByJar() throws Exception {
    String run = " --start 12:00 --end 12:45 --kept yes --cloudy no --acid-missing 3,5";
    assertEquals(0, seal(Household.TOMATOES + run), house.told());
    assertTrue(house.shown().contains("jars 03 05: DO NOT SHELVE"), house.shown());
    assertTrue(house.shown().contains("The acid was left out."), house.shown());
    assertTrue(house.shown().contains("jars 01 02 04 06..09: COOLING."), house.shown());
    nextDay();
    assertEquals(0, seal(Household.TOMATOES + " --sealed all"), house.told());
    assertTrue(house.shown().contains("jars 01 02 04 06..09: OK FOR THE SHELF"));
    assertFalse(house.shown().contains("03"), house.shown());
  }

  /** Known only when the canner is opened, after the load was recorded. */
  @Test
  void whatWentOtherwiseMayBeToldLater() throws Exception {
    String run = " --start 12:00 --end 12:20 --kept yes --vented yes --gauge-tested yes";
    assertEquals(0, seal(Household.BEANS + run), house.told());
    assertTrue(house.shown().contains("COOLING"), house.shown());
    assertEquals(0, seal(Household.BEANS + " --otherwise forced-cooling"), house.told());
    assertTrue(house.shown().contains("cooled or opened too soon"), house.shown());
    assertTrue(house.shown().contains("BY 2026-08-24 14:20"), house.shown());
    assertEquals(1, seal(PLUMS + " " + FIRST + " --otherwise forced-cooling"));
  }

  /** A verdict that was given does not stand where more is told afterwards. */
  @Test
  void whatIsToldAfterTheVerdictIsNotPassedOver() throws Exception {
    nextDay();
    assertEquals(0, seal(PLUMS + " " + FIRST + " --sealed all"), house.told());
    List<String> before = house.ledger();
    assertEquals(1, seal(PLUMS + " --load 1 --otherwise recipe"));
    assertTrue(house.told().contains("is on shelf already, told otherwise"), house.told());
    assertTrue(house.told().contains("jarwright undo"), house.told());
    assertEquals(before, house.ledger());
  }

  @Test
  void signsOfSpoilageConcernTheWholeLot() throws Exception {
    assertEquals(0, seal(PLUMS + " " + FIRST), house.told());
    nextDay();
    assertEquals(0, seal(PLUMS + " --load 1 --sealed all --otherwise spurts=3"), house.told());
    assertTrue(house.shown().contains("jar 03: THROW AWAY"), house.shown());
    assertTrue(house.shown().contains("ANOTHER JAR OF THIS BATCH SPOILED"));
    assertFalse(house.shown().contains("OK FOR THE SHELF"), house.shown());
    assertEquals(1, house.run("take", PLUMS + "/04"));
  }

  @Test
  void sealedTwiceIsRefusedWithWhatIsRecordedUntilThatIsUndone() throws Exception {
    nextDay();
    assertEquals(0, seal(PLUMS + " " + FIRST + " --sealed all --unsealed 3"), house.told());
    List<String> once = house.ledger();
    assertEquals(0, seal(PLUMS + " " + FIRST + " --sealed all --unsealed 3"), house.told());
    assertTrue(house.shown().contains("recorded already; nothing was added"), house.shown());
    assertEquals(1, seal(PLUMS + " " + FIRST + " --sealed all"));
    assertTrue(house.told().contains("260824A-T/03"), house.told());
    assertTrue(house.told().contains("jarwright undo 5 6 7, then seal again"), house.told());
    assertEquals(once, house.ledger());
    assertEquals(0, house.run("undo", "5", "6", "7"), house.told());
    assertEquals(0, seal(PLUMS + " " + FIRST + " --sealed all"), house.told());
    assertTrue(house.shown().contains("jars 01..07: OK FOR THE SHELF"), house.shown());
  }

  /** A lot that was not needed at all, and a load of one. */
  @Test
  void noneOfTheJarsFilledIsToldWithoutTimes() throws Exception {
    assertEquals(0, seal(PLUMS + " --load 2 --unfilled all"), house.told());
    assertTrue(house.shown().contains("260824A-T/08..14 never filled"), house.shown());
    assertEquals(0, seal(Household.TOMATOES + " --unfilled all"), house.told());
    assertTrue(house.shown().contains("260824B-R/01..09 never filled"), house.shown());
    assertEquals(0, seal(PLUMS + " --unfilled 7"), house.told());
    assertEquals(1, seal(PLUMS + " " + FIRST + " --unfilled all"));
    assertTrue(house.told().contains("no jar of load 1 was filled"), house.told());
    assertEquals(0, seal(PLUMS + " " + FIRST), house.told());
    assertTrue(house.shown().contains("load 1, jars 01..06"), house.shown());
  }

  @Test
  void takesAWholeDayFromAFileAndTheSameFileFilledInFurther() throws Exception {
    String morning =
        """
        lot;load;start;end;kept;cloudy;acid_missing;vented;gauge tested;unsealed;some lost;half lost
        260824A-T;1;11:00;11:30;yes;no;;;;;;
        ;2;12:00;12:30;yes;no;;;;;;
        260824B-R;;12:10;12:55;yes;no;none;;;;;
        260824C-P;;12:10;12:30;yes;?;;yes;yes;;;
        """;
    house.write("day.csv", morning);
    assertEquals(0, seal("--from day.csv --by Anna"), house.told());
    assertTrue(house.shown().contains("260824A-T, load 2, jars 08..14"), house.shown());
    assertTrue(house.shown().contains("jars 08..14: COOLING"), house.shown());
    List<String> once = house.ledger();
    assertEquals(0, seal("--from day.csv --by Anna"), house.told());
    assertEquals(once, house.ledger());
    nextDay();
    String evening =
        morning
            .replace("11:30;yes;no;;;;;;", "11:30;yes;no;;;;none;none;none")
            .replace("12:30;yes;no;;;;;;", "12:30;yes;no;;;;9;none;none")
            .replace("yes;?;;yes;yes;;;", "yes;no;;yes;yes;none;2;none");
    house.write("day.csv", evening);
    assertEquals(0, seal("--from day.csv --by Anna"), house.told());
    assertTrue(house.shown().contains("jar 09: DO NOT SHELVE"), house.shown());
    assertTrue(house.shown().contains("jar 02: OK FOR THE SHELF, USE FIRST."), house.shown());
    assertFalse(house.shown().contains("260824B-R"), house.shown());
    List<String> twice = house.ledger();
    assertEquals(0, seal("--from day.csv --by Anna"), house.told());
    assertEquals(twice, house.ledger());
  }

  @Test
  void aFileWithAProblemIsRefusedWhole() throws Exception {
    List<String> before = house.ledger();
    house.write(
        "day.csv",
        """
        lot,load,start,end,kept,cloudy
        260824A-T,1,11:00,11:30,yes,no
        260824A-X,2,12:00,12:30,yes,no
        """);
    assertEquals(1, seal("--from day.csv"));
    assertTrue(house.told().contains("day.csv:3:1: lot: \"260824A-X\" is mistyped"), house.told());
    assertEquals(before, house.ledger());
  }

  @Test
  void freezesTheRecordAsPlanned() throws Exception {
    Path record = house.file("pantry/batches/" + PLUMS + ".yaml");
    String planned = Files.readString(record);
    assertEquals(0, seal(PLUMS + " " + FIRST), house.told());
    String plan = Files.readString(house.file("plan.yaml"));
    house.write("plan.yaml", plan.replace("shelf: cellar B3", "shelf: attic"));
    assertEquals(1, house.run("kit", "plan.yaml"));
    assertTrue(house.told().contains("its record as planned stays"), house.told());
    assertEquals(planned, Files.readString(record));
  }

  @Test
  void helpNamesEveryColumnOfADaysFile() {
    assertEquals(0, house.run("seal", "--help"));
    jarwright.files.OutcomeReader.COLUMNS.stream()
        .filter(c -> !Arrays.asList("lot", "jar", "liquid").contains(c))
        .forEach(c -> assertTrue(house.shown().contains("--" + c + " "), c + house.shown()));
  }
}
