package jarwright.pantry;

import jarwright.lot.LotCode;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/** An invented household's lots, for tests. */
public final class InventedKitchen {
  public static final LocalDate DAY = LocalDate.of(2026, 8, 24);
  public static final OffsetDateTime NOON = OffsetDateTime.parse("2026-08-24T12:00:00-05:00");
  public static final LotCode PLUMS = new LotCode(DAY, 'A');
  public static final LotCode TOMATOES = new LotCode(DAY, 'B');
  public static final String BY = "Anna";

  private InventedKitchen() {}

  public static LotFacts facts(String product) {
    return new LotFacts(
        product,
        product,
        "raw",
        "quart",
        Optional.of(DAY),
        Optional.of(DAY.plusYears(1)),
        "cellar B3",
        "orchard stall, two lugs",
        "new lids, box 2",
        "",
        true);
  }

  /** Jars of which an old list knows where they stand and how old they are. */
  public static LotFacts oldFacts(String product, Optional<LocalDate> packed) {
    return new LotFacts(
        product,
        product,
        "",
        "pint",
        packed,
        packed.map(d -> d.plusYears(1)),
        "attic",
        "",
        "",
        "",
        false);
  }

  public static Planned planned(String product, Integer... loads) {
    int jars = List.of(loads).stream().mapToInt(Integer::intValue).sum();
    return new Planned(
        facts(product), jars, List.of(loads), new Required(25, Optional.empty(), false));
  }

  public static Outcome sound(int load) {
    return new Outcome(load, true, Liquid.NONE, "", new Verdict.Shelf(), List.of());
  }

  /** A boil that went as the guide asks, for so many minutes; the planned process takes 25. */
  public static LoadRun ran(int load, OffsetDateTime start, int minutes) {
    Observed seen =
        new Observed(
            Optional.of(start),
            Optional.empty(),
            Optional.of(start.plusMinutes(minutes)),
            Ticked.YES,
            Optional.empty(),
            0,
            Ticked.NO,
            Ticked.BLANK,
            Ticked.BLANK);
    return new LoadRun(load, new Required(25, Optional.empty(), false), seen, "");
  }

  public static Entry entry(LotCode lot, String jars, Happening what) {
    return Entry.of(NOON, lot, JarNumbers.parse(jars), what, BY);
  }

  /** The events of these entries, numbered from 1. */
  public static List<LedgerEvent> numbered(List<Entry> entries) {
    return java.util.stream.IntStream.range(0, entries.size())
        .mapToObj(i -> new LedgerEvent(i + 1L, entries.get(i)))
        .toList();
  }

  /** Plums planned in one load of seven and put on the shelf. */
  public static List<Entry> sevenPlums() {
    return List.of(
        entry(PLUMS, "", planned("plums-halved-or-whole", 7)), entry(PLUMS, "1-7", sound(1)));
  }
}
