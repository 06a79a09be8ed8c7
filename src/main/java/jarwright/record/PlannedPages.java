package jarwright.record;

import jarwright.batch.Batch;
import jarwright.batch.BatchRecord;
import jarwright.lot.LotCode;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import jarwright.pantry.Entry;
import jarwright.pantry.Foods;
import jarwright.pantry.Jar;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.pantry.Planned;
import jarwright.process.Product;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Record pages of batches that are planned: what will be done, nothing yet of what was. */
public final class PlannedPages {
  private static final Links BESIDE =
      new Links() {
        @Override
        public String index() {
          return "index.html";
        }

        @Override
        public String lot(LotCode lot) {
          return lot + ".html";
        }

        @Override
        public Optional<String> jar(Jar jar) {
          return Optional.empty();
        }
      };

  private final Wording words;
  private final Function<Product, String> productName;

  /**
   * @param productName the name of a product in the pages' language
   */
  public PlannedPages(Wording words, Function<Product, String> productName) {
    this.words = words;
    this.productName = productName;
  }

  /**
   * The page of one batch.
   *
   * @param loads jars in each canner load
   */
  public Sheet page(Batch batch, List<Integer> loads) {
    Pantry pantry = Pantry.of(List.of(planned(1, batch, loads)), () -> Foods.NONE);
    BatchRecord record = BatchRecord.of(batch, loads, List.of());
    LotRecord lot =
        new LotRecord(pantry.lot(batch.lot()).orElseThrow(), Optional.of(record), List.of());
    return pages(List.of(batch)).lot(lot, BESIDE);
  }

  /** The list of the batches. */
  public Sheet index(List<Batch> batches) {
    List<LedgerEvent> events = new ArrayList<>();
    for (Batch batch : batches) {
      events.add(planned(events.size() + 1L, batch, List.of(batch.jars())));
    }
    return pages(batches).index(Pantry.of(events, () -> Foods.NONE), BESIDE);
  }

  /** The file name of a batch's page. */
  public static String href(Batch batch) {
    return BESIDE.lot(batch.lot());
  }

  private RecordPages pages(List<Batch> batches) {
    Map<String, String> names =
        batches.stream()
            .map(b -> b.plan().product())
            .collect(Collectors.toMap(Product::id, productName, (name, same) -> name));
    Batch first = batches.get(0);
    return new RecordPages(
        words,
        new RecordPages.Manner(
            first.kitchen().household(),
            first.kitchen().units(),
            facts -> names.getOrDefault(facts.product(), facts.name()),
            rule -> Optional.empty()),
        time(batches.stream().min(Comparator.comparing(b -> b.plan().date())).orElseThrow()));
  }

  /** As of the day of packing, so that the same plan gives the same page on any day. */
  private static OffsetDateTime time(Batch batch) {
    return batch.plan().date().atTime(LocalTime.MIN).atOffset(ZoneOffset.UTC);
  }

  private static LedgerEvent planned(long number, Batch batch, List<Integer> loads) {
    return new LedgerEvent(
        number, Entry.of(time(batch), batch.lot(), Planned.of(batch, loads), ""));
  }
}
