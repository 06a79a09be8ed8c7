package jarwright.pantry;

import static jarwright.pantry.InventedKitchen.BY;
import static jarwright.pantry.InventedKitchen.DAY;
import static jarwright.pantry.InventedKitchen.NOON;
import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.facts;
import static jarwright.pantry.InventedKitchen.numbered;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.files.FoodTables;
import jarwright.files.VerdictTable;
import jarwright.problem.Refused;
import jarwright.quantity.GaugePressure;
import java.time.Duration;
import java.time.LocalDate;
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
import net.jqwik.api.lifecycle.BeforeContainer;

/**
 * Whatever is told of a load, in whatever order and when, no jar is for the shelf that was not
 * processed as tested and seen sealed after it had cooled. What that means is told here again, from
 * what was told alone.
 */
class ShelfProperties {
  private static final OffsetDateTime START = NOON;
  private static Judge judge;

  @BeforeContainer
  static void readTheRules() throws Exception {
    judge = new Judge(VerdictTable.read());
  }

  @Provide
  Arbitrary<Required> required() {
    return Combinators.combine(
            Arbitraries.of(true, false),
            Arbitraries.of(AcidNeed.class),
            Arbitraries.of(true, false),
            Arbitraries.of(
                Optional.<LocalDate>empty(),
                Optional.of(DAY.minusDays(300)),
                Optional.of(DAY.minusDays(366)),
                Optional.of(DAY.plusDays(1))),
            Arbitraries.of(true, false))
        .as(
            (pressure, acid, dial, tested, recan) ->
                new Required(
                    25,
                    pressure ? Optional.of(GaugePressure.psi(11)) : Optional.empty(),
                    acid,
                    dial && pressure,
                    tested,
                    recan));
  }

  private static Arbitrary<Ticked> mostlyYes() {
    return Arbitraries.frequency(
        Tuple.of(12, Ticked.YES), Tuple.of(1, Ticked.NO), Tuple.of(1, Ticked.BLANK));
  }

  private static Arbitrary<Departures> rarely(String... words) {
    return Arbitraries.frequencyOf(
            Tuple.of(6, Arbitraries.of("")), Tuple.of(1, Arbitraries.of(words)))
        .map(Departures::parse);
  }

  @Provide
  Arbitrary<Observed> observed() {
    Arbitrary<Optional<OffsetDateTime>> again =
        Arbitraries.of(Optional.<OffsetDateTime>empty(), Optional.of(START.plusMinutes(5)));
    return Combinators.combine(
            Arbitraries.frequency(
                Tuple.of(9, Optional.of(START)), Tuple.of(1, Optional.<OffsetDateTime>empty())),
            Combinators.combine(Arbitraries.frequency(Tuple.of(5, 0), Tuple.of(1, 1)), again)
                .as(Tuple::of),
            Arbitraries.frequency(
                Tuple.of(3, Optional.of(25)),
                Tuple.of(3, Optional.of(30)),
                Tuple.of(1, Optional.of(24)),
                Tuple.of(1, Optional.<Integer>empty())),
            mostlyYes(),
            Arbitraries.frequency(
                Tuple.of(3, Optional.<Integer>empty()),
                Tuple.of(2, Optional.of(11)),
                Tuple.of(1, Optional.of(10))),
            Combinators.combine(
                    mostlyYes(),
                    Arbitraries.frequency(
                        Tuple.of(3, JarNumbers.NONE), Tuple.of(1, JarNumbers.of(2, 5))))
                .as(Tuple::of),
            Combinators.combine(mostlyYes(), mostlyYes(), Arbitraries.of(Ticked.class))
                .as(Tuple::of),
            rarely(
                "recipe", "larger-jar 3", "other-pack 2, recipe 4", "forced-cooling", "uncovered"))
        .as(
            (start, restart, minutes, kept, lowest, acid, ticks, otherwise) ->
                new Observed(
                    start,
                    restart.get1() == 0 ? Optional.empty() : restart.get2(),
                    minutes.map(n -> START.plusMinutes(n)),
                    kept,
                    lowest.map(GaugePressure::psi),
                    restart.get1(),
                    ticks.get3(),
                    acid.get1(),
                    acid.get1() == Ticked.YES ? acid.get2() : JarNumbers.NONE,
                    ticks.get1(),
                    ticks.get2(),
                    otherwise));
  }

