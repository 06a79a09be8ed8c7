package jarwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.VerdictTable;
import jarwright.pantry.VerdictRule;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every rule for verdicts, reached from the command line as it is typed. The clock stands at 13:30;
 * the tested processes are plums, raw, quarts 30 min (AIB 539 (2015) p. 2-22), tomatoes in water,
 * pints 45 min with acid (p. 3-10), and snap beans, hot, pints 20 min at 11 psi (p. 4-9), all at
 * 1,378 ft.
 */
class SealVerdictsTest {
  private static final String PLUMS = Household.PLUMS + " --load 1 --start 12:00 --end 12:30";
  private static final String TOMATOES =
      Household.TOMATOES + " --start 12:00 --end 12:45 --kept yes";
  private static final String BEANS = Household.BEANS + " --start 12:00 --end 12:20 --kept yes";
  private static final String CLEAR = " --cloudy no --sealed all";
  private static final String SOUND = " --kept yes" + CLEAR;
  private static final String RECAN = "NOT FOR THE SHELF: CAN AGAIN OR FREEZE by 2026-08-";
  private static final String COLD = "INTO THE REFRIGERATOR NOW. Eat by 2026-08-";

  @TempDir Path folder;

  static Stream<Arguments> rules() {
    return Stream.of(
        // AIB 539 (2015) Guide 1: sealed, cooled, bands off, stored.
        Arguments.of("sound", PLUMS + SOUND, "jars 01..07: ONTO THE SHELF, cellar B3. Use by 2027"),
        // Nebraska Extension, Saving Home-Canned Food in Jars That Did Not Seal: within 2 hours.
        Arguments.of(
            "minutes-short",
            Household.PLUMS + " --load 1 --start 12:00 --end 12:29" + SOUND,
            "jars 01..07: " + RECAN + "24 14:29. Refrigerated instead: eat by 2026-08-27"),
        // Common practice, no source.
        Arguments.of(
            "clock-not-recorded",
            Household.PLUMS + " --load 1 --start ? --end 12:30" + SOUND,
            "jars 01..07: " + RECAN + "24 14:30"),
        // AIB 539 (2015) Guide 1: the whole time starts again; Nebraska Extension: 2 hours.
        Arguments.of(
            "heat-lost", PLUMS + " --kept no" + CLEAR, "jars 01..07: " + RECAN + "24 14:30"),
        // Common practice, no source.
        Arguments.of(
            "heat-not-recorded", PLUMS + " --kept ?" + CLEAR, "jars 01..07: " + RECAN + "24 14:30"),
        // AIB 539 (2015) Guide 1: below the target, the whole time starts again.
        Arguments.of(
            "pressure-low",
            BEANS + " --vented yes --lowest-psi 10" + CLEAR,
            "jars 01..09: " + RECAN + "24 14:20"),
        // AIB 539 (2015) Guide 1: vent 10 minutes before every load.
        Arguments.of(
            "venting-skipped",
            BEANS + " --vented no --lowest-psi 11" + CLEAR,
            "jars 01..09: " + RECAN + "24 14:20"),
        // Common practice, no source.
        Arguments.of(
            "venting-not-recorded", BEANS + " --vented ?" + CLEAR, "jars 01..09: " + RECAN + "24"),
        // AIB 539 (2015) Guide 3: acid in every jar.
        Arguments.of(
            "acid-left-out",
            TOMATOES + " --acid-in-every-jar no" + CLEAR,
            "jars 01..09: " + RECAN + "24 14:45"),
        // Common practice, no source.
        Arguments.of(
            "acid-not-recorded", TOMATOES + " --acid ?" + CLEAR, "jars 01..09: " + RECAN + "24"),
        // AIB 539 (2015) Guide 1: 24 hours; FSIS: opened food 3 to 4 days; Kansas State: a week.
        Arguments.of(
            "not-sealed not-sealed-opened not-sealed-week",
            PLUMS + SOUND + " --unsealed 3,5",
            "jars 03 05: " + RECAN + "25 12:30. Refrigerated instead: eat by 2026-08-27"),
        // NCHFP as given by Nebraska Extension: less than half, use first.
        Arguments.of(
            "some-lost",
            PLUMS + SOUND + " --some-lost 4",
            "jar 04: ONTO THE SHELF, cellar B3, USE FIRST"),
        // NCHFP as given by Nebraska Extension: 2 to 3 days, the stricter of it and of FSIS.
        Arguments.of(
            "half-lost half-lost-opened",
            PLUMS + SOUND + " --half-lost 6",
            "jar 06: " + COLD + "26"),
        // Common practice, no source; days from FSIS.
        Arguments.of(
            "cloudy-and-low",
            PLUMS + " --kept yes --cloudy yes --sealed all --some-lost 4",
            "jar 04: " + COLD + "27"),
        // Common practice, no source.
        Arguments.of(
            "cloudy-none-low",
            PLUMS + " --kept yes --cloudy yes --sealed all",
            "jars 01..07: ONTO THE SHELF, cellar B3, USE FIRST"));
  }

