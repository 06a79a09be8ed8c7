package jarwright.pantry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import jarwright.files.FoodTables;
import jarwright.lot.JarId;
import jarwright.lot.LotCode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
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

/** Whatever is recorded in whatever order, every jar packed is somewhere, and only once. */
class PantryProperties {
  @Provide
  Arbitrary<List<LedgerEvent>> ledgers() {
    Arbitrary<LotCode> lot =
        Arbitraries.chars().range('A', 'C').map(c -> new LotCode(InventedKitchen.DAY, c));
    Arbitrary<JarNumbers> jars =
        Arbitraries.integers().between(1, 7).list().ofMinSize(1).ofMaxSize(4).map(JarNumbers::of);
    Arbitrary<Happening> likely =
        Arbitraries.frequencyOf(
            Tuple.of(2, Arbitraries.of(InventedKitchen.planned("plums", 4, 3))),
            Tuple.of(6, AnyHappening.outcome().map(o -> (Happening) o)),
            Tuple.of(9, AnyHappening.step().map(s -> (Happening) s)),
            Tuple.of(1, Arbitraries.of(new Spoiled("mould"))),
            Tuple.of(3, AnyHappening.sometimesSoundLoad().map(l -> (Happening) l)),
            Tuple.of(
                1,
                Arbitraries.of(
                    new Imported(InventedKitchen.oldFacts("jam", Optional.empty()), ""))),
            Tuple.of(
                2, Arbitraries.longs().between(1, 40).map(n -> (Happening) new Undone(n, ""))));
    Arbitrary<Integer> hour = Arbitraries.integers().between(-3, 72);
    Arbitrary<Entry> entry =
        Combinators.combine(lot, jars, likely, hour)
            .as((l, j, w, h) -> Entry.of(InventedKitchen.NOON.plusHours(h), l, j, w, ""));
    Arbitrary<Entry> plan =
        lot.map(l -> InventedKitchen.entry(l, "", InventedKitchen.planned("plums", 4, 3)));
    return Combinators.combine(plan.list().ofMaxSize(3), entry.list().ofMaxSize(40))
        .as(
            (plans, entries) -> {
              List<Entry> all = new ArrayList<>(plans);
              all.addAll(entries);
              return InventedKitchen.numbered(all);
            });
  }

  /** The jars that were ever filled, told from the events alone. */
  private static Set<JarId> packed(List<LedgerEvent> events) {
    Set<Long> undone = Undone.numbers(events);
    Set<LotCode> known = new HashSet<>();
    Set<LotCode> old = new HashSet<>();
    Set<JarId> packed = new HashSet<>();
    Set<JarId> never = new HashSet<>();
    Set<JarId> cooling = new HashSet<>();
    Set<JarId> lost = new HashSet<>();
    Set<JarId> spoiled = new HashSet<>();
    for (LedgerEvent event : events) {
      if (undone.contains(event.number()) || event.lot().isEmpty()) {
        continue;
      }
      LotCode lot = event.lot().get();
      List<JarId> jars = event.jars().stream().mapToObj(lot::jar).toList();
      if (event.what() instanceof Planned) {
        if (!old.contains(lot)
            && packed.stream().noneMatch(j -> j.lot().equals(lot))
            && never.stream().noneMatch(j -> j.lot().equals(lot))) {
          known.add(lot);
        }
      } else if (event.what() instanceof Imported && known.add(lot)) {
        old.add(lot);
        packed.addAll(jars);
      } else if (known.contains(lot)
          && !old.contains(lot)
          && event.what() instanceof LoadRun load) {
        // It cools where nothing speaks against it; else its outcome says what it is.
        jars.stream()
            .filter(j -> load.standing(j.number()).isPresent())
            .filter(j -> !never.contains(j) && packed.add(j))
            .filter(j -> !spoiled.contains(j))
            .forEach(cooling::add);
      } else if (known.contains(lot) && event.what() instanceof Spoiled) {
        // It held food, so it cannot turn out never to have been filled.
        spoiled.addAll(jars);
        cooling.removeAll(jars);
        lost.removeAll(jars);
      } else if (known.contains(lot) && event.what() instanceof Outcome) {
        cooling.removeAll(jars);
        jars.stream().filter(j -> !never.contains(j)).forEach(packed::add);
      } else if (known.contains(lot)
          && !old.contains(lot)
          && event.what() instanceof JarStep step) {
        for (JarId jar : jars) {
          boolean open = !packed.contains(jar) && jar.number() <= 7;
          if (step.deed() == Deed.UNFILLED && (open || cooling.remove(jar))) {
            never.add(jar);
            packed.remove(jar);
          } else if (step.deed() == Deed.TOSSED) {
            if (open && !never.contains(jar)) {
              packed.add(jar);
            }
            cooling.remove(jar);
            lost.remove(jar);
          } else if (step.deed() == Deed.MISSING && cooling.remove(jar)) {
            lost.add(jar);
          } else if (step.deed() == Deed.FOUND && lost.remove(jar)) {
            cooling.add(jar);
          }
        }
      }
    }
    return packed;
  }

