package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Taking, moving and throwing away jars, and taking that back. */
class JarDeedsTest {
  private static final String PLUMS = Household.PLUMS;
  private static final String TOMATOES = Household.TOMATOES;

  @TempDir Path folder;
  private Household house;

  /** Plums 01 to 07 on the shelf, 02 first; tomatoes 08 to be refrigerated, 09 not sealed. */
  @BeforeEach
  void sealTwoLoads() throws Exception {
    house = Household.withKit(folder);
    String plums = " --load 1 --start 00:40 --end 01:10 --kept yes --cloudy no --sealed all";
    String tomatoes = " --start 00:30 --end 01:15 --kept yes --acid yes --cloudy no --sealed all";
    assertEquals(0, run("seal " + PLUMS + plums + " --some-lost 2"), house.told());
    String low = " --half-lost 8 --unsealed 9";
    assertEquals(0, run("seal " + TOMATOES + tomatoes + low), house.told());
  }

  private int run(String line) {
    return house.run(line.split(" "));
  }

  @Test
  void takesTheNamedJarOnceAndSaysWhereItStands() throws Exception {
    assertEquals(0, run("take 260824A-T/03 260824A-T/3 --by Mara --note Grete"), house.told());
    assertTrue(
        house
            .shown()
            .startsWith(
                "take 260824A-T/03 Plums, halved or whole, quart, at cellar B3; use by"
                    + " 2027-08-24"));
    assertTrue(house.shown().contains("never taste it"), house.shown());
    String event = "2026-08-24T13:30-05:00,260824A-T,03,taken,note=Grete,Mara,";
    assertTrue(house.lastEvent().contains(event), house.lastEvent());
    assertEquals(1, run("take 260824A-T/03"));
    assertTrue(
        house.told().contains("Used on August 24, 2026. Wrong jar? Check the number"),
        house.told());
  }

