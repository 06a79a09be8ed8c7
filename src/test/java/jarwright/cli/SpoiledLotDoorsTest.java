package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.LedgerFile;
import jarwright.lot.LotCode;
import jarwright.pantry.Deed;
import jarwright.pantry.Entry;
import jarwright.pantry.Happening;
import jarwright.pantry.InventedKitchen;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.JarStep;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A spoiled jar's lot at every door. CDC, Home-Canned Foods: the toxin of botulism cannot be seen,
 * smelled or tasted; AIB 539 (2015) Guide 1 lists the signs of spoilage.
 */
class SpoiledLotDoorsTest {
  private static final String PLUMS = Household.PLUMS;
  private static final String BEANS = Household.BEANS;

  @TempDir Path folder;
  private Household house;

  /** Nine pints of beans and fourteen quarts of plums, all sound. */
  @BeforeEach
  void fill() throws Exception {
    house = Household.withKit(folder);
    recorded(BEANS, "1..9", InventedKitchen.sound(1));
    recorded(PLUMS, "1..7", InventedKitchen.sound(1));
    recorded(PLUMS, "8..14", InventedKitchen.sound(2));
  }

  private void recorded(String lot, String jars, Happening what) throws Exception {
    OffsetDateTime now = OffsetDateTime.parse("2026-08-24T13:30:00-05:00");
    Entry entry = Entry.of(now, LotCode.parse(lot), JarNumbers.parse(jars), what, "");
    LedgerFile.in(house.file("pantry")).append(List.of(entry));
  }

  private String run(String... args) {
    assertEquals(0, house.run(args), house.told());
    return house.shown();
  }

