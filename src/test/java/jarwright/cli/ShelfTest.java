package jarwright.cli;

import static jarwright.cli.Household.PLUMS;
import static jarwright.cli.Household.TOMATOES;
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

/** What stands on the shelves, as text, for a spreadsheet, for a program, on paper. */
class ShelfTest {
  @TempDir Path folder;
  private Household house;

  /** Plums 01 to 14 sound but 03 to be used first; tomatoes 08 for the refrigerator. */
  @BeforeEach
  void sealADay() throws Exception {
    house = Household.withKit(folder);
    String plums =
        "seal 260824A-T --kept yes --cloudy no --sealed all --load 1 --start 00:10 --end 00:41"
            + " --some-lost 3 --load 2 --start 00:50 --end 01:21";
    String tomatoes =
        "seal 260824B-R --kept yes --cloudy no --acid-in-every-jar yes --start 00:30 --end 01:16"
            + " --sealed all --half-lost 8";
    assertEquals(0, house.run(plums.split(" ")), house.told());
    assertEquals(0, house.run(tomatoes.split(" ")), house.told());
  }

  private String shelf(String... more) {
    String[] args = new String[more.length + 1];
    args[0] = "shelf";
    System.arraycopy(more, 0, args, 1, more.length);
    assertEquals(0, house.run(args), house.told());
    return house.shown();
  }

  @Test
  void whatCallsForSomethingStandsBeforeThePlaces() {
    String shown = shelf();
    int cold = shown.indexOf("REFRIGERATOR: eat by the date shown");
    int first = shown.indexOf("USE FIRST");
    int place = shown.indexOf("cellar B3 (14 jars)");
    assertTrue(0 <= cold && cold < first && first < place, shown);
    assertTrue(shown.contains("eat by 2026-08-26 260824B-R/08"), shown);
    assertTrue(shown.contains("260824A-T/01 02 04..14"), shown);
    assertTrue(
        shown.contains("Results not recorded yet: 260824C-P. Run: jarwright seal LOT"), shown);
    assertTrue(shown.contains("23 jars in the house on 2026-08-24"), shown);
    assertTrue(shown.contains("local extension service"), shown);
  }

  /** Nebraska Extension: what was processed wrongly is canned again within 2 hours. */
  @Test
  void theHourByWhichToCanAgainIsTold() throws Exception {
    house.at("2026-08-24T13:30:00-05:00");
    String beans =
        "seal 260824C-P --load 1 --kept yes --vented yes --gauge-tested yes --start 12:30 --end"
            + " 12:49";
    assertEquals(0, house.run(beans.split(" ")), house.told());
    assertTrue(shelf("--due").contains("by 2026-08-24 14:49 260824C-P/01"), house.shown());
    assertEquals(0, house.run("shelf", "-o", "due.pdf"), house.told());
    assertTrue(house.pdf("due.pdf").contains("14:49"), house.pdf("due.pdf"));
  }

  @Test
  void dueLeavesOutWhatKeeps() {
    String shown = shelf("--due");
    assertTrue(shown.contains("260824A-T/03"), shown);
    assertFalse(shown.contains("260824A-T/01"), shown);
    assertTrue(shown.contains("2 jars due"), shown);
  }

  @Test
  void whatStayedTooLongInTheRefrigeratorIsThrownAway() {
    house.at("2026-08-27T09:00:00-05:00");
    assertTrue(shelf("--due").startsWith("DO NOT EAT. THROW AWAY: unopened"), house.shown());
  }

  @Test
  void aYearLaterAllIsOverdue() {
    house.at("2027-08-25T09:00:00-05:00");
    assertTrue(
        shelf()
            .contains(
                "PAST ITS USE-BY DATE: check the seal and the food. When in doubt, throw it out (22"
                    + " jars)"));
  }

  @Test
  void onePlaceAloneIsShown() {
    assertTrue(shelf("--place", "CELLAR").contains("14 jars in the house"));
    assertEquals(1, house.run("shelf", "--place", "attic"));
    assertTrue(house.told().contains("known: refrigerator, cellar B3"), house.told());
  }

  @Test
  void theTableIsForFillingIn() {
    List<String> lines = List.of(shelf("--format", "csv").split(" (?=cellar|refrig|\"\")"));
    assertTrue(
        lines.get(0).startsWith("shelf,lot,product,size,packed,use-by,state,process,jars,number"),
        lines.get(0));
    assertTrue(house.shown().contains("refrigerator,260824B-R,"), house.shown());
    assertTrue(house.shown().contains(",use-first,,03,1,,"), house.shown());
  }

  @Test
  void theListForProgramsIsJson() {
    String json = shelf("--format", "json");
    assertTrue(json.startsWith("[ {") && json.strip().endsWith("} ]"), json);
    assertTrue(json.contains("\"number\" : 13"), json);
  }

  @Test
  void theInventoryIsPrinted() throws Exception {
    shelf("-o", "shelf.pdf");
    String words = house.pdf("shelf.pdf");
    assertTrue(words.contains("Shelf inventory") && words.contains("Refrigerator"), words);
    assertTrue(words.contains("260824A-T") && words.contains("Use first"), words);
    assertFalse(words.contains("260824C-P"), "planned jars stand on no shelf");
    shelf("-o", "es.pdf", "--language", "es");
    assertTrue(house.pdf("es.pdf").contains("Inventario de estantes"));
  }

  @Test
  void aYearIsShownAndPrinted() throws Exception {
    house.run("toss", Household.jar(PLUMS, "5"), "--why", "Glass chipped");
    house.run("take", Household.jar(TOMATOES, "1,2"));
    String year = shelf("--year");
    assertTrue(year.contains("Plums, halved or whole, quart 0 14 0 1 13 0 0 ? ?"), year);
    assertTrue(year.contains("1 glass chipped"), year);
    assertTrue(year.contains("? too little is recorded to tell"), year);
    assertTrue(
        shelf("--year", "2026", "--format", "csv")
            .contains(",0,14,0,1,1 glass chipped,0,13,0,0,13,"));
    assertTrue(shelf("--year", "2026", "--format", "json").contains("\"eaten\" : 2"));
    shelf("--year", "2026", "-o", "year.pdf");
    assertTrue(house.pdf("year.pdf").contains("The year 2026 in jars"));
    assertTrue(shelf("--year", "2025").contains("Nothing was put up"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "shelf plums | shelf takes options only, not plums",
        "shelf --format xls | known: text, csv, json",
        "shelf -o shelf.txt | ends in .pdf",
        "shelf -o shelf.pdf --format csv | leave --format out",
        "shelf --year 26 | a year like 2026",
        "shelf --year 2027 | has not begun",
        "shelf --year --due | leave --due and --place out",
        "shelf -o s.pdf --language fr | language fr",
      })
  void wrongUseIsToldAndWritesNothing(String line, String told) {
    assertEquals(2, house.run(line.split(" ")), line);
    assertTrue(house.told().contains(told), house.told());
    assertFalse(Files.exists(house.file("shelf.txt")) || Files.exists(house.file("s.pdf")));
  }

  @Test
  void aHouseholdWithoutALedgerIsToldSo() {
    assertEquals(1, house.run("shelf", "--pantry", "elsewhere"));
    assertTrue(house.told().contains("has no ledger yet"), house.told());
  }
}
