package jarwright.pantry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.FoodTables;
import jarwright.lot.LotCode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

/** Whatever is recorded before and after: a jar of a condemned lot is never one to take. */
class CondemnedProperties {
  private static final LotCode LOT = InventedKitchen.PLUMS;
  private static final int JARS = 7;

  /** A lot of low-acid food, and lots from elsewhere that no word makes safe. */
  private static Arbitrary<Entry> unsafe() {
    return Arbitraries.of(
        InventedKitchen.entry(LOT, "", InventedKitchen.planned("beans-snap-italian", 4, 3)),
        InventedKitchen.entry(LOT, "", InventedKitchen.planned("unheard-of", 4, 3)),
        brought("Green beans", "boiled 3 hours in a kettle"),
        brought("pumpkin puree", ""),
        brought("Peaches", "oven canning"));
  }

  private static Entry brought(String product, String known) {
    LotFacts facts = InventedKitchen.oldFacts(product, Optional.of(InventedKitchen.DAY));
    return InventedKitchen.entry(LOT, "1-7", new Imported(facts, known));
  }

  private static Arbitrary<Happening> anything() {
    Arbitrary<Set<Sign>> signs = Arbitraries.of(Sign.class).set().ofMaxSize(2);
    return Arbitraries.frequencyOf(
        Tuple.of(5, AnyHappening.outcome().map(o -> (Happening) o)),
        Tuple.of(4, Arbitraries.of(InventedKitchen.sound(1))),
        Tuple.of(8, AnyHappening.step().map(s -> (Happening) s)),
        Tuple.of(4, signs.map(s -> new Checked(s, "lid tight, clear"))),
        Tuple.of(2, Arbitraries.of(new Cancelled(""))),
        Tuple.of(2, Arbitraries.of(new Vouched("Ana", "guide", ToldProcess.NOTHING))),
        Tuple.of(1, Arbitraries.of(InventedKitchen.planned("plums-halved-or-whole", 7))));
  }

  @Provide
  Arbitrary<List<LedgerEvent>> ledgers() {
    Arbitrary<JarNumbers> jars =
        Arbitraries.integers()
            .between(1, JARS + 1)
            .list()
            .ofMinSize(1)
            .ofMaxSize(4)
            .map(JarNumbers::of);
    Arbitrary<Entry> entry =
        Combinators.combine(jars, anything(), Arbitraries.integers().between(-3, 72))
            .as((j, w, h) -> Entry.of(InventedKitchen.NOON.plusHours(h), LOT, j, w, ""));
    Arbitrary<Entry> spoiled =
        jars.map(j -> Entry.of(InventedKitchen.NOON, LOT, j, new Spoiled("spurted"), ""));
    return Combinators.combine(
            unsafe(), entry.list().ofMaxSize(12), spoiled, entry.list().ofMaxSize(20))
        .as(
            (first, before, bad, after) -> {
              List<Entry> all = new ArrayList<>();
              all.add(first);
              // A plan that is replaced before anything happens is another lot.
              before.stream().filter(e -> !(e.what() instanceof Planned)).forEach(all::add);
              all.add(bad);
              all.addAll(after);
              return InventedKitchen.numbered(all);
            });
  }

  @Property(tries = 2_000, edgeCases = EdgeCasesMode.NONE)
  void noJarOfACondemnedLotIsEverToBeTakenMovedOrLabelled(
      @ForAll("ledgers") List<LedgerEvent> events) {
    Pantry pantry = Pantry.of(events, FoodTables::own);
    for (int hours : List.of(0, 30, 9_000)) {
      OffsetDateTime now = InventedKitchen.NOON.plusHours(hours);
      assertEquals(List.of(), new UseOrder(now).toTake(pantry.here()));
      pantry.jars().forEach(jar -> assertBarred(jar, now));
    }
  }

  private static void assertBarred(Jar jar, OffsetDateTime now) {
    String shown = jar.toString();
    assertFalse(Advice.word(jar, now).mayBeEaten(), shown);
    assertFalse(Advice.isLabelled(jar, now), shown);
    for (JarStep step :
        List.of(
            JarStep.taken(""),
            JarStep.moved("attic"),
            JarStep.frozen(),
            JarStep.refrigerated(InventedKitchen.DAY.plusYears(1)),
            JarStep.recanned("260825A-P"))) {
      assertTrue(step.hindrance(jar, now).isPresent(), step + " " + shown);
    }
    assertTrue(new Checked(Set.of(), "").hindrance(jar, now).isPresent(), shown);
    if (jar.standing().isHere()) {
      assertEquals(JarWord.THROW_AWAY, Advice.word(jar, now), shown);
      assertEquals(Optional.empty(), JarStep.tossed("").hindrance(jar, now), shown);
    }
  }

  /** What a jar shows is never without its reason where it keeps somebody from eating it. */
  @Property(tries = 1_000, edgeCases = EdgeCasesMode.NONE)
  void theReasonThatDecidesStandsFirst(@ForAll("ledgers") List<LedgerEvent> events) {
    OffsetDateTime now = InventedKitchen.NOON.plusHours(30);
    Pantry.of(events, FoodTables::own)
        .jars()
        .filter(j -> j.isCondemned() && j.standing().isHere())
        .forEach(
            jar -> {
              Reason first = Advice.of(jar, now).reasons().get(0);
              assertTrue(
                  first instanceof Reason.Harm
                      || (first instanceof Reason.OfLot of && of.doubt().condemns())
                      || (first instanceof Reason.From from && from.origin().isUnsafe()),
                  first.toString());
            });
  }
}