  private String refused(String line) throws Exception {
    List<String> before = house.ledger();
    assertTrue(house.run(line.split(" ")) != 0, house.shown());
    assertEquals(before, house.ledger(), line);
    return house.told();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "take 260824C-P/02",
        "take 260824C-P/all",
        "take beans",
        "take 260824C-P/02 --looked-at none",
        "trace 260824C-P/02 --looked-at none",
        "move 260824C-P/02 --to attic",
        "move 260824C-P/02 --to freezer",
        "move 260824C-P/02 --to refrigerator",
        "move 260824C-P/02 --recanned-as 260824A-T",
        "labels 260824C-P -o l.pdf",
        "labels 260824C-P --sealed -o l.pdf",
        "undo",
      })
  void ofLowAcidFoodNoOtherJarGetsOut(String line) throws Exception {
    String told = run("trace", "260824C-P/01", "--spoiled", "spurts");
    assertTrue(told.contains("do not eat. Throw away, without opening them"), told);
    assertTrue(told.contains("jarwright toss 260824C-P/02..09 --why TEXT"), told);
    assertFalse(told.contains("--looked-at"), told);
    String why = refused(line);
    if (line.startsWith("take") || line.startsWith("move")) {
      assertTrue(why.contains("Do not eat. Throw away"), why);
      assertTrue(why.contains("Jar 260824C-P/01 of this batch was found spoiled"), why);
    }
  }

  @Test
  void theSameIsShownOfACondemnedJarEverywhere() throws Exception {
    run("trace", "260824C-P/01", "--spoiled", "spurts");
    assertTrue(run("shelf").startsWith("DO NOT EAT. THROW AWAY"), house.shown());
    assertTrue(
        run("trace", "260824C-P/02").contains("jars 02: Do not eat. Throw away; on a shelf"));
    String scanned = run("scan", "260824C-P/02");
    assertTrue(scanned.contains("DO NOT EAT. THROW AWAY."), scanned);
    assertTrue(scanned.indexOf("found spoiled") < scanned.indexOf("headspace"), scanned);
    assertFalse(scanned.contains("Nothing was found wrong"), scanned);
    run("pages", "-o", "site");
    run("shelf", "-o", "s.pdf");
    assertTrue(house.pdf("s.pdf").contains("Do not eat. Throw away."));
    assertTrue(run("shelf", "--format", "csv").contains(",throw-away,"));
    assertTrue(run("trace", "260824C-P", "--format", "csv").contains(",throw-away,"));
    run("toss", "260824C-P/all", "--why", "the lot spoiled");
    assertFalse(run("shelf").contains("260824C-P"), house.shown());
  }

  /** A jar that was found spoiled itself shows that, and not what its verdict once was. */
  @Test
  void aSpoiledJarSaysSoFirst() {
    run("trace", "260824A-T/05", "--spoiled", "leaks,mold");
    String scanned = run("scan", "260824A-T/05");
    assertTrue(scanned.contains("DO NOT EAT. THROW AWAY."), scanned);
    assertTrue(scanned.contains("It was found spoiled on August 24, 2026: leaks, mold."), scanned);
    assertFalse(scanned.contains("Nothing was found wrong"), scanned);
  }

  /** What a sentence says passes for no look, and whatever is seen throws away. */
  @Test
  void acidFoodIsLookedOverSignBySign() throws Exception {
    run("trace", "260824A-T/01", "--spoiled", "spurted");
    List<String> before = house.ledger();
    assertEquals(2, house.run("take", "260824A-T/02", "--looked-at", "lid bulging, leaking"));
    assertEquals(2, house.run("take", "260824A-T/02", "--looked-at", "clear"));
    assertEquals(2, house.run("take", "260824A-T/02", "--looked-at"), "nobody can be asked");
    assertEquals(before, house.ledger());
    run("take", "260824A-T/02", "--looked-at", "none");
    assertTrue(
        house
            .ledger()
            .get(before.size())
            .contains(
                "02,checked,leaks=no | bulges=no | spurts=no | smell=no | mold=no | color=no"),
        house.ledger().toString());
    assertEquals(1, house.run("take", "260824A-T/03", "--looked-at", "bulging,leaks"));
    assertTrue(house.lastEvent().contains(",03,checked,leaks=yes | bulges=yes |"), "kept");
    assertTrue(house.told().contains("Do not eat. Throw away"), house.told());
    refused("take 260824A-T/03 --looked-at none");
    assertTrue(refused("take 260824A-T/04").contains("Do not eat yet"), house.told());
  }

  @Test
  void theTerminalAsksForEverySign() throws Exception {
    run("trace", "260824A-T/01", "--spoiled", "spurted");
    List<String> clean = List.of("no", "no", "maybe", "no", "no", "no", "no");
    assertEquals(0, house.answering(clean, "trace", "260824A-T/02", "--looked-at"));
    assertTrue(house.shown().contains("Does it leak"), house.shown());
    assertTrue(house.lastEvent().contains(",02,checked,leaks=no | "), house.lastEvent());
    List<String> moldy = List.of("no", "no", "no", "no", "yes", "no");
    assertEquals(1, house.answering(moldy, "take", "260824A-T/03", "--looked-at"));
    assertTrue(house.lastEvent().contains("mold=yes | color=no"), house.lastEvent());
    List<String> early = List.of("no", "no");
    List<String> before = house.ledger();
    assertEquals(1, house.answering(early, "take", "260824A-T/04", "--looked-at"));
    assertEquals(before, house.ledger());
  }

  @Test
  void whatIsWrongWithTheWholeLotCondemnsAcidFoodToo() throws Exception {
    run("trace", "260824A-T/01", "--spoiled", "mold", "--cause", "not enough sugar syrup");
    String told = refused("take 260824A-T/02 --looked-at none");
    assertTrue(told.contains("What was wrong was wrong with the whole batch: not enough"), told);
  }

  /** Thrown away as spoiled, it still speaks for its lot; nothing is lost in a reason. */
  @ParameterizedTest
  @CsvSource({
    "lid bulged, bulges",
    "smelled odd, smell",
    "it spurted when opened, spurts",
    "moho en la tapa, mold",
    "spoiled, leaks",
  })
  void spoilageInAReasonIsToldSignBySign(String why, String sign) throws Exception {
    List<String> before = house.ledger();
    assertEquals(1, house.run("toss", "260824C-P/01", "--why", why));
    assertTrue(house.told().contains("Add --seen with what you saw of leaks"), house.told());
    assertEquals(before, house.ledger());
    run("toss", "260824C-P/01", "--why", why, "--seen", sign);
    assertTrue(house.shown().contains("THE OTHER JARS OF THE LOT: do not eat"), house.shown());
    refused("take 260824C-P/02");
    run("toss", "260824C-P/02", "--why", why);
    house.run("toss", "260824A-T/01", "--why", why, "--seen", "none");
    run("take", "260824A-T/02");
  }

  @Test
  void whatWasRecordedInASentenceBeforeNoLongerCounts() throws Exception {
    run("trace", "260824C-P/01", "--spoiled", "spurts");
    run("trace", "260824A-T/01", "--spoiled", "spurts");
    recorded(BEANS, "2", new JarStep(Deed.LOOKED_AT, "lid bulging, liquid leaking"));
    recorded(PLUMS, "2", new JarStep(Deed.LOOKED_AT, "clear"));
    refused("take 260824C-P/02");
    refused("take 260824A-T/02");
  }

  @Test
  void aCountFindsWhatMustNotStandThere() throws Exception {
    run("move", "260824C-P/all", "--to", "attic");
    run("toss", "260824C-P/09", "--why", "broken");
    run("trace", "260824C-P/01", "--spoiled", "spurts");
    house.write("count.csv", "lot,shelf,jars,counted,found\n260824C-P,attic,01..09,,2..9\n");
    String told = run("count", "count.csv", "--apply");
    assertTrue(told.contains("DO NOT EAT: recorded as gone, and here again"), told);
    assertTrue(told.contains("DO NOT EAT from these"), told);
    refused("take 260824C-P/09");
    refused("take 260824C-P/02");
  }

  /** A finding is taken back by its number or as the last, but never without a reason. */
  @Test
  void aDoubtDoesNotVanishUnseen() throws Exception {
    run("trace", "260824C-P/01", "--spoiled", "spurts");
    int event = house.ledger().size() - 1;
    assertTrue(refused("undo").contains("say what was wrong with it"), house.told());
    refused("undo " + event);
    run("undo", String.valueOf(event), "--why", "it was another lot");
    run("take", "260824C-P/02");
    String page = run("scan", "260824C-P/03");
    assertTrue(page.contains("OK TO USE BY"), page);
    assertTrue(page.contains("recorded as spoiled on August 24, 2026. That was taken back"), page);
    assertTrue(page.contains("it was another lot"), page);
    run("undo", "--why", "x");
    run("undo", String.valueOf(event + 1));
    refused("take 260824C-P/03");
  }
}
