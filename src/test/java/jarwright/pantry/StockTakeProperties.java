package jarwright.pantry;

import static jarwright.pantry.InventedKitchen.NOON;
import static jarwright.pantry.InventedKitchen.PLUMS;
import static jarwright.pantry.InventedKitchen.entry;
import static jarwright.pantry.InventedKitchen.planned;
import static jarwright.pantry.InventedKitchen.sound;
import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.files.FoodTables;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is counted of whatever has happened: once applied, nothing is left to apply. */
class StockTakeProperties {
  private static final OffsetDateTime LATER = NOON.plusDays(3);
  private static final int JARS = 6;

  @Provide
  Arbitrary<List<JarStep>> steps() {
    Arbitrary<JarStep> step =
        Arbitraries.of(
            JarStep.moved("attic"),
            JarStep.moved("Cellar  B3"),
            JarStep.taken(""),
            JarStep.tossed("cracked"),
            JarStep.missing(),
            JarStep.refrigerated(LocalDate.of(2026, 8, 25)),
            JarStep.refrigerated(LocalDate.of(2026, 9, 25)),
            JarStep.frozen());
    return step.list().ofMaxSize(12);
  }

  @Provide
  Arbitrary<List<Counted>> counts() {
    Arbitrary<JarNumbers> jars =
        Arbitraries.integers().between(1, JARS + 1).set().ofMaxSize(4).map(JarNumbers::of);
    Arbitrary<Optional<String>> place =
        Arbitraries.of("attic", "cellar B3", "refrigerator", "kitchen").optional();
    return Combinators.combine(place, jars, jars)
        .as((p, listed, found) -> new Counted(PLUMS, p, listed, found))
        .list()
        .ofMaxSize(4)
        .map(StockTakeProperties::eachJarOnce);
  }

  private static List<Counted> eachJarOnce(List<Counted> rows) {
    List<Counted> once = new ArrayList<>();
    JarNumbers seen = JarNumbers.NONE;
    for (Counted row : rows) {
      JarNumbers found = row.found().minus(seen);
      once.add(new Counted(row.lot(), row.place(), row.listed(), found));
      seen = seen.plus(found);
    }
    return once;
  }

  private static Pantry pantry(List<Entry> entries) {
    return Pantry.of(InventedKitchen.numbered(entries), FoodTables::own);
  }

  private static List<Entry> history(List<JarStep> steps) {
    List<Entry> entries = new ArrayList<>();
    entries.add(entry(PLUMS, "", planned("plums", JARS)));
    entries.add(entry(PLUMS, "1..5", sound(1)));
    int jar = 0;
    for (JarStep step : steps) {
      jar = jar % JARS + 1;
      entries.add(entry(PLUMS, String.valueOf(jar), step));
    }
    return entries;
  }

  @Property(tries = 2_000)
  void appliedTwiceIsAppliedOnce(
      @ForAll("steps") List<JarStep> steps, @ForAll("counts") List<Counted> rows) {
    List<Entry> entries = history(steps);
    Pantry before = pantry(entries);
    StockTake count = new StockTake(rows, Map.of(), 0);
    List<Entry> added = StockTake.entries(count.against(before, LATER), LATER, "");
    entries.addAll(added);
    Pantry after = pantry(entries);
    assertEquals(before.remarks().size(), after.remarks().size(), "every event could happen");
    assertEquals(
        List.of(), StockTake.entries(count.against(after, LATER), LATER, ""), added.toString());
    assertEquals(before.jars().count(), after.jars().count());
  }

  @Property(tries = 500)
  void aStockTakeOfWhatTheLedgerHasShowsNothing(@ForAll("steps") List<JarStep> steps) {
    Pantry pantry = pantry(history(steps));
    List<Counted> rows = new ArrayList<>();
    for (StockLine line : StockLine.of(pantry.jars(), LATER)) {
      rows.add(new Counted(line.lot(), Optional.of(line.spot().name()), line.jars(), line.jars()));
    }
    assertEquals(List.of(), new StockTake(rows, Map.of(), 0).against(pantry, LATER));
  }

  /** A jar that no row looked for and none saw is not touched. */
  @Property(tries = 500)
  void whatIsNotCountedIsNotTouched(
      @ForAll("steps") List<JarStep> steps, @ForAll("counts") List<Counted> rows) {
    JarNumbers told = JarNumbers.NONE;
    for (Counted row : rows) {
      told = told.plus(row.listed()).plus(row.found());
    }
    for (Difference d : new StockTake(rows, Map.of(), 0).against(pantry(history(steps)), LATER)) {
      assertEquals(JarNumbers.NONE, d.jars().minus(told));
    }
  }
}