  @Provide
  Arbitrary<Look> looks() {
    Arbitrary<JarNumbers> jars =
        Arbitraries.of(JarNumbers.NONE, JarNumbers.NONE, JarNumbers.of(1), JarNumbers.of(4, 6));
    return Combinators.combine(
            jars,
            jars,
            rarely("bulges 3", "leaks 1, mold 7", "spurts 2"),
            Arbitraries.of(Ticked.class))
        .as(
            (unsealed, low, signs, cloudy) ->
                new Look(unsealed, low, JarNumbers.NONE, signs, cloudy));
  }

  /** What a jar for the shelf needs, told without the rules. */
  private static boolean isProven(
      Required required, Observed seen, Look look, int jar, OffsetDateTime when) {
    Optional<OffsetDateTime> from = seen.restarts() == 0 ? seen.start() : seen.lastStart();
    if (from.isEmpty() || seen.end().isEmpty()) {
      return false;
    }
    boolean minutes =
        Duration.between(from.get(), seen.end().get()).toMinutes() >= required.minutes();
    boolean pressure =
        required.pressure().isEmpty()
            || (seen.vented() == Ticked.YES
                && (seen.restarts() > 0
                    || seen.lowest()
                        .filter(p -> p.compareTo(GaugePressure.psi(11)) < 0)
                        .isEmpty()));
    LocalDate tested = required.gaugeTested().orElse(LocalDate.MIN);
    boolean inTheYear = !tested.isAfter(DAY) && tested.isAfter(DAY.minusDays(366));
    boolean gauge = !required.dial() || inTheYear || seen.gaugeTested() == Ticked.YES;
    boolean acid =
        required.acid() == AcidNeed.NONE
            || (seen.acid() == Ticked.YES && !seen.acidMissing().contains(jar));
    boolean asTold = seen.otherwise().of(jar).isEmpty() && look.signs().of(jar).isEmpty();
    boolean cooled = !when.isBefore(seen.end().get().plusHours(12));
    return minutes
        && seen.kept() == Ticked.YES
        && pressure
        && gauge
        && acid
        && asTold
        && cooled
        && !look.unsealed().contains(jar);
  }

  @Property(tries = 3_000, edgeCases = EdgeCasesMode.NONE)
  void nothingIsForTheShelfThatWasNotAllTold(
      @ForAll("required") Required required,
      @ForAll("observed") Observed seen,
      @ForAll("looks") Look look,
      @ForAll("moments") List<Integer> hours,
      @ForAll boolean apart)
      throws Exception {
    List<Entry> ledger =
        new ArrayList<>(
            List.of(entry(PLUMS, "", new Planned(facts("plums"), 7, List.of(7), required))));
    OffsetDateTime first = START.plusHours(hours.get(0)).plusMinutes(31);
    OffsetDateTime then = first.plusHours(apart ? hours.get(1) : 0);
    if (apart) {
      seal(ledger, Told.of(PLUMS, 1).ran(seen), first);
      seal(ledger, told(Told.of(PLUMS, 1), look), then);
    } else {
      seal(ledger, told(Told.of(PLUMS, 1).ran(seen), look), then);
    }
    Pantry pantry = Pantry.of(numbered(ledger), FoodTables::own);
    for (Jar jar : pantry.jars().toList()) {
      boolean proven = isProven(required, seen, look, jar.id().number(), then);
      if (jar.standing() instanceof Standing.OnShelf) {
        assertTrue(proven, jar + " " + seen + " " + look + " " + then);
      } else if (look.someLost().isEmpty() && isSealed(ledger)) {
        assertFalse(proven, jar + " " + seen + " " + look + " " + then);
      }
      List<Jar> taken = new UseOrder(then).toTake(pantry.here());
      assertFalse(jar.standing() instanceof Standing.Cooling && taken.contains(jar));
    }
  }

  private static boolean isSealed(List<Entry> ledger) {
    return ledger.stream()
        .anyMatch(e -> e.what() instanceof Outcome o && o.sealed() != Ticked.BLANK);
  }

  @Provide
  Arbitrary<List<Integer>> moments() {
    return Arbitraries.of(0, 1, 3, 11, 12, 13, 23, 26, 400).list().ofSize(2);
  }

  private static Told told(Told told, Look look) {
    return told.look(
        look.unsealed().toString(),
        look.someLost().toString(),
        "",
        look.signs().toString(),
        look.cloudy());
  }

  /** What is refused is not recorded. */
  private static void seal(List<Entry> ledger, Told told, OffsetDateTime now) {
    try {
      Pantry pantry = Pantry.of(numbered(ledger), FoodTables::own);
      ledger.addAll(Sealing.of(List.of(told.report()), pantry, judge, now, BY).entries());
    } catch (Refused refused) {
      assertFalse(refused.problems().isEmpty());
    }
  }
}
