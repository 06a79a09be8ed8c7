package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What happened, asked question by question; nothing that was answered is lost. */
class SealDialogTest {
  private static final String TOMATOES = Household.TOMATOES;
  private static final String BEANS = Household.BEANS;

  @TempDir Path folder;
  private Household house;

  @BeforeEach
  void makeTheKit() throws Exception {
    house = Household.withKit(folder);
  }

  private int answer(String lot, String answers) {
    return house.answering(List.of(answers.split("\\|", -1)), "seal", lot);
  }

  private void nextDay() {
    house.at("2026-08-25T08:00:00-05:00");
  }

  private Path draft(String lot) {
    return house.file("pantry/unfinished/seal-" + lot + ".csv");
  }

  @Test
  void asksAfterTheBoilAndAgainWhenTheJarsHaveCooled() throws Exception {
    assertEquals(
        0,
        answer(TOMATOES, "none||none||12.00|maybe|yes|12:45|?|none||yes"),
        house.told() + house.shown());
    String shown = house.shown();
    assertTrue(shown.contains("Please type an answer."), shown);
    assertTrue(shown.contains("\"maybe\" is neither yes nor no"), shown);
    assertTrue(shown.contains("jars 01..09: COOLING"), shown);
    assertFalse(shown.contains("did not seal"), shown);
    assertFalse(Files.exists(draft(TOMATOES)));
    List<String> once = house.ledger();

    assertEquals(0, answer(TOMATOES, ""), house.told());
    assertTrue(house.shown().contains("cooling. Test their seals from 2026-08-25 00:45"));
    assertEquals(once, house.ledger());

    nextDay();
    assertEquals(0, answer(TOMATOES, "3|none|4-5|no|none|lid 3 was old|yes"), house.told());
    shown = house.shown();
    assertTrue(shown.contains("jar 03: DO NOT SHELVE"), shown);
    assertTrue(shown.contains("jars 04 05: REFRIGERATE NOW"), shown);
    assertTrue(shown.contains("jars 01 02 06..09: OK FOR THE SHELF"), shown);
    assertTrue(house.ledger().toString().contains("note=lid 3 was old"));
  }

  @Test
  void asksAllInOneGoWhereTheJarsHaveCooled() throws Exception {
    nextDay();
    String run = "none||none|12:00|yes|12:45|no|none|";
    assertEquals(0, answer(TOMATOES, run + "|none|2|none|bulges 4|yes"), house.told());
    assertTrue(house.shown().contains("jar 04: THROW AWAY"), house.shown());
    assertFalse(house.shown().contains("OK FOR THE SHELF"), house.shown());
  }

  @Test
  void asksOfADialGaugeWhatIsItsOwn() throws Exception {
    String typed = "9|2026-08-24|no|?|12:00|no|1|12:05|yes|12:25|?|no|none||yes";
    assertEquals(0, answer(BEANS, typed), house.told() + house.said());
    String shown = house.shown();
    assertTrue(shown.contains("Was the dial gauge tested within a year"), shown);
    assertTrue(shown.contains("forced-cooling: cooled with water"), shown);
    assertFalse(shown.contains("uncovered:"), shown);
    assertTrue(shown.contains("at no less than 11 psi"), shown);
    assertTrue(shown.contains("The canner was not vented in full."), shown);
    assertTrue(shown.contains("whether the dial gauge was tested"), shown);
    assertTrue(shown.contains("260824C-P/09 never filled"), shown);
    assertTrue(shown.contains("jars 01..08: DO NOT SHELVE"), shown);
  }

  /** AIB 539 (2015) Guide 1: whenever the boil is lost, the whole time starts again. */
  @ParameterizedTest
  @CsvSource({"yes, COOLING", "no, Boil or pressure was lost", "?, DO NOT SHELVE"})
  void aBoilLostAgainAfterTheRestartIsAskedFor(String heldThen, String shown) throws Exception {
    String typed = "none||none|11:30|no|1|11:45|" + heldThen + "|12:30|no|none||yes";
    assertEquals(0, answer(TOMATOES, typed), house.told());
    assertTrue(house.shown().contains(shown), house.shown());
    assertEquals(heldThen.equals("yes"), house.shown().contains("COOLING"), house.shown());
  }

  /** Stopped after any answer, it goes on from there, and the ledger is as if it had not been. */
  @Test
  void whereverItStopsTheAnswersAreKept() throws Exception {
    List<String> answers =
        List.of(
            "none", "", "3", "11:30", "no", "1", "11:45", "yes", "12:30", "no", "none", "", "yes");
    assertEquals(0, house.answering(answers, "seal", TOMATOES), house.told());
    String whole = house.lastEvent().replaceAll(",[^,]*$", "");
    assertEquals(0, house.run("undo", "6", "5"), house.told());
    for (int stop = 1; stop < answers.size() - 1; stop++) {
      List<String> before = house.ledger();
      assertEquals(1, house.answering(answers.subList(0, stop), "seal", TOMATOES));
      assertTrue(house.told().contains("the answers ended early"), house.told());
      assertTrue(house.told().contains("goes on from there"), house.told());
      assertEquals(before, house.ledger());
      assertTrue(Files.exists(draft(TOMATOES)));
      List<String> rest = new ArrayList<>(List.of("yes"));
      // An answer that was left out is asked for again.
      rest.addAll(stop <= 1 ? answers.subList(1, answers.size()) : after(answers, stop));
      assertEquals(0, house.answering(rest, "seal", TOMATOES), stop + house.told() + house.said());
      assertTrue(house.shown().contains("You answered before:"), house.shown());
      assertTrue(house.shown().contains("jar 03: DO NOT SHELVE"), house.shown());
      assertEquals(whole.split(",", 6)[5], lastOutcome(), "stopped after " + stop);
      assertFalse(Files.exists(draft(TOMATOES)));
      List<String> ledger = house.ledger();
      int last = ledger.size() - 1;
      assertEquals(0, house.run("undo", String.valueOf(last), String.valueOf(last - 1)));
    }
  }

