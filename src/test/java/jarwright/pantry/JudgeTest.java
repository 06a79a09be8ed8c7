package jarwright.pantry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.VerdictTable;
import jarwright.quantity.GaugePressure;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The verdicts against what is published. The tested process of all cases is 40 minutes; the load
 * of a sound case ends at 10:40.
 */
class JudgeTest {
  private static final OffsetDateTime TEN = OffsetDateTime.parse("2026-08-24T10:00-05:00");
  private static final OffsetDateTime END = TEN.plusMinutes(40);
  private static final LocalDate DAY = LocalDate.of(2026, 8, 24);
  private static final Required BOIL = new Required(40, Optional.empty(), true);
  private static final Required PRESSURE =
      new Required(40, Optional.of(GaugePressure.psi(11)), false);
  private static Judge judge;

  @BeforeAll
  static void readTheRules() throws Exception {
    judge = new Judge(VerdictTable.read());
  }

  /** How a load went; each case names only what differs from a sound one. */
  private static Observed seen(String... differences) {
    Map<String, String> all = new TreeMap<>();
    all.putAll(
        Map.of(
            "start",
            TEN.toString(),
            "end",
            END.toString(),
            "kept",
            "yes",
            "lowest",
            "11 psi",
            "restarts",
            "0",
            "cloudy",
            "no",
            "acid",
            "yes",
            "vented",
            "yes"));
    for (String difference : differences) {
      String[] parts = difference.split("=", 2);
      all.put(parts[0], parts[1]);
    }
    Detail[] detail = {Detail.NONE};
    all.forEach((key, value) -> detail[0] = detail[0].with(key, value));
    return Observed.from(detail[0]);
  }

  private static Judged jar(
      Required required, Observed seen, boolean sealed, Liquid lost, int hour) {
    return judge(required, seen, sealed, lost, lost != Liquid.NONE, END.plusHours(hour));
  }

  private static Judged judge(
      Required required,
      Observed how,
      boolean sealed,
      Liquid lost,
      boolean anyLow,
      OffsetDateTime now) {
    LoadRun run = new LoadRun(1, required, how, "");
    Seen seen = new Seen(sealed, lost, anyLow, how.cloudy(), Set.of());
    return judge.judge(run, 3, Optional.of(seen), Optional.empty(), now).orElseThrow();
  }

  private static Judged sealed(Required required, Observed seen, int hours) {
    return jar(required, seen, true, Liquid.NONE, hours);
  }

  private static List<String> why(Judged judged) {
    return judged.because().stream().map(VerdictRule::id).toList();
  }

  @Test
  @DisplayName("AIB 539 Guide 1: sealed and processed as tested, store it")
  void soundJarsGoOnTheShelf() {
    assertEquals(new Verdict.Shelf(), sealed(BOIL, seen(), 14).verdict());
    assertEquals(new Verdict.Shelf(), sealed(PRESSURE, seen(), 14).verdict());
    assertEquals(List.of("sound"), why(sealed(BOIL, seen(), 14)));
  }

  @Test
  @DisplayName("AIB 539 Guide 1: unsealed, within 24 hours re-can, freeze, or refrigerate")
  void unsealedJarsAreRecannedWithinADay() {
    Judged judged = jar(BOIL, seen(), false, Liquid.NONE, 14);
    assertEquals(
        new Verdict.Recan(END.plusHours(24), Optional.of(DAY.plusDays(3))), judged.verdict());
    assertEquals(Grade.RECAN, jar(BOIL, seen(), false, Liquid.NONE, 24).verdict().grade());
  }

  @Test
  @DisplayName("AIB 539 Guide 1: unsealed for more than 24 hours, throw away")
  void unsealedJarsAreThrownAwayAfterADay() {
    Observed seen = seen();
    OffsetDateTime late = END.plusHours(24).plusSeconds(1);
    Judged judged = judge(BOIL, seen, false, Liquid.NONE, false, late);
    assertEquals(new Verdict.ThrowAway(), judged.verdict());
  }

  @Test
  @DisplayName("Kansas State: refrigerated within one week; FSIS: 3 to 4 days. The stricter holds")
  void whereSourcesDifferTheShorterTimeHolds() {
    Verdict.Recan recan = (Verdict.Recan) jar(BOIL, seen(), false, Liquid.NONE, 1).verdict();
    assertEquals(Optional.of(DAY.plusDays(3)), recan.eatBy());
  }

