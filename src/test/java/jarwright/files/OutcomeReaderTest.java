package jarwright.files;

import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.TOMATOES;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.facts;
import static jarwright.pantry.InventedKitchen.numbered;
import static jarwright.pantry.InventedKitchen.planned;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import jarwright.pantry.Liquid;
import jarwright.pantry.LoadReport;
import jarwright.pantry.Pantry;
import jarwright.pantry.Planned;
import jarwright.pantry.Required;
import jarwright.pantry.Ticked;
import jarwright.problem.Refused;
import jarwright.quantity.GaugePressure;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutcomeReaderTest {
  private static final ZoneId ZONE = ZoneId.of("America/Chicago");
  private static final Required PRESSURE =
      new Required(35, Optional.of(GaugePressure.psi(11)), true);
  private static final Pantry PANTRY =
      Pantry.of(
          numbered(
              List.of(
                  entry(PLUMS, "", planned("plums-halved-or-whole", 7, 6)),
                  entry(
                      TOMATOES,
                      "",
                      new Planned(facts("tomatoes-crushed"), 7, List.of(7), PRESSURE)))),
          FoodTables::own);
  private static final String HEAD =
      "lot,load,start,end,kept,restarts,cloudy,unsealed,some_lost,half_lost,note\n";

  @TempDir Path folder;

  private List<LoadReport> read(String text) throws Exception {
    Path file = folder.resolve("day.csv");
    Files.writeString(file, text);
    return OutcomeReader.read(file, PANTRY, ZONE);
  }

  /** Line, column and words of each problem. */
  private List<String> problems(String text) {
    Refused refused = assertThrows(Refused.class, () -> read(text));
    return refused.problems().stream()
        .map(p -> p.where().line() + ":" + p.where().column() + ": " + p.what())
        .toList();
  }

  private static OffsetDateTime at(String time) {
    return OffsetDateTime.parse("2026-08-24T" + time + "-05:00");
  }

  @Test
  void oneRowTellsOfALoad() throws Exception {
    LoadReport report = read(HEAD + PLUMS + ",2,10:05,10:40,yes,,no,3,1-2 5,none,calm\n").get(0);
    assertEquals(PLUMS, report.lot());
    assertEquals(2, report.load());
    assertEquals(Optional.empty(), report.jars());
    assertEquals(Optional.of(at("10:05")), report.seen().orElseThrow().start());
    assertEquals(Optional.of(at("10:40")), report.seen().orElseThrow().end());
    assertEquals(Ticked.YES, report.seen().orElseThrow().kept());
    assertEquals(Ticked.NO, report.seen().orElseThrow().cloudy());
    assertEquals(Ticked.BLANK, report.seen().orElseThrow().acid());
    assertEquals(0, report.seen().orElseThrow().restarts());
    assertEquals("03", report.look().orElseThrow().unsealed().toString());
    assertEquals("01 02 05", report.look().orElseThrow().someLost().toString());
    assertEquals("", report.look().orElseThrow().halfLost().toString());
    assertEquals("calm", report.note());
    assertEquals("day.csv:2:1", report.where().toString().replaceAll(".*/", ""));
  }

  @Test
  void jarsCanBeToldOneByOne() throws Exception {
    List<LoadReport> reports =
        read(
            "lot,load,start,end,kept,cloudy,jar,sealed,liquid,note\n"
                + (PLUMS + ",1,10:05,10:40,yes,no,,,,\n")
                + ",,,,,,1,yes,none,\n"
                + ",,,,,,2,no,some,a nick\n"
                + (",,,,,,\"" + PLUMS.jar(3) + "\",yes,half or more,\n")
                + ",,,,,,4 5,x,none,\n");
    assertEquals(1, reports.size());
    LoadReport report = reports.get(0);
    assertEquals("01..05", report.jars().orElseThrow().toString());
    assertEquals("02", report.look().orElseThrow().unsealed().toString());
    assertEquals("02", report.look().orElseThrow().someLost().toString());
    assertEquals("03", report.look().orElseThrow().halfLost().toString());
    assertEquals("{2=a nick}", report.notes().toString());
  }

  @Test
  void aNoteOnAJarMayStandBesideTheLists() throws Exception {
    LoadReport report =
        read(HEAD.replace("note", "jar,note")
                + (PLUMS + ",1,10:05,10:40,yes,,no,3,none,none,,\n")
                + (PLUMS + ",1,,,,,,,,,3,rim was nicked\n"))
            .get(0);
    assertEquals("{3=rim was nicked}", report.notes().toString());
    assertEquals("03", report.look().orElseThrow().unsealed().toString());
    assertEquals(Liquid.NONE, Liquid.parse("none"));
  }

  @Test
  void aSpreadsheetsHabitsAreRead() throws Exception {
    String semicolons =
        "\uFEFFsep=;\r\nLot;Load;Start;End;Kept;Cloudy;Unsealed;Some Lost;Half Lost\r\n\r\n"
            + PLUMS.toString().toLowerCase(java.util.Locale.ROOT)
            + ";1;10:05:00;10.40;YES;n;none;\"1, 2\";none\r\n;;;;;;;;\r\n";
    LoadReport report = read(semicolons).get(0);
    assertEquals(Optional.of(at("10:40")), report.seen().orElseThrow().end());
    assertEquals("01 02", report.look().orElseThrow().someLost().toString());
    LoadReport evening =
        read(HEAD + PLUMS + ",1,8:30 PM,9:10 pm,y,0,no,,,\n".replace(",,,", ",none,none,none,"))
            .get(0);
    assertEquals(Optional.of(at("20:30")), evening.seen().orElseThrow().start());
  }

  @Test
  void aProcessMayRunPastMidnightAndThroughAChangeOfTheClock() throws Exception {
    LoadReport report = read(HEAD + PLUMS + ",1,23:50,00:20,yes,,no,none,none,none,\n").get(0);
    assertEquals(30, report.seen().orElseThrow().fullRun().orElseThrow().toMinutes());
    String changes =
        HEAD.replace("lot,", "lot,date,")
            + PLUMS
            + ",2026-11-01,1,00:50,01:20,yes,,no,none,none,none,\n"
            + PLUMS
            + ",2026-03-08,2,01:50,03:20,yes,,no,none,none,none,\n";
    List<LoadReport> reports = read(changes);
    assertEquals(30, reports.get(0).seen().orElseThrow().fullRun().orElseThrow().toMinutes());
    assertEquals(30, reports.get(1).seen().orElseThrow().fullRun().orElseThrow().toMinutes());
  }

  @Test
  void aRestartIsToldWithItsTime() throws Exception {
    String text =
        "lot,start,last-start,end,kept,restarts,cloudy,unsealed,some-lost,half-lost\n"
            + PLUMS
            + ",10:00,10:20,10:50,yes,1,no,none,none,none\n";
    assertEquals(30, read(text).get(0).seen().orElseThrow().fullRun().orElseThrow().toMinutes());
    assertEquals(List.of("2:1: last-start: is missing"), problems(text.replace("10:20", "")));
  }

  @Test
  void pressureIsReadInPsiOrInKilopascals() throws Exception {
    String text =
        "lot,start,end,kept,lowest_psi,cloudy,acid in every jar,vented,unsealed,some lost,half"
            + " lost\n"
            + TOMATOES
            + ",10:00,10:35,yes,11.5,no,yes,yes,none,none,none\n";
    assertEquals(
        Optional.of(GaugePressure.parse("11.5 psi")),
        read(text).get(0).seen().orElseThrow().lowest());
    assertEquals(
        Optional.of(GaugePressure.parse("76 kPa")),
        read(text.replace("11.5", "76 kPa")).get(0).seen().orElseThrow().lowest());
  }

  /** Nothing is taken for granted: what was forgotten is asked for. */
  @Test
  void whatWasLeftEmptyIsAskedFor() {
    assertEquals(
        List.of(
            "2:1: start: is missing",
            "2:1: end: is missing",
            "2:1: kept: is missing",
            "2:1: acid-in-every-jar: is missing",
            "2:1: vented: is missing"),
        problems(HEAD + TOMATOES + ",1,,,,,,,,,\n"));
    assertEquals(
        List.of(
            "2:1: some-lost: is missing", "2:1: half-lost: is missing", "2:1: cloudy: is missing"),
        problems(HEAD + PLUMS + ",1,10:05,10:40,yes,,,3,,,\n"));
  }

  @Test
  void aQuestionMarkSaysThatNobodyKnows() throws Exception {
    LoadReport report = read(HEAD + PLUMS + ",1,?,10:40,?,,?,none,none,none,\n").get(0);
    assertEquals(Optional.empty(), report.seen().orElseThrow().start());
    assertEquals(Ticked.BLANK, report.seen().orElseThrow().kept());
    assertEquals(Ticked.BLANK, report.seen().orElseThrow().cloudy());
  }

  @Test
  void everyWrongCellIsToldWithItsPlace() {
    String text =
        HEAD.replace("note", "nots")
            + "260824A-0,1,10:05,10:40,yes,,no,none,none,none,\n"
            + (PLUMS + ",0,25:00,10:40,maybe,-1,no,seven,7-1,none,\n")
            + (PLUMS + ",1,25:00,10:40,maybe,-1,no,seven,7-1,none,\n")
            + "2.61E+00,1,10:05,10:40,yes,,no,none,none,none,\n";
    List<String> problems = problems(text);
    assertEquals("1:70: there is no key \"nots\"", problems.get(0));
    assertEquals(
        List.of(
            "2:1: lot: \"260824A-0\" is mistyped: its check character does not fit",
            "3:11: load: takes a whole number from 1 to 99, not \"0\"",
            "4:13: start: \"25:00\" is no time of day",
            "4:25: kept: \"maybe\" is neither yes nor no",
            "4:31: restarts: takes a whole number from 0 to 20, not \"-1\"",
            "4:37: unsealed: \"seven\" is no list of jar numbers like 1-7, 9 or none",
            "4:43: some-lost: jar numbers run upwards, not 7-1",
            "5:1: lot: \"2.61E+00\" is mistyped: a lot looks like YYMMDD, a letter, -, a check"
                + " character"),
        problems.subList(1, problems.size()));
  }

  @Test
  void whatDoesNotFitTogetherIsTold() {
    String jars =
        "lot,load,jars,start,end,kept,cloudy,unsealed,some-lost,half-lost,jar,sealed,liquid\n";
    assertEquals(
        List.of("3:1: load 1 of lot " + PLUMS + " is told of twice"),
        problems(
            HEAD
                + (PLUMS + ",1,10:05,10:40,yes,,no,none,none,none,\n")
                + (PLUMS + ",1,10:05,10:40,yes,,no,none,none,none,\n")));
    assertEquals(
        List.of("2:1: nothing tells how load 1 of lot " + PLUMS + " was processed"),
        problems(jars + PLUMS + ",1,,,,,,,,,1,yes,none\n"));
    assertEquals(
        List.of(
            "3:23: sealed: the load's row says otherwise of its seal",
            "4:27: liquid: the load's row says otherwise of its liquid"),
        problems(
            jars
                + (PLUMS + ",1,,10:05,10:40,yes,no,1,none,none,,,\n")
                + (PLUMS + ",1,,,,,,,,,1,yes,none\n")
                + (PLUMS + ",1,,,,,,,,,2,yes,some\n")));
    assertEquals(
        List.of("2:13: jars: jars 02 have no row", "4:21: jar: jar 01 has a row already"),
        problems(
            jars
                + (PLUMS + ",1,1 2,10:05,10:40,yes,no,,,,,,\n")
                + (PLUMS + ",1,,,,,,,,,1,yes,none\n")
                + (PLUMS + ",1,,,,,,,,,1,yes,none\n")));
  }

  @Test
  void aJarOfAnotherLotThanItsRowIsTold() {
    assertEquals(
        List.of("3:13: jar: the jar is not of lot " + PLUMS),
        problems(
            "lot,load,jar,start,end,kept,cloudy,sealed,liquid\n"
                + (PLUMS + ",1,1,10:05,10:40,yes,no,yes,none\n")
                + (PLUMS + ",1," + TOMATOES.jar(2) + ",,,,,yes,none\n")));
  }

  @Test
  void aFileWithoutRowsIsRefused() {
    assertEquals(List.of("1:1: there is no row below the header"), problems(HEAD));
  }
}
