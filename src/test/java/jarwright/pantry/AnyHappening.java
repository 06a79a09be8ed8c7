package jarwright.pantry;

import jarwright.lot.LotCode;
import jarwright.quantity.GaugePressure;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Every kind of happening, with every kind of text in it. */
public final class AnyHappening {
  private AnyHappening() {}

  public static Arbitrary<String> text() {
    return Arbitraries.oneOf(
        Arbitraries.of("", "cellar B3", "=1+1", "a | b", "k=v", "two\nlines", " spaced ", "||"),
        Arbitraries.strings().all().ofMaxLength(20),
        Arbitraries.strings().withChars("|= a\\").ofMaxLength(8));
  }

  static Arbitrary<OffsetDateTime> time() {
    return Combinators.combine(
            Arbitraries.longs().between(946_684_800L, 4_102_444_799L),
            Arbitraries.integers().between(-12, 12))
        .as(
            (second, hours) ->
                java.time.Instant.ofEpochSecond(second).atOffset(ZoneOffset.ofHours(hours)));
  }

  static Arbitrary<LocalDate> date() {
    return time().map(OffsetDateTime::toLocalDate);
  }

  static Arbitrary<Ticked> ticked() {
    return Arbitraries.of(Ticked.class);
  }

  static Arbitrary<Required> required() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 200),
            Arbitraries.integers().between(5, 15).map(GaugePressure::psi).optional(),
            Arbitraries.of(AcidNeed.class),
            Arbitraries.of(true, false),
            date().optional(),
            Arbitraries.of(true, false))
        .as(
            (minutes, pressure, acid, dial, tested, recan) ->
                new Required(minutes, pressure, acid, dial && pressure.isPresent(), tested, recan));
  }

  static Arbitrary<LotFacts> facts(boolean madeHere) {
    return Combinators.combine(
            text().map(t -> "plums" + t), text(), text(), date().optional(), date().optional())
        .as(
            (product, one, two, packed, useBy) ->
                new LotFacts(
                    product, one, "hot", "pint", packed, useBy, two, one, two, one, madeHere));
  }

  public static Arbitrary<Verdict> verdict() {
    return Arbitraries.oneOf(
        Arbitraries.of(
            new Verdict.Shelf(),
            new Verdict.UseFirst(),
            new Verdict.Freezer(),
            new Verdict.ThrowAway()),
        date().map(Verdict.Refrigerate::new),
        Combinators.combine(time(), date().optional()).as(Verdict.Recan::new));
  }

  public static Arbitrary<Outcome> outcome() {
    Arbitrary<Set<Otherwise>> seen = Arbitraries.of(Otherwise.class).set().ofMaxSize(2);
    return Combinators.combine(
            Arbitraries.integers().between(1, 9),
            ticked(),
            Arbitraries.of(Liquid.class),
            ticked(),
            seen,
            text(),
            verdict(),
            Arbitraries.of("sound", "heat-lost", "not-sealed").list().ofMaxSize(3))
        .as(
            (load, seal, lost, cloudy, otherwise, note, verdict, because) ->
                new Outcome(
                    load,
                    possible(seal, verdict),
                    possible(seal, verdict) == Ticked.BLANK ? Optional.empty() : Optional.of(lost),
                    cloudy,
                    otherwise,
                    note,
                    verdict,
                    because));
  }

  /** Only a jar that sealed goes on the shelf. */
  private static Ticked possible(Ticked sealed, Verdict verdict) {
    return verdict.grade().isStricterThan(Grade.USE_FIRST) ? sealed : Ticked.YES;
  }

  private static Arbitrary<Departures> departures(boolean signs) {
    return Arbitraries.of(Otherwise.class)
        .filter(o -> o.isSign() == signs)
        .set()
        .ofMaxSize(3)
        .flatMap(
            all ->
                Arbitraries.integers()
                    .between(1, 9)
                    .list()
                    .ofMinSize(signs ? 1 : 0)
                    .ofMaxSize(3)
                    .map(
                        jars -> {
                          TreeMap<Otherwise, JarNumbers> said = new TreeMap<>();
                          all.forEach(
                              o ->
                                  said.put(
                                      o, o.isOfJars() ? JarNumbers.of(jars) : JarNumbers.NONE));
                          return new Departures(said);
                        }));
  }

  private static Arbitrary<Observed> observed() {
    Arbitrary<Optional<OffsetDateTime>> maybe = time().optional();
    Arbitrary<Optional<GaugePressure>> lowest =
        Arbitraries.integers().between(1, 20).map(GaugePressure::psi).optional();
    Arbitrary<JarNumbers> missing =
        Arbitraries.integers().between(1, 9).list().ofMaxSize(3).map(JarNumbers::of);
    return Combinators.combine(
            maybe,
            maybe,
            maybe,
            lowest,
            Arbitraries.integers().between(0, 3),
            ticked(),
            Combinators.combine(ticked(), missing).as(Map::entry),
            departures(false))
        .as(
            (s, l, e, p, n, one, acid, otherwise) ->
                new Observed(
                    s,
                    l,
                    e,
                    one,
                    p,
                    n,
                    one,
                    acid.getKey(),
                    acid.getKey() == Ticked.YES ? acid.getValue() : JarNumbers.NONE,
                    one,
                    acid.getKey(),
                    otherwise));
  }

  private static Arbitrary<LoadRun> loadRun() {
    return Combinators.combine(Arbitraries.integers().between(1, 9), required(), observed(), text())
        .as(LoadRun::new);
  }

  /** A boil of 24 or 25 minutes, of which the planned process takes 25. */
  static Arbitrary<LoadRun> sometimesSoundLoad() {
    return Arbitraries.of(24, 25).map(n -> InventedKitchen.ran(1, InventedKitchen.NOON, n));
  }

  private static Arbitrary<Planned> plan() {
    Arbitrary<List<Integer>> loads =
        Arbitraries.integers().between(1, 9).list().ofMinSize(1).ofMaxSize(4);
    return Combinators.combine(facts(true), loads, required())
        .as((f, l, r) -> new Planned(f, l.stream().mapToInt(n -> n).sum(), l, r));
  }

  public static Arbitrary<JarStep> step() {
    Arbitrary<JarStep> worded =
        Combinators.combine(Arbitraries.of(Deed.class), text())
            .as(
                (deed, word) ->
                    deed == Deed.REFRIGERATED
                        ? JarStep.refrigerated(LocalDate.of(2026, 9, 1))
                        : new JarStep(deed, deed.key().isEmpty() ? "" : word));
    return Arbitraries.oneOf(worded, date().map(JarStep::refrigerated));
  }

  public static Arbitrary<Happening> any() {
    return Arbitraries.oneOf(
        text().map(t -> new Opened("0123456789abcdef" + t)),
        plan(),
        loadRun(),
        outcome(),
        step(),
        text().map(Spoiled::new),
        Combinators.combine(facts(false), text()).as(Imported::new),
        Combinators.combine(Arbitraries.longs().between(1, 99), text()).as(Undone::new));
  }

  public static Arbitrary<Entry> entry() {
    Arbitrary<JarNumbers> jars =
        Arbitraries.integers().between(1, 40).list().ofMaxSize(8).map(JarNumbers::of);
    Arbitrary<LotCode> lot = Arbitraries.chars().range('A', 'Z').map(c -> lot(c));
    return Combinators.combine(time(), lot, jars, any(), text()).as(Entry::of);
  }

  private static LotCode lot(char letter) {
    return new LotCode(InventedKitchen.DAY, letter);
  }
}
