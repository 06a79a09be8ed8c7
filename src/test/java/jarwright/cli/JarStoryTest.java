package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.LedgerFile;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.pantry.Standing;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A household from the kit to the last label, told by what it types and what it is shown. */
class JarStoryTest {
  @TempDir Path folder;

  private Pantry pantry() throws Exception {
    return LedgerFile.in(folder.resolve("pantry")).read().pantry();
  }

  @Test
  void fromTheKitToTheLastLabel() throws Exception {
    Household house = new Household(folder);
    assertEquals(0, house.run("kit", "plan.yaml"), house.told());

    house.at("2026-08-24T13:00:00-05:00");
    String seal =
        "seal 260824A-T --kept yes --cloudy no --sealed all --by Anna"
            + " --load 1 --start 00:10 --end 00:40 --some-lost 2"
            + " --load 2 --start 00:20 --end 00:50 --unsealed 8 --half-lost 9";
    assertEquals(0, house.run(seal.split(" ")), house.told());
    assertTrue(house.shown().contains("jars 01 03..07: OK FOR THE SHELF, cellar B3."));
    assertTrue(house.shown().contains("jar 08: DO NOT SHELVE: RE-CAN, FREEZE OR REFRIGERATE BY"));

    assertEquals(0, house.run("take", "plums", "--by", "Mara"), house.told());
    assertTrue(house.shown().contains("take 260824A-T/09"), house.shown());
    assertEquals(0, house.run("move", "260824A-T/8", "--to", "freezer"), house.told());
    assertEquals(0, house.run("toss", "260824A-T/10", "--why", "dropped"), house.told());
    assertEquals(0, house.run("toss", "260824A-T/11", "--why", "dropped"), house.told());
    assertEquals(0, house.run("undo", "--why", "it was only one"), house.told());

    assertEquals(0, house.run("labels", "260824A-T", "--sealed", "-o", "l.pdf"), house.told());
    assertTrue(house.told().contains("wrote") && house.told().contains("11 labels"), house.told());
    assertTrue(house.told().contains("no label for 260824A-T/08..10"), house.told());
    String labels = house.pdf("l.pdf");
    assertTrue(labels.contains("260824A-T/01") && labels.contains("260824A-T/11"), labels);
    assertTrue(!labels.contains("260824A-T/09") && !labels.contains("260824A-T/10"), labels);

    List<LedgerEvent> events = LedgerFile.in(folder.resolve("pantry")).read().events();
    assertEquals(
        List.of(
            "opened", "planned", "planned", "planned", "load", "outcome", "outcome", "load",
            "outcome", "outcome", "outcome", "taken", "frozen", "tossed", "tossed", "undone"),
        events.stream().map(e -> e.what().kind()).toList());
    assertEquals(
        Map.of(
            Standing.Kind.PLANNED, 18,
            Standing.Kind.ON_SHELF, 11,
            Standing.Kind.IN_FREEZER, 1,
            Standing.Kind.TAKEN, 1,
            Standing.Kind.TOSSED, 1),
        pantry().counts());
    assertTrue(pantry().remarks().isEmpty(), pantry().remarks().toString());
  }
}