  @Test
  @DisplayName(
      "Nebraska: incorrect processing time, re-can within 2 hours; all jars, sealed or not")
  void oneMinuteShortFailsTheWholeLoad() {
    Observed seen = seen("end=" + TEN.plusMinutes(39));
    Verdict within = new Verdict.Recan(TEN.plusMinutes(159), Optional.of(DAY.plusDays(3)));
    assertEquals(within, sealed(BOIL, seen, 1).verdict());
    assertEquals(within, jar(BOIL, seen, false, Liquid.NONE, 1).verdict());
    assertEquals(List.of("minutes-short"), why(sealed(BOIL, seen, 1)));
    assertEquals(new Verdict.ThrowAway(), sealed(BOIL, seen, 2).verdict());
    assertEquals(new Verdict.ThrowAway(), jar(BOIL, seen, false, Liquid.NONE, 14).verdict());
  }

  @Test
  void oneSecondShortIsShort() {
    Observed seen = seen("end=" + END.minusSeconds(1));
    assertEquals(List.of("minutes-short"), why(sealed(BOIL, seen, 1)));
  }

  @ParameterizedTest
  @DisplayName("Nebraska: safe method not followed, re-can within 2 hours, then throw away")
  @CsvSource({
    "kept=no, heat-lost",
    "kept=, heat-not-recorded",
    "acid=no, acid-left-out",
    "acid=, acid-not-recorded"
  })
  void aLoadThatWentWrongFailsWhole(String difference, String rule) {
    Observed seen = seen(difference);
    assertEquals(
        new Verdict.Recan(END.plusHours(2), Optional.of(DAY.plusDays(3))),
        sealed(BOIL, seen, 2).verdict());
    assertEquals(List.of(rule), why(sealed(BOIL, seen, 2)));
    assertEquals(new Verdict.ThrowAway(), sealed(BOIL, seen, 3).verdict());
  }

  @ParameterizedTest
  @DisplayName(
      "AIB 539 Guide 1: vent 10 minutes; below the pressure start again. Nebraska: 2 hours")
  @CsvSource({
    "kept=no, heat-lost",
    "lowest=10 psi, pressure-low",
    "lowest=75 kPa, pressure-low",
    "vented=no, venting-skipped",
    "vented=, venting-not-recorded"
  })
  void aPressureLoadThatWentWrongFailsWhole(String difference, String rule) {
    Observed seen = seen(difference);
    assertEquals(List.of(rule), why(sealed(PRESSURE, seen, 2)));
    assertEquals(Grade.RECAN, sealed(PRESSURE, seen, 2).verdict().grade());
    assertEquals(new Verdict.ThrowAway(), sealed(PRESSURE, seen, 3).verdict());
  }

  @Test
  @DisplayName("AIB 539 Guide 1: boil or pressure lost, the whole time starts again")
  void aFullRestartMakesItGood() {
    Observed again =
        seen("kept=yes", "restarts=1", "last-start=" + TEN, "start=" + TEN.minusHours(1));
    assertEquals(new Verdict.Shelf(), sealed(BOIL, again, 14).verdict());
    Observed dipped =
        seen("lowest=9 psi", "restarts=1", "last-start=" + TEN, "start=" + TEN.minusHours(1));
    assertEquals(new Verdict.Shelf(), sealed(PRESSURE, dipped, 14).verdict());
  }

  @Test
  @DisplayName("AIB 539 Guide 1: boil or pressure lost again, the whole time starts once more")
  void whatIsLostAfterTheLastRestartFailsTheLoad() {
    Observed lost =
        seen("kept=no", "restarts=1", "last-start=" + TEN, "start=" + TEN.minusHours(1));
    assertEquals(List.of("heat-lost"), why(sealed(BOIL, lost, 1)));
    assertEquals(List.of("heat-lost"), why(sealed(PRESSURE, lost, 1)));
  }

  @Test
  @DisplayName("AIB 539 Guide 1: not the time in all, but the whole time after the restart")
  void aRestartThatWasNotHeldInFullIsShort() {
    Observed seen =
        seen("restarts=1", "start=" + TEN.minusHours(1), "last-start=" + TEN.plusMinutes(1));
    assertEquals(List.of("minutes-short"), why(sealed(BOIL, seen, 1)));
  }

