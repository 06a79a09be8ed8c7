package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How what happened gets into the ledger: by options, by questions, from a file; and how not. */
class SealTest {
  private static final String PLUMS = Household.PLUMS;
  private static final String FIRST = "--load 1 --start 12:00 --end 12:30 --kept yes --cloudy no";

  @TempDir Path folder;
  private Household house;

  @BeforeEach
  void makeTheKit() throws Exception {
    house = Household.withKit(folder);
  }

  private int seal(String line) {
    return house.run(("seal " + line).split(" "));
  }

  @Test
  void nothingIsTakenForSealedBySilence() throws Exception {
    List<String> before = house.ledger();
    assertEquals(1, seal(PLUMS + " " + FIRST));
    for (String list : List.of("unsealed", "some-lost", "half-lost")) {
      assertTrue(house.told().contains(list + ": is missing"), house.told());
    }
    assertEquals(1, seal(PLUMS + " " + FIRST + " --unsealed none"));
    assertEquals(1, seal(PLUMS + " --load 1 --sealed all"));
    assertTrue(house.told().contains("start: is missing"), house.told());
    assertTrue(house.told().contains("kept: is missing"), house.told());
    assertEquals(1, seal(Household.TOMATOES + " " + FIRST + " --sealed all"));
    assertTrue(house.told().contains("acid-in-every-jar: is missing"), house.told());
    assertEquals(1, seal(Household.BEANS + " " + FIRST + " --sealed all"));
    assertTrue(house.told().contains("vented: is missing"), house.told());
    assertEquals(before, house.ledger());
    assertEquals(
        0, seal(PLUMS + " " + FIRST + " --unsealed none --some-lost none --half-lost none"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 | 260824A-X --start 12:00 | mistyped: its check character does not fit",
        "1 | 260825A-P --start 12:00 | the ledger has no lot of this code",
        "2 | %s --start 12:00 --end 12:30 | has 2 loads; say before each one's times which",
        "1 | %s --load 3 --start 12:00 --end 12:30 --kept yes --cloudy no --sealed all"
            + "| load 3 is not planned",
        "1 | %s --load 1 --start noon --end 12:30 --kept yes --cloudy no --sealed all"
            + "| \"noon\" is no time of day",
        "1 | %s --load 1 --start 12:00 --end 12:30 --kept perhaps --cloudy no --sealed all"
            + "| \"perhaps\" is neither yes nor no",
        "1 | %s --load 1 --start 13:00 --end 13:31 --kept yes --cloudy no --sealed all"
            + "| has not come yet",
        "1 | %s --load 1 --start 12:30 --end 12:00 --kept yes --cloudy no --sealed all"
            + "| has not come yet",
        "1 | %s --load 1 --start 12:00 --end 12:30 --kept yes --cloudy no --sealed all"
            + " --unsealed 8 | 08 are not of load 1",
        "1 | %s --load 1 --start 12:00 --end 12:30 --kept yes --cloudy no --sealed all"
            + " --some-lost 3 --half-lost 3 | said to have lost some and half",
        "2 | %s --load 1 --start 12:00 --end 12:30 --kept yes --cloudy no --sealed 1..7"
            + "| --sealed takes all",
        "2 | %s --load 1 --start 12:00 --start 12:01 | --start is given twice",
        "2 | %s | seal needs to be told what happened",
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

  @Test
  void whereThereIsNoHouseholdItSaysSo() throws Exception {
    assertEquals(1, seal(PLUMS + " " + FIRST + " --sealed all --pantry nowhere"));
    assertTrue(house.told().contains("no ledger yet"), house.told());
    assertFalse(Files.exists(house.file("nowhere")));
  }

  @Test
  void whatStandsBeforeTheFirstLoadHoldsForAll() throws Exception {
    String line =
        PLUMS
            + " --kept yes --cloudy no --sealed all --load 1 --start 11:00 --end 11:30 --load 2"
            + " --start 12:00 --end 12:30 --some-lost 9 --note 9=seeds_under_the_lid";
    assertEquals(0, seal(line), house.told());
    assertTrue(house.shown().contains("jars 01..07: ONTO THE SHELF, cellar B3."), house.shown());
    assertTrue(house.shown().contains("jars 08 10..14: ONTO THE SHELF, cellar B3."));
    assertTrue(house.shown().contains("jar 09: ONTO THE SHELF, cellar B3, USE FIRST."));
    assertTrue(house.lastEvent().contains("note=seeds_under_the_lid"), house.lastEvent());
  }

  @Test
  void sealedTwiceIsRefusedWithWhatIsRecordedUntilThatIsUndone() throws Exception {
    assertEquals(0, seal(PLUMS + " " + FIRST + " --sealed all --unsealed 3"), house.told());
    List<String> once = house.ledger();
    assertEquals(0, seal(PLUMS + " " + FIRST + " --sealed all --unsealed 3"), house.told());
    assertTrue(house.shown().contains("recorded already; nothing was added"), house.shown());
    assertEquals(1, seal(PLUMS + " " + FIRST + " --sealed all"));
    assertTrue(house.told().contains("260824A-T/03: can again, freeze"), house.told());
    assertTrue(house.told().contains("jarwright undo 5 6 7, then seal again"), house.told());
    assertEquals(once, house.ledger());
    assertEquals(0, house.run("undo", "5", "6", "7"), house.told());
    assertEquals(0, seal(PLUMS + " " + FIRST + " --sealed all"), house.told());
    assertTrue(house.shown().contains("jars 01..07: ONTO THE SHELF"), house.shown());
  }

  @Test
  void asksQuestionByQuestionUntilEachIsAnswered() throws Exception {
    List<String> typed =
        List.of(
            "",
            "none",
            "yes",
            "",
            "12.00",
            "maybe",
            "yes",
            "12:45",
            "no",
            "3",
            "",
            "none",
            "4-5",
            "lid 3 was old",
            "yes");
    assertEquals(0, house.answering(typed, "seal", Household.TOMATOES), house.told());
    String shown = house.shown();
    assertTrue(shown.contains("silence is no answer here"), shown);
    assertTrue(shown.contains("\"maybe\" is neither yes nor no"), shown);
    assertTrue(shown.contains("jar 03: NOT FOR THE SHELF"), shown);
    assertTrue(shown.contains("jars 04 05: INTO THE REFRIGERATOR NOW"), shown);
    assertEquals(9, house.ledger().size());
  }

  @Test
  void asksOfAPressureCannerWhatIsItsOwn() throws Exception {
    List<String> typed =
        List.of(
            "2026-08-24",
            "9",
            "no",
            "12:00",
            "no",
            "1",
            "12:05",
            "yes",
            "12:25",
            "?",
            "no",
            "none",
            "none",
            "none",
            "",
            "yes");
    assertEquals(0, house.answering(typed, "seal", Household.BEANS), house.told());
    assertTrue(house.shown().contains("at no less than 11 psi"), house.shown());
    assertTrue(house.shown().contains("The canner was not vented in full."), house.shown());
    assertTrue(house.shown().contains("260824C-P/09 never filled"), house.shown());
    assertTrue(house.shown().contains("jars 01..08: NOT FOR THE SHELF"), house.shown());
  }

  /** AIB 539 (2015) Guide 1: whenever the boil is lost, the whole time starts again. */
  @ParameterizedTest
  @CsvSource({"yes, ONTO THE SHELF", "no, Boil or pressure was lost", "?, Nobody recorded"})
  void aBoilLostAgainAfterTheRestartIsAskedFor(String heldThen, String shown) throws Exception {
    String typed = "|none|yes|11:30|no|1|11:45|" + heldThen + "|12:30|no|none|none|none||yes";
    List<String> lines = List.of(typed.split("\\|"));
    assertEquals(0, house.answering(lines, "seal", Household.TOMATOES), house.told());
    assertTrue(house.shown().contains(shown), house.shown());
    assertEquals(heldThen.equals("yes"), house.shown().contains("ONTO THE SHELF"), house.shown());
  }

  @Test
  void recordsNothingWhereTheAnswersEndOrThePersonDeclines() throws Exception {
    List<String> before = house.ledger();
    List<String> typed =
        new ArrayList<>(
            List.of("", "none", "yes", "12:00", "yes", "12:45", "no", "none", "none", "none", ""));
    assertEquals(1, house.answering(typed.subList(0, 5), "seal", Household.TOMATOES));
    assertTrue(house.told().contains("the answers ended early"), house.told());
    typed.add("no");
    assertEquals(1, house.answering(typed, "seal", Household.TOMATOES));
    assertTrue(house.told().contains("nothing was recorded"), house.told());
    assertEquals(before, house.ledger());
  }

  @Test
  void asksNothingOfALotThatIsRecorded() throws Exception {
    assertEquals(
        0,
        seal(
            Household.TOMATOES
                + " "
                + FIRST.replace("12:30", "12:45")
                + " --acid yes --sealed all"));
    assertEquals(1, house.answering(List.of(), "seal", Household.TOMATOES));
    assertTrue(house.told().contains("recorded as event 5"), house.told());
    assertEquals("", house.shown());
  }

  @Test
  void takesAWholeDayFromAFileAndTheSameFileAgain() throws Exception {
    house.write(
        "day.csv",
        """
        lot;load;start;end;kept;cloudy;acid in every jar;vented;unsealed;some lost;half lost
        260824A-T;1;11:00;11:30;yes;no;;;none;none;none
        ;2;12:00;12:30;yes;no;;;9;none;none
        260824B-R;;12:10;12:55;yes;no;yes;;none;none;none
        260824C-P;;12:10;12:30;yes;no;;yes;none;2;none
        """);
    assertEquals(0, seal("--from day.csv --by Anna"), house.told());
    assertTrue(house.shown().contains("260824A-T, load 2, jars 08..14"), house.shown());
    assertTrue(house.shown().contains("jar 09: NOT FOR THE SHELF"), house.shown());
    assertTrue(house.shown().contains("jar 02: ONTO THE SHELF, USE FIRST."), house.shown());
    List<String> once = house.ledger();
    assertEquals(0, seal("--from day.csv --by Anna"), house.told());
    assertEquals(once, house.ledger());
  }

  @Test
  void aFileWithAProblemIsRefusedWhole() throws Exception {
    List<String> before = house.ledger();
    house.write(
        "day.csv",
        """
        lot,load,start,end,kept,cloudy,unsealed,some lost,half lost
        260824A-T,1,11:00,11:30,yes,no,none,none,none
        260824A-X,2,12:00,12:30,yes,no,9,none,none
        """);
    assertEquals(1, seal("--from day.csv"));
    assertTrue(house.told().contains("day.csv:3:1: lot: \"260824A-X\" is mistyped"), house.told());
    assertEquals(before, house.ledger());
  }

  @Test
  void freezesTheRecordAsPlanned() throws Exception {
    Path record = house.file("pantry/batches/" + PLUMS + ".yaml");
    String planned = Files.readString(record);
    assertEquals(0, seal(PLUMS + " " + FIRST + " --sealed all"), house.told());
    String plan = Files.readString(house.file("plan.yaml"));
    house.write("plan.yaml", plan.replace("shelf: cellar B3", "shelf: attic"));
    assertEquals(1, house.run("kit", "plan.yaml"));
    assertTrue(house.told().contains("its record as planned stays"), house.told());
    assertEquals(planned, Files.readString(record));
  }

  @Test
  void helpNamesEveryColumnOfADaysFile() {
    assertEquals(0, house.run("seal", "--help"));
    Arrays.asList(
            "start", "last-start", "end", "kept", "lowest-psi", "restarts", "cloudy", "vented")
        .forEach(c -> assertTrue(house.shown().contains("--" + c + " "), house.shown()));
  }
}