  @Test
  void aNameTakesTheJarToUseFirst() throws Exception {
    assertEquals(0, run("take plums"), house.told());
    assertTrue(house.shown().startsWith("take 260824A-T/02 "), house.shown());
    assertEquals(0, run("take plums quart"), house.told());
    assertTrue(house.shown().startsWith("take 260824A-T/01 "), house.shown());
    // From the refrigerator before the shelf; the unsealed one not at all.
    assertEquals(0, run("take tomatoes"), house.told());
    assertTrue(house.shown().startsWith("take 260824B-R/08 "), house.shown());
    assertTrue(house.shown().contains("in the refrigerator, eat by 2026-08-26"), house.shown());
    assertEquals(0, run("take tomatoes"), house.told());
    assertTrue(house.shown().startsWith("take 260824B-R/01 "), house.shown());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 | take 260824A-X/03 | mistyped: its check character does not fit",
        "1 | take 260824A-T | names no jar",
        "1 | take 260824A-T/15 | the lot has no such jar. it has 01..14",
        "1 | take 260824A-T/08 | Not yet canned. Record the results: jarwright seal 260824A-T",
        "1 | take 260824C-P/01 | jarwright seal 260824C-P",
        "1 | take 260824B-R/09 | Do not shelve. Re-can, freeze or refrigerate by August 25, 2026,"
            + " 01:15",
        "1 | take 260824A-T/1..99999 | 260824A-T/15..99999: the lot has no such jar",
        "1 | take !! | no jar in the house goes by that name",
        "1 | take plms | did you mean plums?",
        "1 | take 260824A-T/01 260824A-T/99 | no such jar",
        "2 | take | take needs a jar or a name",
        "2 | move 260824A-T/01 | move needs jars and a shelf",
        "2 | move 260824A-T/01 --to cellar B4 | needs quotes",
        "1 | move 260824A-T/08 --to attic | jarwright seal 260824A-T first",
        "1 | move 260824B-R/08 --to attic | so it cannot go to a shelf",
        "1 | move 260824B-R/09 --to attic | so it cannot go to a shelf",
        "1 | move 260824B-R/09 --recanned-as 260824B-R | gets a lot of its own",
        "1 | move 260824B-R/09 --recanned-as 260824A-X | mistyped",
        "2 | toss 260824A-T/01 | and a reason",
        "2 | toss plums --why old | toss needs jars by their codes",
        "1 | toss 260824A-X/01 --why old | mistyped",
        "1 | undo 1 | opens the ledger",
        "1 | undo 2 | came after it; undo that first",
        "1 | undo 99 | there is no event 99",
        "2 | undo last | undo takes numbers",
        "2 | undo 0 | undo takes numbers",
      })
  void refusesAndLeavesTheLedgerAlone(int exit, String line, String message) throws Exception {
    List<String> before = house.ledger();
    assertEquals(exit, run(line.strip()), house.told());
    assertTrue(house.told().contains(message), house.told());
    assertEquals("", house.shown());
    assertEquals(before, house.ledger());
  }

  @ParameterizedTest
  @ValueSource(strings = {"bell\u0007", "turned\u202e", "escape\u001b[31m"})
  void whatCannotBePrintedIsNotWritten(String text) throws Exception {
    List<String> before = house.ledger();
    assertEquals(2, house.run("take", "260824A-T/01", "--note", text));
    assertEquals(2, house.run("take", "260824A-T/01", "--by", text));
    assertEquals(2, house.run("move", "260824A-T/01", "--to", text));
    assertEquals(2, house.run("toss", "260824A-T/01", "--why", text));
    assertEquals(2, house.run("toss", "260824A-T/01", "--why", "x".repeat(201)));
    assertEquals(2, house.run("undo", "--why", text));
    assertTrue(house.told().contains("cannot be printed"), house.told());
    assertEquals(before, house.ledger());
  }

  @Test
  void textsOfSeveralLinesAndFormulasStayPlainText() throws Exception {
    assertEquals(0, house.run("toss", "260824A-T/01", "--why", "=1+1\nand | more", "--by", "=x"));
    assertTrue(
        house.lastEvent().contains("01,tossed,why==1+1 and || more,'=x,"), house.lastEvent());
  }

  /** NCHFP as given by Nebraska Extension: half or more lost, 2 to 3 days in the refrigerator. */
  @Test
  void whatWasLeftBeyondItsTimeIsNotTaken() throws Exception {
    house.at("2026-08-27T08:00:00-05:00");
    List<String> before = house.ledger();
    assertEquals(1, run("take 260824B-R/08"));
    assertTrue(house.told().contains("Do not eat. Throw away"), house.told());
    assertTrue(house.told().contains("to be eaten from the refrigerator by August 26, 2026"));
    assertTrue(house.told().contains("Half of the liquid or more was lost. (NCHFP"), house.told());
    assertEquals(before, house.ledger());
  }

  @Test
  void movesSomeOrAllOfALotToAnotherShelf() throws Exception {
    assertEquals(0, house.run("move", "260824A-T/1..3", "--to", "attic, left"), house.told());
    assertTrue(
        house
            .shown()
            .contains("260824A-T/01 Plums, halved or whole, quart: from cellar B3 to attic, left"));
    assertTrue(house.lastEvent().contains("01..03,moved,\"to=attic, left\""), house.lastEvent());
    assertEquals(0, run("move 260824A-T/all --to shed"), house.told());
    assertTrue(house.lastEvent().contains("01..07,moved,to=shed"), house.lastEvent());
  }

  @Test
  void anUnsealedJarGoesWhereItsVerdictAllowsAndIsThenTaken() throws Exception {
    assertEquals(0, run("move 260824B-R/09 --to refrigerator"), house.told());
    assertTrue(house.shown().contains("in the refrigerator, eat by 2026-08-27"), house.shown());
    assertEquals(0, run("undo"), house.told());
    assertEquals(0, run("move 260824B-R/09 --to freezer"), house.told());
    assertTrue(house.lastEvent().contains("09,frozen,"), house.lastEvent());
    assertEquals(0, run("undo"), house.told());
    assertEquals(0, run("move 260824B-R/09 --recanned-as 260824A-T"), house.told());
    assertTrue(house.lastEvent().contains("09,recanned,into=260824A-T"), house.lastEvent());
    assertEquals(1, run("take 260824B-R/09"));
    assertEquals(0, run("undo"), house.told());
    assertEquals(0, run("move 260824B-R/09 --to fridge"), house.told());
    assertEquals(0, run("take 260824B-R/09"), house.told());
  }

  /** AIB 539 (2015) Guide 1: re-canned, frozen or refrigerated within 24 hours. */
  @Test
  void anUnsealedJarIsLostAfterADay() throws Exception {
    house.at("2026-08-25T12:45:01-05:00");
    for (String to : List.of("refrigerator", "freezer", "attic")) {
      assertEquals(1, run("move 260824B-R/09 --to " + to));
      assertTrue(house.told().contains("Do not eat. Throw away"), house.told());
    }
    assertEquals(0, run("toss 260824B-R/09 --why forgotten"), house.told());
  }

  @Test
  void throwsJarsAwayWithTheReasonAndSaysHow() throws Exception {
    assertEquals(0, house.run("toss", "260824A-T/05", "--why", "glass chipped"), house.told());
    assertTrue(house.shown().contains("thrown away, glass chipped"), house.shown());
    // CDC and USDA differ; both are told.
    assertTrue(house.shown().contains("CDC: leave shut, bag twice, tape"), house.shown());
    assertTrue(
        house.shown().contains("USDA: open or leaking? With gloves, boil jar and lid 30 min"));
    assertTrue(house.lastEvent().contains("05,tossed,why=glass chipped"), house.lastEvent());
    assertEquals(1, house.run("toss", "260824A-T/05", "--why", "again"));
    assertEquals(1, run("take 260824A-T/05"));
  }

  @Test
  void undoIsAnEventOfItsOwnAndCanItselfBeUndone() throws Exception {
    assertEquals(0, run("take 260824A-T/05"), house.told());
    List<String> taken = house.ledger();
    assertEquals(0, run("undo --why slip --by Anna"), house.told());
    assertTrue(
        house.shown().contains("taken back: event 12 of 2026-08-24 13:30: Taken 260824A-T/05"),
        house.shown());
    assertEquals(taken, house.ledger().subList(0, taken.size()));
    assertTrue(house.lastEvent().contains(",undone,of=12 | why=slip,Anna,"), house.lastEvent());
    assertEquals(0, run("undo 13"), house.told());
    assertEquals(1, run("take 260824A-T/05"));
  }

  @Test
  void aPlanIsNotTakenBackByAccident() throws Exception {
    assertEquals(0, run("undo 5..11"), house.told());
    List<String> before = house.ledger();
    assertEquals(1, run("undo"));
    assertTrue(house.told().contains("say so: jarwright undo 4"), house.told());
    assertEquals(before, house.ledger());
  }
}