  @Test
  @DisplayName("common practice, no source: what is not written down counts as not done")
  void aClockThatNobodyWroteDownFailsTheLoad() {
    assertEquals(List.of("clock-not-recorded"), why(sealed(BOIL, seen("end="), 0)));
    // Without an end the two hours count from the start, which is stricter.
    assertEquals(
        new Verdict.Recan(TEN.plusHours(2), Optional.of(DAY.plusDays(3))),
        sealed(BOIL, seen("end="), 0).verdict());
    assertEquals(List.of("clock-not-recorded"), why(sealed(BOIL, seen("start="), 0)));
    assertEquals(new Verdict.ThrowAway(), sealed(BOIL, seen("start=", "end="), 0).verdict());
    assertEquals(List.of("clock-not-recorded"), why(sealed(BOIL, seen("restarts=1"), 0)));
  }

  @Test
  @DisplayName("NCHFP by Nebraska: sealed, less than half lost, use first")
  void someLiquidLostIsUsedFirst() {
    Judged judged = jar(BOIL, seen(), true, Liquid.SOME, 14);
    assertEquals(new Verdict.UseFirst(), judged.verdict());
    assertEquals(List.of("some-lost"), why(judged));
  }

  @Test
  @DisplayName("NCHFP by Nebraska: half or more lost, refrigerate, 2 to 3 days; Missouri is laxer")
  void halfTheLiquidLostIsEatenWithinTwoDays() {
    Judged judged = jar(BOIL, seen(), true, Liquid.HALF_OR_MORE, 14);
    assertEquals(new Verdict.Refrigerate(DAY.plusDays(2)), judged.verdict());
    assertEquals(List.of("half-lost", "half-lost-opened"), why(judged));
    assertEquals(
        new Verdict.ThrowAway(), jar(BOIL, seen(), true, Liquid.HALF_OR_MORE, 24 * 4).verdict());
  }

  @Test
  @DisplayName("common practice, no source: cloudy water, the jar with low liquid is refrigerated")
  void cloudyWaterPointsToTheLowJar() {
    assertEquals(
        new Verdict.Refrigerate(DAY.plusDays(3)),
        jar(BOIL, seen("cloudy=yes"), true, Liquid.SOME, 14).verdict());
    Judged other = judge(BOIL, seen("cloudy=yes"), true, Liquid.NONE, true, END.plusHours(14));
    assertEquals(new Verdict.Shelf(), other.verdict());
  }

  @Test
  @DisplayName("common practice, no source: cloudy water and no low jar, all are used first")
  void cloudyWaterWithoutALowJarMakesAllUseFirst() {
    assertEquals(new Verdict.UseFirst(), sealed(BOIL, seen("cloudy=yes"), 14).verdict());
    assertEquals(new Verdict.UseFirst(), sealed(BOIL, seen("cloudy="), 14).verdict());
  }

  @Test
  void theStricterOfTwoFindingsDecidesAndTheShorterTimesHold() {
    Judged judged = jar(BOIL, seen(), false, Liquid.HALF_OR_MORE, 14);
    assertEquals(
        new Verdict.Recan(END.plusHours(24), Optional.of(DAY.plusDays(2))), judged.verdict());
    Observed wrong = seen("acid=no", "kept=no");
    assertEquals(List.of("heat-lost", "acid-left-out"), why(sealed(BOIL, wrong, 1)));
  }

  @ParameterizedTest
  @EnumSource(Liquid.class)
  void nothingMakesAFailedLoadFitForTheShelf(Liquid lost) {
    for (String difference : List.of("kept=no", "acid=no", "end=" + TEN.plusMinutes(39), "end=")) {
      for (boolean sealed : List.of(true, false)) {
        Grade grade = jar(BOIL, seen(difference), sealed, lost, 1).verdict().grade();
        assertTrue(grade.isStricterThan(Grade.USE_FIRST), difference);
      }
    }
  }

  @Test
  void acidAndVentingAreAskedForOnlyWhereTheProcessNeedsThem() {
    Required plain = new Required(40, Optional.empty(), false);
    assertEquals(
        new Verdict.Shelf(), sealed(plain, seen("acid=", "vented=", "lowest="), 14).verdict());
  }

  @Test
  void theTimesHoldOnTheKitchensClockWhateverTheOffset() {
    Judged utc =
        judge(
            BOIL,
            seen(),
            true,
            Liquid.HALF_OR_MORE,
            true,
            OffsetDateTime.parse("2026-08-27T04:59:59Z"));
    assertEquals(Grade.REFRIGERATE, utc.verdict().grade());
    Judged after =
        judge(
            BOIL,
            seen(),
            true,
            Liquid.HALF_OR_MORE,
            true,
            OffsetDateTime.parse("2026-08-27T05:00:00Z"));
    assertEquals(Grade.THROW_AWAY, after.verdict().grade());
  }
}