  /** The day that nobody typed is asked again. */
  private static List<String> after(List<String> answers, int stop) {
    List<String> rest = new ArrayList<>(List.of(""));
    rest.addAll(answers.subList(stop, answers.size()));
    return rest;
  }

  private String lastOutcome() throws Exception {
    return house.lastEvent().replaceAll(",[^,]*$", "").split(",", 6)[5];
  }

  @Test
  void whoDeclinesToSaveKeepsTheAnswersAndMayBeginAgain() throws Exception {
    List<String> before = house.ledger();
    assertEquals(1, answer(TOMATOES, "none||none|12:00|yes|12:30|no|none||no"));
    assertTrue(house.told().contains("nothing was recorded"), house.told());
    assertEquals(before, house.ledger());
    assertEquals(0, answer(TOMATOES, "no|none||none|12:00|yes|12:45|no|none||yes"), house.told());
    assertTrue(house.shown().contains("COOLING"), house.shown());
    assertFalse(Files.exists(draft(TOMATOES)));
  }

  /** Each load is recorded when it is told; one that is still in the canner waits. */
  @Test
  void loadsAreRecordedOneByOne() throws Exception {
    String first = "yes|none||12:00|yes|12:30|no|none||yes";
    assertEquals(0, answer(Household.PLUMS, first + "|no"), house.told());
    assertTrue(house.shown().contains("Load 2 of 2, jars 08..14: has it been processed"));
    assertEquals(6, house.ledger().size());
    String second = "yes|none||12:40|yes|13:10|no|none||yes";
    assertEquals(0, answer(Household.PLUMS, second), house.told());
    assertTrue(house.shown().contains("Load 1, jars 01..07: cooling"), house.shown());
    assertEquals(7, house.ledger().size());
    nextDay();
    assertEquals(
        0, answer(Household.PLUMS, "none|none|none|none||yes|9|none|none|none||yes"), house.told());
    assertTrue(house.shown().contains("jars 01..07: OK FOR THE SHELF"), house.shown());
    assertTrue(house.shown().contains("jar 09: DO NOT SHELVE"), house.shown());
  }

  @Test
  void noneOfTheJarsWasFilled() throws Exception {
    assertEquals(0, answer(TOMATOES, "all|yes"), house.told());
    assertTrue(house.shown().contains("260824B-R/01..09 never filled"), house.shown());
  }

  /** Found unsealed after a day and a night: where it stood decides. */
  @Test
  void asksWhereAJarWasKeptWhoseTimeIsOver() throws Exception {
    assertEquals(0, answer(TOMATOES, "none||none|12:00|yes|12:45|no|none||yes"), house.told());
    house.at("2026-08-25T14:45:00-05:00");
    String seals = "3,4|none|none|none||";
    assertEquals(0, answer(TOMATOES, seals + "3|none|2026-08-24 22:00|yes"), house.told());
    assertTrue(house.shown().contains("The time in which jars 03 04 could be saved"));
    assertTrue(house.shown().contains("jar 03: REFRIGERATE NOW"), house.shown());
    assertTrue(house.shown().contains("eat it by 2026-08-27"), house.shown());
    assertTrue(house.shown().contains("jar 04: THROW AWAY"), house.shown());
  }

  @Test
  void asksNothingOfALotThatIsRecorded() throws Exception {
    nextDay();
    String run = " --start 12:00 --end 12:45 --kept yes --cloudy no --acid yes --sealed all";
    assertEquals(0, house.run(("seal " + TOMATOES + run).split(" ")), house.told());
    assertEquals(1, house.answering(List.of(), "seal", TOMATOES));
    assertTrue(house.told().contains("recorded as event 5"), house.told());
    assertEquals("", house.shown());
  }

  /** In a recipe's acid a jar can go without as well. */
  @Test
  void asksForTheAcidOfARecipe() throws Exception {
    house.write(
        "salsa.yaml",
        """
        batches:
          - product: tomato-salsa-paste-tomatoes
            jar: pint
            jars: 9
            date: 2026-08-24
        """);
    assertEquals(0, house.run("kit", "salsa.yaml"), house.told());
    String lot = house.lastEvent().split(",")[2];
    assertEquals(0, answer(lot, "none||?|12:00|yes|12:45|no|none||yes"), house.told());
    assertTrue(house.shown().contains("full vinegar, lemon or lime juice"), house.shown());
    assertTrue(house.shown().contains("DO NOT SHELVE"), house.shown());
  }
}