  @Property(tries = 2_000, edgeCases = EdgeCasesMode.NONE)
  void allPackedJarsAreSomewhereAndOnlyOnce(@ForAll("ledgers") List<LedgerEvent> events) {
    Pantry pantry = Pantry.of(events, FoodTables::own);
    List<JarId> found = pantry.jars().filter(Jar::wasPacked).map(Jar::id).toList();
    assertEquals(packed(events), new HashSet<>(found));
    assertEquals(new HashSet<>(found).size(), found.size());
    int counted = pantry.counts().values().stream().mapToInt(Integer::intValue).sum();
    int unpacked =
        pantry.counts().getOrDefault(Standing.Kind.PLANNED, 0)
            + pantry.counts().getOrDefault(Standing.Kind.UNFILLED, 0);
    assertEquals(found.size(), counted - unpacked);
  }

  @Property(tries = 2_000, edgeCases = EdgeCasesMode.NONE)
  void noJarThatFailedIsEverOnAShelfOrToBeTaken(@ForAll("ledgers") List<LedgerEvent> events) {
    OffsetDateTime late = InventedKitchen.NOON.plusDays(9_999);
    Pantry pantry = Pantry.of(events, FoodTables::own);
    pantry
        .jars()
        .filter(j -> j.standing() instanceof Standing.OnShelf)
        .forEach(j -> assertEquals(true, j.mayStandOnShelf(), j.toString()));
    for (Jar jar : new UseOrder(late).toTake(pantry.here())) {
      assertFalse(jar.standingAt(late) instanceof Standing.ToThrowAway, jar.toString());
      assertFalse(jar.standing() instanceof Standing.ToRecan, jar.toString());
    }
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void theSameEventsAddUpToTheSameStock(@ForAll("ledgers") List<LedgerEvent> events) {
    assertEquals(
        Pantry.of(events, FoodTables::own).lots().toString(),
        Pantry.of(events, FoodTables::own).lots().toString());
    assertEquals(
        Pantry.of(events, FoodTables::own).remarks(), Pantry.of(events, FoodTables::own).remarks());
  }

  /** Taking back the last event leaves what was before it. */
  @Property(tries = 1_000, edgeCases = EdgeCasesMode.NONE)
  void anUndoLeavesWhatWasBefore(@ForAll("ledgers") List<LedgerEvent> events) {
    if (events.isEmpty() || events.get(events.size() - 1).what() instanceof Undone) {
      return;
    }
    long last = events.get(events.size() - 1).number();
    List<LedgerEvent> more = new ArrayList<>(events);
    more.add(new LedgerEvent(last + 1, Entry.undo(InventedKitchen.NOON.plusDays(4), last, "", "")));
    Pantry before = Pantry.of(events.subList(0, events.size() - 1), FoodTables::own);
    Pantry after = Pantry.of(more, FoodTables::own);
    assertEquals(plain(before), plain(after));
  }

  /** All but the note that a finding of spoilage was taken back, which stays. */
  private static List<String> plain(Pantry pantry) {
    return pantry
        .jars()
        .map(j -> j.with(new Background(j.origin(), "", Optional.empty())).toString())
        .toList();
  }
}
