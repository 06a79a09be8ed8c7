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

/** Jars from an old list: in the ledger, but nobody's word for their process. */
class ImportTest {
  @TempDir Path folder;
  private Household house;

  @BeforeEach
  void anEmptyHousehold() throws Exception {
    house = new Household(folder);
  }

  private String bring(String table) throws Exception {
    house.write("list.csv", table);
    assertEquals(0, house.run("import", "list.csv", "--by", "Mara"), house.told());
    return house.shown();
  }

  @Test
  void whatIsKnownIsKeptAndTheProcessIsNeverVouchedFor() throws Exception {
    String shown =
        bring(
            "\uFEFF"
                + """
                Product;Jars;Size;Packed;Shelf;Process
                Green beans;6;pint;2025-09-14;attic;boiled three hours
                plums-halved-or-whole;2;quart;2026-03;cellar;
                Pickled eggs;3;;;;
                """
                    .replace("\n", "\r\n"));
    assertTrue(shown.contains("250914A-Y 6 jars of Green beans, pint"), shown);
    assertTrue(shown.contains("use by 2026-09-14"), shown);
    assertTrue(shown.contains("2 jars of Plums, halved or whole, quart, packed 2026-03-01"), shown);
    assertTrue(shown.contains("000101A-E 3 jars of Pickled eggs, nobody knows when packed"), shown);
    assertTrue(shown.contains("botulism") && shown.contains("throw it away (CDC"), shown);
    assertEquals(0, house.run("shelf"));
    assertTrue(house.shown().contains("process not known"), house.shown());
    assertEquals(0, house.run("trace", "250914A-Y"));
    assertTrue(house.shown().contains("process: boiled three hours"), house.shown());
    assertTrue(house.shown().contains("process not known"), house.shown());
    assertFalse(house.shown().contains("planned process"), house.shown());
    assertEquals(0, house.run("shelf", "-o", "s.pdf"));
    assertTrue(house.pdf("s.pdf").contains("process not known"));
    assertEquals(1, house.run("seal", "250914A-Y", "--start", "10:00"), house.told());
  }

  @Test
  void theSameListAgainBringsInNothing() throws Exception {
    String list = "product,jars,packed\nJam,3,2025\nJam,3,2025\n";
    bring(list);
    List<String> before = house.ledger();
    assertEquals(3, before.size() - 1);
    assertTrue(bring(list).contains("In the ledger already"), house.shown());
    assertEquals(before, house.ledger());
    bring(list + "Jam,3,2025\n");
    assertEquals(before.size() + 1, house.ledger().size());
  }

  @Test
  void whatWasTakenBackCanBeBroughtInAgain() throws Exception {
    bring("product,jars\nJam,3\n");
    assertEquals(0, house.run("undo", "2"), house.told());
    assertTrue(bring("product,jars\nJam,4\n").contains("000101B"), house.shown());
  }

  @Test
  void aLongListWithoutDaysFindsLotsForAll() throws Exception {
    StringBuilder list = new StringBuilder("product,jars,packed\n");
    for (int i = 1; i <= 60; i++) {
      list.append("Jam ").append(i).append(",1,\nSyrup ").append(i).append(",1,2024\n");
    }
    bring(list.toString());
    assertEquals(122, house.ledger().size());
    assertTrue(house.shown().contains("000103A") && house.shown().contains("240103A"));
  }

  @Test
  void jarsFromAnOldListCanBeTakenCountedAndThrownAway() throws Exception {
    bring("product,jars,shelf\n=Jam,3,attic\n");
    assertTrue(Files.readString(house.file("pantry/ledger.csv")).contains("product==Jam"));
    assertEquals(1, house.run("take", "jam"), "the program hands out no such jar by itself");
    assertTrue(house.told().contains("nobody can vouch"), house.told());
    assertTrue(house.told().contains("jarwright take 000101A-E/01"), house.told());
    assertEquals(0, house.run("take", "000101A-E/01"), house.told());
    assertTrue(house.shown().contains("nobody can vouch"), house.shown());
    house.write("dated.csv", "product,jars,packed\n=Jam,1,2026-01-02\n");
    assertEquals(0, house.run("import", "dated.csv"), house.told());
    assertEquals(0, house.run("labels", "260102A-H", "-o", "old.pdf"), house.told());
    assertTrue(house.pdf("old.pdf").contains("process not known"), house.pdf("old.pdf"));
    house.write("count.csv", "lot,shelf,jars,counted,found\n000101A-E,attic,01..03,1,3\n");
    assertEquals(0, house.run("count", "count.csv", "--apply"), house.told());
    assertTrue(house.shown().contains("MISSING: in the ledger, not on the shelf 000101A-E/02"));
    assertEquals(0, house.run("toss", "000101A-E/03", "--why", "too old"), house.told());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Jam,, | list.csv:2:1: jars: is missing",
        ",3, | product: is missing",
        "Jam,0, | takes a whole number from 1 to 9999",
        "Jam,three, | takes a whole number from 1 to 9999",
        "Jam,3,24.8.2025 | \"24.8.2025\" is no date. write 2025-08-24, 2025-08 or 2025",
        "Jam,3,2025-13 | \"2025-13\" is no date",
        "Jam,3,2027-01-01 | lies ahead of today, 2026-08-24",
        "Jam,3,1998 | such jars are not to be eaten",
        "Jam,3,2025,bucket | \"bucket\" is not known",
        "Jam,3,2025-01-01,pint,2024-01-01 | lies before the day of packing",
        "Jam,3,2025-01-01,pint,2029-01-01 | more than 18 months after the day of packing",
      })
  void oneBadRowAndNothingIsBroughtIn(String row, String told) throws Exception {
    house.write("list.csv", "product,jars,packed,size,use-by\n" + row + "\nGood jam,1,,,\n");
    assertEquals(1, house.run("import", "list.csv"), house.told());
    assertTrue(house.told().contains(told), house.told());
    assertFalse(Files.exists(house.file("pantry/ledger.csv")));
  }

  @Test
  void allProblemsAreToldTogether() throws Exception {
    house.write("list.csv", "product,jars,colour\nJam,0,red\n,2,red\n");
    assertEquals(1, house.run("import", "list.csv"));
    assertEquals(
        3, house.told().lines().filter(l -> l.contains("list.csv:")).count(), house.told());
  }

  @Test
  void moreRowsOfOneDayThanLettersAreRefused() throws Exception {
    StringBuilder list = new StringBuilder("product,jars,packed\n");
    for (int i = 1; i <= 27; i++) {
      list.append("Jam ").append(i).append(",1,2025-06-01\n");
    }
    house.write("list.csv", list.toString());
    assertEquals(1, house.run("import", "list.csv"));
    assertTrue(house.told().contains("no letter is left for a lot of 2025-06-01"), house.told());
    assertFalse(Files.exists(house.file("pantry/ledger.csv")));
  }

  @Test
  void wrongUseIsTold() {
    assertEquals(2, house.run("import"));
    assertTrue(house.told().contains("columns product and jars"), house.told());
    assertEquals(3, house.run("import", "nowhere.csv"));
  }
}
