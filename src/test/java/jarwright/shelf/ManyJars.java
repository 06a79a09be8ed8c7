package jarwright.shelf;

import jarwright.files.FoodTables;
import jarwright.lot.LotCode;
import jarwright.page.PaperSize;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import jarwright.pantry.Entry;
import jarwright.pantry.Happening;
import jarwright.pantry.Imported;
import jarwright.pantry.InventedKitchen;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Pantry;
import jarwright.pantry.Planned;
import jarwright.pantry.Required;
import jarwright.pantry.Spoiled;
import jarwright.pantry.YearBook;
import jarwright.render.Printer;
import jarwright.render.WordBundle;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A household with as many jars as a test asks for, and its sheets as PDF. */
final class ManyJars {
  static final OffsetDateTime NOW = OffsetDateTime.parse("2026-11-28T09:00:00-06:00");
  private static final int LOT = 20;
  private static final List<String> FOODS =
      List.of("Plums, halved or whole", "Beans, snap and Italian, pieces (green and wax)", "Figs");

  private ManyJars() {}

  /** Lots of twenty jars over seven shelves, none due; the last lot may be smaller. */
  static List<LedgerEvent> shelved(int jars) {
    List<Entry> entries = new ArrayList<>();
    for (int first = 0; first < jars; first += LOT) {
      lot(entries, first / LOT, Math.min(LOT, jars - first));
    }
    return InventedKitchen.numbered(entries);
  }

  /** One lot of so many jars. */
  static List<LedgerEvent> oneLot(int jars) {
    List<Entry> entries = new ArrayList<>();
    lot(entries, 0, jars);
    return InventedKitchen.numbered(entries);
  }

  private static void lot(List<Entry> entries, int i, int jars) {
    LocalDate packed = LocalDate.of(2026, 9, 1).plusDays(i / 26);
    LotCode lot = new LotCode(packed, (char) ('A' + i % 26));
    OffsetDateTime time = packed.atTime(18, 0).atOffset(NOW.getOffset());
    String food = FOODS.get(i % FOODS.size());
    LotFacts facts =
        new LotFacts(
            food,
            food,
            "raw",
            i % 2 == 0 ? "quart" : "half-pint",
            Optional.of(packed),
            Optional.of(packed.plusYears(1)),
            "cellar " + (char) ('A' + i % 7),
            "garden",
            "",
            "",
            true);
    Planned planned =
        new Planned(facts, jars, List.of(jars), new Required(25, Optional.empty(), false));
    entries.add(Entry.of(time, lot, planned, ""));
    entries.add(Entry.of(time, lot, JarNumbers.range(1, jars), InventedKitchen.sound(1), ""));
  }

  /** Jars of every urgency there is. */
  static List<LedgerEvent> everyUrgency() {
    List<Entry> entries = new ArrayList<>();
    shelved(100).forEach(e -> entries.add(e.entry()));
    LotCode plums = new LotCode(LocalDate.of(2026, 9, 1), 'A');
    LotCode beans = new LotCode(LocalDate.of(2026, 9, 1), 'B');
    step(entries, plums, "1", JarStep.frozen());
    step(entries, plums, "2", JarStep.refrigerated(LocalDate.of(2026, 11, 20)));
    step(entries, plums, "3 6", JarStep.refrigerated(LocalDate.of(2026, 12, 2)));
    step(entries, plums, "6", JarStep.frozen());
    step(entries, plums, "4", JarStep.taken(""));
    step(entries, plums, "5", JarStep.tossed("cracked"));
    step(entries, beans, "1", new Spoiled("mould"));
    Imported old =
        new Imported(
            InventedKitchen.oldFacts("Jam", Optional.of(LocalDate.of(2025, 5, 1))), "boiled long");
    entries.add(
        Entry.of(NOW, new LotCode(LocalDate.of(2025, 5, 1), 'A'), JarNumbers.of(1, 2), old, ""));
    return InventedKitchen.numbered(entries);
  }

  private static void step(List<Entry> entries, LotCode lot, String jars, Happening what) {
    entries.add(Entry.of(NOW.minusDays(9), lot, JarNumbers.parse(jars), what, ""));
  }

  static byte[] inventory(List<LedgerEvent> events, String language, PaperSize paper) {
    Wording words = WordBundle.load(language);
    ShelfSheet sheet = new ShelfSheet(words, LotFacts::shownName);
    return print(sheet.of(Pantry.of(events, FoodTables::own).here(), "Fernhollow", NOW, paper));
  }

  static byte[] year(List<LedgerEvent> events, String language, PaperSize paper) {
    YearSheet sheet = new YearSheet(WordBundle.load(language), LotFacts::shownName);
    return print(
        sheet.of(YearBook.of(events, NOW.getYear(), NOW, FoodTables::own), "Fernhollow", paper));
  }

  private static byte[] print(Sheet sheet) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      new Printer(Optional.empty()).pdf(sheet, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
