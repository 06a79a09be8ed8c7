package jarwright.pantry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.files.FoodTables;
import jarwright.lot.LotCode;
import java.time.LocalDate;
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

/** A year accounts for every jar, food by food, whatever was recorded in whatever order. */
class YearBookProperties {
  private static final OffsetDateTime BEGIN = OffsetDateTime.parse("2024-06-01T12:00:00-05:00");
  private static final OffsetDateTime END = OffsetDateTime.parse("2027-06-01T12:00:00-05:00");
  private static final int DAYS = 1_000;

  private static LotCode lot(int day, char letter) {
    return new LotCode(BEGIN.plusDays(day).toLocalDate(), letter);
  }

  private static Happening plan(LotCode lot) {
    Planned plan = InventedKitchen.planned("plums-halved-or-whole", 4, 3);
    LotFacts f = plan.facts();
    LotFacts dated =
        new LotFacts(
            f.product(),
            f.name(),
            f.pack(),
            f.jar(),
            Optional.of(lot.packed()),
            Optional.of(lot.packed().plusYears(1)),
            "",
            "",
            "",
            "",
            true);
    return new Planned(dated, plan.jars(), plan.loads(), plan.required());
  }

  @Provide
  Arbitrary<List<LedgerEvent>> ledgers() {
    Arbitrary<LotCode> lot =
        Combinators.combine(Arbitraries.of(0, 200, 400, 700), Arbitraries.chars().range('A', 'B'))
            .as(YearBookProperties::lot);
    Arbitrary<JarNumbers> jars =
        Arbitraries.integers().between(1, 7).list().ofMinSize(1).ofMaxSize(4).map(JarNumbers::of);
    Arbitrary<Happening> likely =
        Arbitraries.frequencyOf(
            Tuple.of(6, AnyHappening.outcome().map(o -> (Happening) o)),
            Tuple.of(9, AnyHappening.step().map(s -> (Happening) s)),
            Tuple.of(1, Arbitraries.of(new Spoiled("mold"))),
            Tuple.of(1, Arbitraries.of(new Cancelled(""))),
            Tuple.of(2, Arbitraries.of(new Checked(Set.of(), ""))),
            Tuple.of(
                1, Arbitraries.of(old(Optional.empty()), old(Optional.of(BEGIN.toLocalDate())))),
            Tuple.of(
                1, Arbitraries.longs().between(1, 60).map(n -> (Happening) new Undone(n, ""))));
    Arbitrary<Entry> entry =
        Combinators.combine(lot, jars, likely, Arbitraries.integers().between(0, DAYS))
            .as((l, j, w, d) -> Entry.of(BEGIN.plusDays(d), l, j, w, ""));
    Arbitrary<Entry> plans = lot.map(l -> Entry.of(BEGIN, l, plan(l), ""));
    return Combinators.combine(plans.list().ofMaxSize(6), entry.list().ofMaxSize(50))
        .as(
            (first, more) -> {
              List<Entry> all = new ArrayList<>(first);
              all.addAll(more);
              return InventedKitchen.numbered(all);
            });
  }

  private static Happening old(Optional<LocalDate> packed) {
    return new Imported(InventedKitchen.oldFacts("plums-halved-or-whole", packed), "");
  }

  @Property(tries = 1_000, edgeCases = EdgeCasesMode.NONE)
  void whatWasThereAndWhatWasPutUpIsWhatLeftAndWhatIsLeft(
      @ForAll("ledgers") List<LedgerEvent> events) {
    for (int year = 2024; year <= 2027; year++) {
      YearBook book = YearBook.of(events, year, END, FoodTables::own);
      for (FoodYear food : book.foods()) {
        assertEquals(
            food.before() + food.putUp(),
            food.eaten()
                + food.lostInAll()
                + food.recanned()
                + food.stock()
                + food.doubtful()
                + food.toThrowAway(),
            year + ": " + food);
      }
      assertEquals(
          book.foods().stream().mapToInt(FoodYear::putUp).sum(),
          book.putUp().stream().mapToInt(n -> n).sum());
      assertEquals(
          book.foods().stream().mapToInt(FoodYear::eaten).sum(),
          book.eaten().stream().mapToInt(n -> n).sum());
    }
  }

  /** As of today, every jar that was packed is in the book of its last year, once. */
  @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
  void everyJarInTheHouseIsInTheBookOfThisYear(@ForAll("ledgers") List<LedgerEvent> events) {
    YearBook book = YearBook.of(events, END.getYear(), END, FoodTables::own);
    long here = Pantry.of(events, FoodTables::own).here().count();
    int told =
        book.foods().stream().mapToInt(f -> f.stock() + f.doubtful() + f.toThrowAway()).sum();
    assertEquals(here, told);
  }
}
