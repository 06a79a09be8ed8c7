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
import org.junit.jupiter.params.provider.ValueSource;

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
  void whatIsKnownIsKeptAndLowAcidFoodIsToBeThrownAway() throws Exception {
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
    assertTrue(shown.contains("packed 2025-09-14, attic: Do not eat. Throw away."), shown);
    assertTrue(
        shown.contains(
            "2 jars of Plums, halved or whole, quart, packed 2026-03-01, cellar: How it was canned"
                + " is not known: do not eat."),
        shown);
    assertTrue(
        shown.contains("000101A-E 3 jars of Pickled eggs, day of packing not known: Do not eat."),
        shown);
    assertTrue(shown.contains("toxin of botulism"), shown);
    assertEquals(0, house.run("shelf"));
    assertTrue(house.shown().startsWith("DO NOT EAT. THROW AWAY"), house.shown());
    assertTrue(house.shown().contains("HOW IT WAS CANNED IS NOT KNOWN: DO NOT EAT"), "plums");
    assertEquals(0, house.run("trace", "250914A-Y"));
    assertTrue(house.shown().contains("process: boiled three hours"), house.shown());
    assertTrue(house.shown().contains("how it was canned is not known"), house.shown());
    assertFalse(house.shown().contains("planned process"), house.shown());
    assertEquals(0, house.run("shelf", "-o", "s.pdf"));
    assertTrue(house.pdf("s.pdf").contains("How it was canned is not known: do not eat"));
    assertEquals(1, house.run("seal", "250914A-Y", "--start", "10:00"), house.told());
  }

  /**
   * Whatever name and way it comes by. NCHFP, Clemson and Oregon State University Extension have no
   * process for these; the reason with its source is in the program's table.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Green beans,2,pint,boiled 3 hours in a kettle | low-acid food",
        "Pumpkin puree,2,pint, | pumpkin or winter squash as puree, mash, butter or pie filling",
        "Elderberry jam,2,half-pint, | elderberries",
        "Garlic in oil,2,half-pint, | garlic, herbs, truffles or vegetables in oil",
        "beans-snap-italian,2,half-gallon, | no tested process for this food in jars of this size",
        "Canned bread,2,pint, | bread or cake baked and sealed",
        "peaches-halved-or-sliced,2,quart,oven canning | oven canning",
        "Peaches,2,quart,open kettle | open-kettle canning",
        "applesauce,2,half-gallon, | no tested process for this food in jars of this size",
        "tomatoes-crushed,2,quart, | needs measured acid",
        "Onions,2,pint, | onions, leeks and shallots by themselves",
        "Green slime,2,pint, | food",
      })
  void whatHasNoTestedProcessIsRecordedOnlyToBeThrownAway(String row, String why) throws Exception {
    String shown = bring("product,jars,size,process\n" + row + "\n");
    assertTrue(shown.contains("Do not eat. Throw away.") && shown.contains(why), shown);
    List<String> before = house.ledger();
    assertEquals(1, house.run("take", "000101A-E/01"), house.shown());
    assertTrue(house.told().contains(why), house.told());
    assertEquals(1, house.run("take", "000101A-E/01", "--looked-at", "none"), house.shown());
    assertEquals(1, house.run("move", "000101A-E/01", "--to", "cellar"), house.shown());
    assertEquals(1, house.run("labels", "000101A-E", "-o", "l.pdf"), house.shown());
    assertEquals(1, house.run(vouch("000101A-E")), house.shown());
    assertTrue(house.told().contains(why), house.told());
    assertEquals(before, house.ledger());
    assertEquals(0, house.run("toss", "000101A-E/all", "--why", "not tested"), house.told());
  }

  private static String[] vouch(String lot) {
    return new String[] {"trace", lot, "--vouched-by", "Ana", "--source", "USDA guide 2015"};
  }

  /** Acid by the tables: AIB 539 (2015) Guides 2, 6 and 7 process these in boiling water. */
  @ParameterizedTest
  @ValueSource(
      strings = {"Peaches", "plums-halved-or-whole", "Strawberry jam", "Plum jam", "Dill pickles"})
  void acidFoodIsHandedOutOnceSomebodyVouchesForItAndIsMarkedSo(String food) throws Exception {
    bring("product,jars,packed,shelf\n" + food + ",2,2026-05-01,attic\n");
    assertEquals(1, house.run("take", "260501A-V/01"));
    assertTrue(house.told().contains("--vouched-by NAME --source TEXT"), house.told());
    assertEquals(0, house.run("shelf", "--due"), house.told());
    assertTrue(house.shown().contains("2 jars due"), house.shown());
    assertEquals(0, house.run(vouch("260501A-V")), house.told());
    assertTrue(
        house.lastEvent().contains(",260501A-V,,vouched,who=Ana | source=USDA guide 2015,"),
        house.lastEvent());
    assertEquals(0, house.run("shelf", "--due"), house.told());
    assertTrue(house.shown().startsWith("Nothing is due"), house.shown());
    assertEquals(0, house.run("shelf"), house.told());
    assertTrue(house.shown().contains("by word of Ana"), house.shown());
    assertEquals(0, house.run("shelf", "-o", "s.pdf"));
    assertTrue(house.pdf("s.pdf").contains("by word of Ana"));
    assertEquals(0, house.run("labels", "260501A-V", "-o", "l.pdf"), house.told());
    assertTrue(house.pdf("l.pdf").contains("by word of Ana"), house.pdf("l.pdf"));
    assertEquals(0, house.run("take", "260501A-V/01"), house.told());
    assertTrue(house.shown().contains("by word of Ana: USDA guide 2015"), house.shown());
    assertEquals(0, house.run("trace", "260501A-V/02", "--spoiled", "mold"), house.told());
    assertEquals(1, house.run("take", "260501A-V/02"));
    assertEquals(0, house.run("trace", "260501A-V"), house.told());
    assertTrue(house.shown().contains("jars 02: Do not eat. Throw away"), house.shown());
  }

  /**
   * AIB 539 (2015) Guide 4, Beans, snap: pints, weighted gauge, above 1,000 ft: 20 min at 15 lb; up
   * to 1,000 ft at 10 lb. A word for low-acid food is held against it.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "weighted-gauge,20,15 psi,1500 ft | By word of Ana",
        "weighted-gauge,20,10 psi,900 ft | By word of Ana",
        "weighted-gauge,20,10 psi,1500 ft | below the tested one",
        "weighted-gauge,19,15 psi,1500 ft | below the tested one",
        "weighted-gauge,20,15 psi, | is not recorded in full",
        "weighted-gauge,,15 psi,1500 ft | is not recorded in full",
        "water bath,180,,1500 ft | no tested process for this food by this method",
        "pressure cooker,20,15 psi,1500 ft | small pressure cooker or saucepan",
      })
  void aWordForLowAcidFoodIsComparedWithTheTables(String row, String told) throws Exception {
    String head = "product,jars,size,pack,vouched-by,source,method,minutes,pressure,altitude\n";
    String shown = bring(head + "beans-snap-italian,2,pint,raw,Ana,guide," + row + "\n");
    assertTrue(shown.contains(told), shown);
    boolean fit = told.contains("Ana");
    assertEquals(fit ? 0 : 1, house.run("take", "000101A-E/01"), house.told());
  }

  /** The same list with the columns filled in adds the word, and nothing twice. */
  @Test
  void aListWithItsColumnsFilledInVouchesForWhatIsThere() throws Exception {
    bring("product,jars,size,pack\ntomatoes-crushed,2,quart,hot\n");
    String filled =
        """
        product,jars,size,pack,vouched-by,source,acid
        tomatoes-crushed,2,quart,hot,Ana,guide p. 3-7,bottled lemon juice
        """;
    int before = house.ledger().size();
    assertTrue(bring(filled).contains("By word of Ana"), house.shown());
    assertEquals(before + 1, house.ledger().size());
    bring(filled);
    assertEquals(before + 1, house.ledger().size());
    assertEquals(0, house.run("take", "000101A-E/01"), house.told());
    assertEquals(0, house.run("undo"), house.told());
    assertEquals(0, house.run("undo", String.valueOf(before)), house.told());
    assertEquals(1, house.run("take", "000101A-E/02"));
    house.write("list.csv", "product,jars\nPeach jam,1\n");
    assertEquals(0, house.run("import", "list.csv", "--vouched-by", "Mara", "--source", "guide"));
    assertTrue(house.shown().contains("By word of Mara"), house.shown());
  }

  @Test
  void theSameListAgainBringsInNothing() throws Exception {
    String list = "product,jars,packed\nJam,3,2025\nJam,3,2025\n";
    bring(list);
    List<String> before = house.ledger();
    assertEquals(3, before.size() - 1);
    assertTrue(bring(list).contains("In the records already"), house.shown());
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
  void jarsFromAnOldListCanBeVouchedForTakenCountedAndThrownAway() throws Exception {
    bring("product,jars,shelf\n=Jam,3,attic\n");
    assertTrue(Files.readString(house.file("pantry/ledger.csv")).contains("product==Jam"));
    assertEquals(1, house.run("take", "jam"), "nobody vouches for it");
    assertTrue(house.told().contains("How it was canned is not known"), house.told());
    assertEquals(0, house.run(vouch("000101A-E")), house.told());
    assertEquals(0, house.run("take", "jam"), house.told());
    assertTrue(house.shown().contains("by word of Ana"), house.shown());
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

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Ana,, | fill in both",
        ",guide, | fill in both",
        ",,20 | only where somebody vouches for it",
        "Ana,guide,0 | takes a whole number from 1 to 999",
      })
  void aWordIsWholeOrNone(String row, String told) throws Exception {
    house.write("list.csv", "product,jars,vouched-by,source,minutes\nJam,1," + row + "\n");
    assertEquals(1, house.run("import", "list.csv"), house.shown());
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
