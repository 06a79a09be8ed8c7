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
import org.junit.jupiter.params.provider.ValueSource;

/** From a jar to its lot, from a lot to its jars, and what to do when one was spoiled. */
class TraceTest {
  private static final String PLAN =
      """
      batches:
        - product: plums-halved-or-whole
          pack: raw
          jar: quart
          jars: 7
          method: boiling-water
          date: 2026-08-25
          from: Orchard stall, two lugs
          lids: box 2 of spring
          shelf: attic
      """;

  @TempDir Path folder;
  private Household house;

  /** Of the plums 01 and 02 taken, 03 thrown away, the others in the cellar. */
  @BeforeEach
  void sealPlums() throws Exception {
    house = Household.withKit(folder);
    String plums =
        "seal 260824A-T --kept yes --cloudy no --sealed all --by Anna --load 1 --start 00:10 --end"
            + " 00:41 --load 2 --start 00:50 --end 01:21 --unsealed 14";
    assertEquals(0, house.run(plums.split(" ")), house.told());
    assertEquals(0, house.run("take", "260824A-T/1,2"), house.told());
    assertEquals(0, house.run("toss", "260824A-T/3", "--why", "cracked"), house.told());
  }

  private String run(String... args) {
    assertEquals(0, house.run(args), house.told());
    return house.shown();
  }

  @Test
  void aLotShowsAllItsJarsAndItsRecord() {
    String shown = run("trace", "260824a-t");
    assertTrue(shown.contains("jars 01 02: Used on August 24, 2026"), shown);
    assertTrue(
        shown.contains(
            "jars 03: Do not eat. Thrown away on August 24, 2026. It was thrown away: cracked."),
        shown);
    assertTrue(shown.contains("jars 04..13: OK to use by August 24, 2027; at cellar B3"), shown);
    assertTrue(shown.contains("jars 14: Do not shelve. Re-can, freeze or refrigerate by"), shown);
    // AIB 539 (2015) p. 2-22, Plums, raw pack, quarts, 1,001 to 3,000 ft: 30 minutes.
    assertTrue(shown.contains("planned process: boiling-water, 30 minutes"), shown);
    assertTrue(shown.contains("AIB 539 (2015) p. 2-22"), shown);
    assertTrue(shown.contains("load 1, 2026-08-24 00:10 to 2026-08-24 00:41 (Anna)"), shown);
  }

