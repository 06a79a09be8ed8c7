package jarwright.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.pantry.Background;
import jarwright.pantry.Doubt;
import jarwright.pantry.InventedKitchen;
import jarwright.pantry.Jar;
import jarwright.pantry.Liquid;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Origin;
import jarwright.pantry.Outcome;
import jarwright.pantry.Spoiled;
import jarwright.pantry.Standing;
import jarwright.pantry.Verdict;
import jarwright.render.WordBundle;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The large words on a jar's page, standing by standing. The rules are the program's own. */
class HeadlinesTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-08-26T08:00:00-05:00");
  private static final OffsetDateTime LATER = OffsetDateTime.parse("2027-08-25T08:00:00-05:00");
  private static final Standing SHELF = new Standing.OnShelf("cellar B3", false);
  private static final LotFacts FACTS = InventedKitchen.facts("plums-halved-or-whole");
  private static final Doubt SPURTED =
      new Doubt(Doubt.Kind.TO_CHECK, InventedKitchen.PLUMS.jar(9), NOW, new Spoiled("spurted"));

  private static Jar jar(LotFacts facts, Standing standing, Verdict verdict) {
    Outcome outcome = new Outcome(1, true, Liquid.NONE, "", verdict, List.of());
    return with(facts, standing, Optional.of(outcome), Optional.empty());
  }

  private static Jar with(
      LotFacts facts, Standing standing, Optional<Outcome> outcome, Optional<Doubt> doubt) {
    Origin origin = facts.madeHere() ? new Origin.MadeHere() : new Origin.Unvouched();
    Background background = new Background(origin, "", Optional.empty());
    return new Jar(
        InventedKitchen.PLUMS.jar(3),
        facts,
        background,
        standing,
        outcome,
        doubt,
        Optional.empty());
  }

  private static Jar jar(Standing standing) {
    return jar(FACTS, standing, new Verdict.Shelf());
  }

  private static Jar inDoubt(Standing standing) {
    Jar jar = jar(standing);
    return with(jar.facts(), jar.standing(), jar.outcome(), Optional.of(SPURTED));
  }

  private static Jar withoutOutcome(LotFacts facts, Standing standing) {
    return with(facts, standing, Optional.empty(), Optional.empty());
  }

  private static void says(Tone tone, String words, Jar jar, OffsetDateTime now) {
    Headline headline = new Headlines(WordBundle.load("en"), now).of(jar);
    assertEquals(tone + " " + words, headline.tone() + " " + headline.words(), jar.toString());
  }

  @Test
  void aSoundJarIsGoodUntilItsDateAndThatDayToo() {
    says(Tone.GOOD, "OK to use by August 24, 2027", jar(SHELF), NOW);
    says(Tone.GOOD, "Use soon, by August 24, 2027", jar(SHELF), LATER.minusDays(1));
    says(Tone.FIRST, "Past its use-by date, August 24, 2027", jar(SHELF), LATER);
  }

  @Test
  void aJarToBeUsedFirstSaysSo() {
    says(
        Tone.FIRST,
        "Use first, by August 24, 2027",
        jar(FACTS, new Standing.OnShelf("", true), new Verdict.UseFirst()),
        NOW);
  }

  /** On its last day it is still for eating, on the next for throwing away. */
  @Test
  void theRefrigeratorHasAnEnd() {
    LocalDate eatBy = NOW.toLocalDate();
    Jar cold = jar(FACTS, new Standing.InRefrigerator(eatBy), new Verdict.Refrigerate(eatBy));
    says(Tone.COLD, "Refrigerator: eat by August 26, 2026", cold, NOW);
    says(Tone.STOP, "Do not eat. Throw away.", cold, NOW.plusDays(1));
    says(Tone.GOOD, "Freezer", jar(new Standing.InFreezer()), NOW);
  }

  @Test
  void aCoolingJarHasAnHourFromWhichItsSealIsTested() {
    Jar cooling = withoutOutcome(FACTS, new Standing.Cooling(1, NOW));
    says(
        Tone.LOOK,
        "Cooling: test the seal from August 26, 2026, 08:00",
        cooling,
        NOW.minusSeconds(1));
    says(Tone.COLD, "Test the seal now", cooling, NOW);
    says(Tone.COLD, "Test the seal now", cooling, NOW.plusYears(1));
  }

  @Test
  void aJarToBeCannedAgainHasAnHour() {
    Verdict verdict = new Verdict.Recan(NOW, Optional.empty());
    Jar recan = jar(FACTS, new Standing.ToRecan(NOW, Optional.empty()), verdict);
    says(
        Tone.COLD,
        "Do not shelve. Re-can, freeze or refrigerate by August 26, 2026, 08:00",
        recan,
        NOW);
    says(Tone.STOP, "Do not eat. Throw away.", recan, NOW.plusSeconds(1));
  }

  @Test
  void whatIsNotToBeEatenSaysSoWhereverItIs() {
    says(
        Tone.STOP,
        "Do not eat. Throw away.",
        jar(FACTS, new Standing.ToThrowAway(), new Verdict.ThrowAway()),
        NOW);
    says(
        Tone.STOP,
        "Do not eat. Thrown away on August 26, 2026.",
        jar(new Standing.Tossed(NOW, "bulged")),
        NOW);
    says(Tone.STOP, "Do not eat yet: another jar of this batch spoiled", inDoubt(SHELF), NOW);
    says(
        Tone.STOP,
        "Do not eat yet: another jar of this batch spoiled",
        inDoubt(new Standing.InFreezer()),
        NOW);
    says(
        Tone.STOP,
        "Do not eat yet: another jar of this batch spoiled",
        inDoubt(new Standing.Missing(SHELF, NOW)),
        NOW);
    Standing lost = new Standing.Missing(new Standing.ToThrowAway(), NOW);
    says(Tone.STOP, "Do not eat. Throw away.", jar(lost), NOW);
  }

  @Test
  void whatIsNotKnownIsNotCalledGood() {
    LotFacts old = InventedKitchen.oldFacts("jam", Optional.of(LocalDate.of(2026, 1, 1)));
    says(Tone.LOOK, "How it was canned is not known: do not eat", withoutOutcome(old, SHELF), NOW);
    says(Tone.LOOK, "Results not recorded: do not eat", withoutOutcome(FACTS, SHELF), NOW);
    says(
        Tone.LOOK,
        "Results not recorded: do not eat",
        withoutOutcome(FACTS, new Standing.Planned()),
        NOW);
    says(
        Tone.PLAIN,
        "Not yet canned",
        withoutOutcome(FACTS, new Standing.Planned()),
        NOW.minusDays(2));
    says(Tone.LOOK, "Not found on August 26, 2026", jar(new Standing.Missing(SHELF, NOW)), NOW);
    LotFacts undated =
        new LotFacts("plums", "", "", "", Optional.empty(), Optional.empty(), "", "", "", "", true);
    says(Tone.LOOK, "Date not known", jar(undated, SHELF, new Verdict.Shelf()), NOW);
  }

  @Test
  void whatIsGoneSaysSo() {
    says(Tone.PLAIN, "Used on August 26, 2026", jar(new Standing.Taken(NOW)), NOW);
    says(Tone.PLAIN, "Re-canned on August 26, 2026", jar(new Standing.Recanned(NOW)), NOW);
    says(Tone.PLAIN, "Never filled", withoutOutcome(FACTS, new Standing.Unfilled()), NOW);
  }
}
