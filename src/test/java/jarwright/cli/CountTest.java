package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A stock-take against the ledger. */
class CountTest {
  private static final String HEAD = "lot,shelf,jars,counted,found\n";

  @TempDir Path folder;
  private Household house;

  /** Plums 01 to 14 in the cellar; 14 of them taken, 13 thrown away. */
  @BeforeEach
  void sealPlums() throws Exception {
    house = Household.withKit(folder);
    String plums =
        "seal 260824A-T --kept yes --cloudy no --sealed all --load 1 --start 00:10 --end 00:41"
            + " --load 2 --start 00:50 --end 01:21";
    assertEquals(0, house.run(plums.split(" ")), house.told());
    assertEquals(0, house.run("take", "260824A-T/14"), house.told());
    assertEquals(0, house.run("toss", "260824A-T/13", "--why", "cracked"), house.told());
  }

  private String count(String rows, String... more) throws Exception {
    house.write("count.csv", HEAD + rows);
    String[] args = new String[more.length + 2];
    args[0] = "count";
    args[1] = "count.csv";
    System.arraycopy(more, 0, args, 2, more.length);
    assertEquals(0, house.run(args), house.told());
    return house.shown();
  }

  /** Applied, the same count shows nothing more; before that nothing is recorded. */
  private void recordsOnce(String rows, String shown, String... events) throws Exception {
    int before = house.ledger().size();
    assertTrue(count(rows).contains(shown), house.shown());
    assertEquals(before, house.ledger().size());
    count(rows, "--apply", "--by", "Mara");
    List<String> added = house.ledger().subList(before, house.ledger().size());
    assertEquals(events.length, added.size(), added.toString());
    for (int i = 0; i < events.length; i++) {
      assertTrue(added.get(i).contains(events[i]), added.get(i));
    }
    assertTrue(count(rows, "--apply").contains("The ledger agrees"), house.shown());
    assertEquals(before + events.length, house.ledger().size());
  }

  @Test
  void whatAgreesIsToldSo() throws Exception {
    assertTrue(count("260824A-T,cellar B3,01..12,12,\n").contains("The ledger agrees"));
    assertTrue(count("260824a-t, Cellar  b3 ,,12,\n").contains("The ledger agrees"));
  }

  @Test
  void aJarThatIsNotThereIsMissing() throws Exception {
    recordsOnce("260824A-T,cellar B3,01..12,11,1-4 6..12\n", "260824A-T/05", ",05,missing,");
  }

  @Test
  void aWholeLotCanBeMissing() throws Exception {
    recordsOnce("260824A-T,cellar B3,01..12,0,\n", "MISSING", ",01..12,missing,");
  }

  @Test
  void aJarSeenElsewhereHasMoved() throws Exception {
    recordsOnce(
        "260824A-T,cellar B3,01..12,,01..10\n260824A-T,attic,,,11 12\n",
        "260824A-T/11 12 Plums, halved or whole, quart: OK to use by August 24, 2027; at cellar B3,"
            + " seen at attic",
        ",11 12,moved,to=attic");
  }

  @Test
  void aJarThatTheLedgerHasGoneIsSurplus() throws Exception {
    recordsOnce(
        "260824A-T,cellar B3,01..12,13,01..12 14\n", "SURPLUS", ",14,found,shelf=cellar B3");
  }

  @Test
  void allAtOnceIsOneEventEach() throws Exception {
    recordsOnce(
        "260824A-T,cellar B3,01..12,,01..09 14\n260824A-T,attic,,,10\n",
        "MOVED",
        ",11 12,missing,",
        ",10,moved,to=attic",
        ",14,found,");
  }

  @Test
  void aJarThatWasThrownAwayIsNotTrustedAgain() throws Exception {
    String told = count("260824A-T,cellar B3,01..12,,01..13\n", "--apply");
    assertTrue(told.contains("DO NOT EAT: recorded as gone, and here again"), told);
    assertTrue(house.lastEvent().contains(",13,found,"), house.lastEvent());
    assertTrue(count("260824A-T,cellar B3,01..12,,01..13\n").contains("DO NOT EAT from these"));
    assertTrue(house.shown().contains("Do not eat. Throw away; not on a shelf, seen at cellar B3"));
    assertEquals(1, house.run("take", "260824A-T/13"));
    assertTrue(house.told().contains("It had been given up, and turned up again"), house.told());
  }