  private static String[] typed(String line) {
    return ("seal " + line).split(" ");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void eachRuleIsReachedAndShownWithItsSource(String ids, String line, String verdict)
      throws Exception {
    Household house = Household.withKit(folder);
    assertEquals(0, house.run(typed(line)), house.told());
    String shown = house.shown();
    assertTrue(shown.contains(verdict), shown);
    for (String id : ids.split(" ")) {
      VerdictRule rule = VerdictTable.read().byId(id).orElseThrow();
      assertTrue(shown.contains("rule " + id + " (" + rule.source() + ")"), shown);
    }
    // The laxer rule is never the one that decides.
    assertFalse(shown.contains("half-lost-kept"), shown);
  }

  @Test
  void noRuleIsLeftOut() throws Exception {
    Set<String> reached = new TreeSet<>(Set.of("half-lost-kept"));
    rules().forEach(r -> reached.addAll(Arrays.asList(((String) r.get()[0]).split(" "))));
    Set<String> all = new TreeSet<>();
    VerdictTable.read().all().forEach(r -> all.add(r.id()));
    assertEquals(all, reached);
  }

  /** A load that was not processed as tested fails with all its jars: the unsealed ones too. */
  @Test
  void aMinuteShortFailsTheWholeLoadAndSaysByHowMuch() throws Exception {
    Household house = Household.withKit(folder);
    String line = Household.PLUMS + " --load 1 --start 12:00 --end 12:29" + SOUND + " --unsealed 3";
    assertEquals(0, house.run(typed(line)), house.told());
    assertTrue(house.shown().contains("tested process 30 min at a full boil"), house.shown());
    assertTrue(house.shown().contains("NOT PROCESSED AS TESTED: every jar of the load"));
    assertTrue(house.shown().contains("It lacks 1 min."), house.shown());
    assertFalse(house.shown().contains("SHELF, cellar"), house.shown());
  }

  @Test
  void aRestartForAFullTimeIsAsGoodAsAnUnbrokenOne() throws Exception {
    Household house = Household.withKit(folder);
    String line =
        Household.PLUMS + " --load 1 --start 11:50 --kept yes --restarts 1 --last-start 12:00";
    assertEquals(0, house.run(typed(line + " --end 12:30" + CLEAR)), house.told());
    assertTrue(house.shown().contains("12:30, 30 min, begun again 1 time"), house.shown());
    assertTrue(house.shown().contains("jars 01..07: ONTO THE SHELF"), house.shown());
  }

  /** Nebraska Extension: within 2 hours; after that the jars cannot be saved. */
  @Test
  void whatCouldHaveBeenSavedIsThrownAwayOnceItIsTooLate() throws Exception {
    Household house = Household.withKit(folder).at("2026-08-24T14:29:01-05:00");
    String line = Household.PLUMS + " --load 1 --start 12:00 --end 12:29" + SOUND;
    assertEquals(0, house.run(typed(line)), house.told());
    assertTrue(house.shown().contains("jars 01..07: THROW AWAY, untasted."), house.shown());
    assertTrue(house.shown().contains("that time was over when this was recorded"));
    assertTrue(house.shown().contains("CDC: leave shut, bag twice"), house.shown());
  }

  /** The clock stands in the kitchen's zone, not in the computer's, which here is UTC. */
  @Test
  void timesAreThoseOfTheKitchensClock() throws Exception {
    Household house = Household.withKit(folder);
    assertEquals(0, house.run(typed(PLUMS + SOUND + " --by Anna")), house.told());
    List<String> ledger = house.ledger();
    String run = ledger.get(ledger.size() - 2);
    assertTrue(run.contains("start=2026-08-24T12:00-05:00 | end=2026-08-24T12:30-05:00"), run);
    assertTrue(run.contains("2026-08-24T13:30-05:00," + Household.PLUMS + ",01..07,load"), run);
    assertTrue(run.contains(",Anna,"), run);
  }
}
