package jarwright.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.FoodTables;
import jarwright.pantry.AnyHappening;
import jarwright.pantry.Entry;
import jarwright.pantry.Grade;
import jarwright.pantry.Happening;
import jarwright.pantry.Imported;
import jarwright.pantry.InventedKitchen;
import jarwright.pantry.Jar;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.pantry.Spoiled;
import jarwright.pantry.Standing;
import jarwright.render.WordBundle;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/** Whatever is recorded in whatever order, no page calls a jar good that is not known to be. */
class HeadlineProperties {
  @Provide
  Arbitrary<List<LedgerEvent>> ledgers() {
    Arbitrary<Happening> what =
        Arbitraries.frequencyOf(
            Tuple.of(6, AnyHappening.outcome().map(o -> (Happening) o)),
            Tuple.of(3, Arbitraries.of(InventedKitchen.sound(1))),
            Tuple.of(2, Arbitraries.of(InventedKitchen.ran(1, InventedKitchen.NOON, 25))),
            Tuple.of(6, AnyHappening.step().map(s -> (Happening) s)),
            Tuple.of(1, Arbitraries.of(new Spoiled("mould"))));
    Arbitrary<JarNumbers> jars =
        Arbitraries.integers().between(1, 7).list().ofMinSize(1).ofMaxSize(4).map(JarNumbers::of);
    Arbitrary<Integer> hour = Arbitraries.integers().between(-3, 72);
    Arbitrary<Entry> entry =
        Combinators.combine(jars, what, hour)
            .as(
                (j, w, h) ->
                    Entry.of(
                        InventedKitchen.NOON.plusHours(h), InventedKitchen.PLUMS, j, w, "Anna"));
    Arbitrary<Entry> first =
        Arbitraries.of(
            InventedKitchen.entry(
                InventedKitchen.PLUMS, "", InventedKitchen.planned("plums-halved-or-whole", 4, 3)),
            InventedKitchen.entry(
                InventedKitchen.PLUMS,
                "1-7",
                new Imported(
                    InventedKitchen.oldFacts("jam", Optional.of(InventedKitchen.DAY)), "")));
    return Combinators.combine(first, entry.list().ofMaxSize(20))
        .as(
            (plan, more) -> {
              List<Entry> all = new ArrayList<>(List.of(plan));
              all.addAll(more);
              return InventedKitchen.numbered(all);
            });
  }

  @Provide
  Arbitrary<OffsetDateTime> times() {
    return Arbitraries.integers().between(-24, 24 * 500).map(InventedKitchen.NOON::plusHours);
  }

  /** What good means, told again from the jar alone. */
  private static boolean isKnownGood(Jar jar, OffsetDateTime now) {
    boolean frozen = jar.standing() instanceof Standing.InFreezer;
    boolean shelved =
        jar.standing() instanceof Standing.OnShelf
            && jar.facts().madeHere()
            && jar.outcome().map(o -> o.verdict().grade()).equals(Optional.of(Grade.SHELF))
            && jar.facts().useBy().filter(d -> !now.toLocalDate().isAfter(d)).isPresent();
    return (frozen || shelved) && jar.doubt().isEmpty() && jar.harm().isEmpty();
  }

  private static boolean isForbidden(Jar jar, OffsetDateTime now) {
    Standing standing = jar.standingAt(now);
    return standing instanceof Standing.ToThrowAway
        || standing instanceof Standing.Tossed
        || (standing.isHere() && jar.doubt().isPresent())
        || (standing instanceof Standing.Taken && jar.harm().isPresent());
  }

  @Property(tries = 1_000, edgeCases = EdgeCasesMode.NONE)
  void onlyWhatIsKnownToBeGoodIsCalledGood(
      @ForAll("ledgers") List<LedgerEvent> events, @ForAll("times") OffsetDateTime now) {
    for (String language : List.of("en", "es")) {
      Headlines headlines = new Headlines(WordBundle.load(language), now);
      Pantry.of(events, FoodTables::own)
          .jars()
          .forEach(
              jar -> {
                Headline headline = headlines.of(jar);
                assertEquals(isKnownGood(jar, now), headline.tone() == Tone.GOOD, jar.toString());
                assertFalse(headline.words().isBlank(), jar.toString());
                if (isForbidden(jar, now)) {
                  assertTrue(headline.tone() == Tone.STOP, jar.toString());
                }
              });
    }
  }
}