  @Test
  void jarsNobodySealedAndJarsNobodyKnowsAreToldAndNotRecorded() throws Exception {
    int before = house.ledger().size();
    String shown =
        count(
            """
            260824C-P,cellar B3,,2,1 2
            260824A-T,cellar B3,01..12,,01..12 77
            260101A-L,cellar B3,,3,
            """,
            "--apply");
    assertTrue(shown.contains("RESULTS NOT RECORDED: do not eat"), shown);
    assertTrue(shown.contains("NO SUCH JAR in the lot: read their labels again 260824A-T/77"));
    assertTrue(shown.contains("3 jars of lot 260101A-L"), shown);
    assertEquals(before, house.ledger().size());
  }

  @Test
  void jarsWithoutALotAreForTheImport() throws Exception {
    house.write("count.csv", "Product;Counted;Lot\nQuince jelly;3;\n");
    assertEquals(0, house.run("count", "count.csv"), house.told());
    assertTrue(house.shown().contains("3 jars of Quince jelly"), house.shown());
  }

  @Test
  void rowsLeftEmptyMissNothing() throws Exception {
    String shown = count("260824A-T,cellar B3,01..12,,\n260824A-T,attic,,,3\n");
    assertTrue(shown.contains("1 row left empty"), shown);
    assertFalse(shown.contains("MISSING"), shown);
  }

  @Test
  void codesThatAScannerReadsAreAStockTakeToo() throws Exception {
    house.write("count.csv", "jar,shelf\n260824A-T/01,cellar B3\n260824A-T/02,attic\n");
    assertEquals(0, house.run("count", "count.csv"), house.told());
    assertTrue(house.shown().contains("MOVED"), house.shown());
    assertTrue(house.shown().contains("260824A-T/02"), house.shown());
    assertFalse(house.shown().contains("MISSING"), house.shown());
  }

  @Test
  void theShelfsOwnTableIsReadBack() throws Exception {
    assertEquals(0, house.run("move", "260824A-T/1", "--to", "=cellar; left"), house.told());
    assertEquals(0, house.run("shelf", "--format", "csv"), house.told());
    String table = house.shown().replaceAll(" (?=cellar B3,2)", "\n").replace(" '=", "\n'=");
    assertTrue(table.contains("'=cellar\\s left"), table);
    house.write("count.csv", table.replace(",11,,", ",11,11,").replace(",1,,", ",1,1,"));
    assertEquals(0, house.run("count", "count.csv"), house.told());
    assertTrue(house.shown().contains("The ledger agrees"), house.shown());
    assertTrue(house.shown().contains("12 jars of the ledger's lots counted."), house.shown());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "260824A-K,cellar B3,01..12,12, | count.csv:2:1: lot: \"260824A-K\" is mistyped",
        "260824A-T,cellar B3,01..12,7, | 7 jars were counted where 12 were looked for (01..12)",
        "260824A-T,cellar B3,01..12,3,1 2 | 3 jars were counted, but 2 are named as found",
        "260824A-T,cellar B3,01..12,many, | takes a whole number from 0 to 99999",
        "260824A-T,cellar B3,01..12,,first two | is no list of jar numbers",
        ",cellar B3,,4, | write the lot as on the label",
        "260824A-T,cellar B3,01..12,, | nothing is counted in any row",
      })
  void aBadRowIsRefusedWithItsPlace(String row, String told) throws Exception {
    List<String> before = house.ledger();
    house.write("count.csv", HEAD + row + "\n");
    assertEquals(1, house.run("count", "count.csv", "--apply"), row);
    assertTrue(house.told().contains(told), house.told());
    assertEquals(before, house.ledger());
  }

  @Test
  void aJarCountedTwiceIsRefused() throws Exception {
    house.write("count.csv", HEAD + "260824A-T,attic,,,1\n260824A-T,cellar B3,,,1 2\n");
    assertEquals(1, house.run("count", "count.csv", "--apply"));
    assertTrue(
        house.told().contains("jar 260824A-T/01 is counted in line 2 already"), house.told());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 | count | count needs one file",
        "2 | count a.csv b.csv | count needs one file",
        "3 | count nowhere.csv | nowhere.csv: there is no such file",
        "1 | count plan.yaml | none of the keys",
      })
  void wrongFilesAreToldAsSuch(int status, String line, String told) {
    assertEquals(status, house.run(line.split(" ")), house.told());
    assertTrue(house.told().contains(told), house.told());
  }
}