  @Test
  void aJarShowsItsOwnStoryAndNamesTheOthers() {
    String shown = run("trace", "260824A-T/03");
    assertTrue(shown.contains("jars 03: Do not eat. Thrown away"), shown);
    assertTrue(shown.contains("others of the lot: 01 02 04..14"), shown);
    assertFalse(shown.contains("Taken 260824A-T"), shown);
    assertTrue(shown.contains("load 1,") && !shown.contains("load 2,"), shown);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--from|ORCHARD stall",
        "--lids|box 2",
        "--day|2026-08-25",
        "--shelf|attic",
        "--day|2026-08-25|--from|stall"
      })
  void jarsAreFoundByWhatTheyShare(String options) throws Exception {
    house.write("two.yaml", PLAN);
    run("kit", "two.yaml");
    String[] args = ("trace|" + options).split("\\|");
    assertTrue(run(args).contains("260825A-P Plums, halved or whole, quart"), house.shown());
    assertFalse(house.shown().contains("260824A-T"), house.shown());
  }

  @Test
  void theJarsAreGivenToOtherProgramsToo() {
    String csv = run("trace", "260824A-T", "--format", "csv");
    assertTrue(csv.contains("260824A-T/03,\"Plums, halved or whole\",quart,raw,2026-08-24,"), csv);
    assertTrue(csv.contains(",tossed,,2026-08-24,cracked,"), csv);
    assertTrue(run("trace", "260824A-T", "--format", "json").contains("\"standing\" : \"taken\""));
  }

  @Test
  void aSpoiledJarPutsTheOthersInDoubtAndSaysWhatToDo() throws Exception {
    String shown = run("trace", "260824A-T/04", "--spoiled", "it spurted");
    assertTrue(house.lastEvent().contains(",260824A-T,04,spoiled,seen=it spurted,"));
    assertTrue(shown.contains("Do not taste"), shown);
    assertTrue(shown.contains("AIB 539 (2015) Guide 1"), shown);
    assertTrue(shown.contains("jars 05..13: at cellar B3"), shown);
    assertTrue(shown.contains("DID ANYONE EAT FROM THESE JARS?"), shown);
    assertTrue(shown.contains("jars 01 02: taken on 2026-08-24"), shown);
    assertTrue(shown.contains("trace --day 2026-08-24"), shown);
    assertEquals(1, house.run("take", "plums"));
    assertTrue(run("shelf").contains("DO NOT EAT YET"), house.shown());
    run("trace", "260824A-T/5..13", "--looked-at", "none");
    run("take", "plums");
    assertTrue(house.shown().contains("take 260824A-T/05"), house.shown());
  }

  @Test
  void aLostJarOfASpoiledLotIsNotForgotten() throws Exception {
    house.write("count.csv", "lot,shelf,jars,counted,found\n260824A-T,cellar B3,04..13,9,4..12\n");
    run("count", "count.csv", "--apply");
    String shown = run("trace", "260824A-T/04", "--spoiled", "mould");
    assertTrue(shown.contains("NOT FOUND. Do not eat them"), shown);
    assertTrue(shown.contains("jars 13: not found on 2026-08-24"), shown);
  }

  @Test
  void aJarFoundSpoiledOnTheTableIsRecordedThoughItWasTaken() throws Exception {
    assertTrue(run("trace", "260824A-T/01", "--spoiled", "mould").contains("jars 04..13"));
    assertTrue(run("trace", "260824A-T/01").contains("Found spoiled 260824A-T/01: mold"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 | trace | trace needs a lot or a jar",
        "2 | trace plums | trace takes lots and jars, not plums",
        "2 | trace 260824A-T --day 2026-08-24 | trace needs a lot or a jar",
        "2 | trace --day 24.8.2026 | takes a date like 2026-08-24",
        "2 | trace --from x --spoiled mould | record something of jars named by their codes",
        "2 | trace 260824A-T --spoiled mould | the jar or the jars of one lot",
        "2 | trace 260824A-T/1 260824B-R/1 --spoiled mould | the jar or the jars of one lot",
        "2 | trace 260824A-T/1 --spoiled a --looked-at b | one of them at a time",
        "1 | trace 260824A-K | is mistyped",
        "1 | trace 260824Z-G | the ledger has no lot of this code",
        "1 | trace 260824A-T/55 | the lot has no such jar",
        "1 | trace --from moon | no jar of the ledger fits that",
        "1 | trace 260824B-R/01 --spoiled mould | its results are not recorded yet",
        "1 | trace 260824A-T/05 --looked-at none | it is not in doubt",
      })
  void whatCannotBeDoneIsRefusedAndTheLedgerLeftAlone(int status, String line, String told)
      throws Exception {
    List<String> before = house.ledger();
    assertEquals(status, house.run(line.split(" ")), house.told() + house.shown());
    assertTrue(house.told().contains(told), house.told());
    assertEquals(before, house.ledger());
  }

  @Test
  void theSameJarIsNotSpoiledTwice() throws Exception {
    run("trace", "260824A-T/04", "--spoiled", "mould");
    List<String> before = house.ledger();
    assertEquals(1, house.run("trace", "260824A-T/04", "--spoiled", "mould"));
    assertTrue(house.told().contains("recorded as spoiled already"), house.told());
    assertEquals(1, house.run("undo"));
    assertTrue(house.told().contains("say what was wrong with it"), house.told());
    assertEquals(before, house.ledger());
    run("undo", "--why", "it was another lot");
    String page = run("trace", "260824A-T/05");
    assertTrue(page.contains("That was taken back on August 24, 2026: it was another lot"), page);
    run("trace", "260824A-T/04", "--spoiled", "leak");
  }
}
