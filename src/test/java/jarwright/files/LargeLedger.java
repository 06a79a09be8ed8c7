package jarwright.files;

import jarwright.lot.LotCode;
import jarwright.lot.UseBy;
import jarwright.pantry.Entry;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.JarStep;
import jarwright.pantry.Liquid;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Outcome;
import jarwright.pantry.Planned;
import jarwright.pantry.Required;
import jarwright.pantry.Verdict;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Writes the ledger of an invented household as large as is asked for; always the same. */
final class LargeLedger {
  private static final List<String> FOODS =
      List.of(
          "plums-halved-or-whole",
          "tomatoes-whole-in-water",
          "peaches-halved-or-sliced",
          "apricots-halved-or-sliced",
          "pears-halved",
          "berries-whole",
          "applesauce",
          "beans-snap-italian");
  private static final List<String> NAMES =
      List.of(
          "Plums, halved or whole",
          "Tomatoes, whole or halved, in water",
          "Peaches, halved or sliced",
          "Apricots, halved or sliced",
          "Pears, halved",
          "Berries, whole",
          "Applesauce",
          "Beans, snap and Italian, pieces (green and wax)");
  private static final List<String> SIZES = List.of("quart", "pint", "half-pint");
  private static final int LOT = 7;

  private final Random random = new Random(7);
  private final List<Entry> entries = new ArrayList<>();

  private LargeLedger() {}

  /** Folder, jars, events, and the last day of packing. */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectories(Path.of(args[0]));
    write(folder, Integer.parseInt(args[1]), Integer.parseInt(args[2]), LocalDate.parse(args[3]));
  }

  /**
   * Writes a ledger.
   *
   * @param jars in lots of seven, the youngest packed on the last day, half of them eaten
   * @param events at least so many; beyond what the jars need they are moves between shelves
   */
  static void write(Path folder, int jars, int events, LocalDate last) throws Exception {
    new LargeLedger().fill(folder, jars, events, last);
  }

  private void fill(Path folder, int jars, int events, LocalDate last) throws Exception {
    int lots = (jars + LOT - 1) / LOT;
    for (int i = 0; i < lots; i++) {
      int own = Math.min(LOT, jars - i * LOT);
      lot(i, own, last.minusDays((lots - 1 - i) / 4), events / lots);
    }
    entries.sort(Comparator.comparing(Entry::when));
    LedgerFile.in(folder).append(entries);
  }

  private void lot(int i, int jars, LocalDate packed, int events) {
    LotCode code = new LotCode(packed, (char) ('A' + i % 4));
    OffsetDateTime time = OffsetDateTime.of(packed, LocalTime.of(18, 0), ZoneOffset.UTC);
    int food = random.nextInt(FOODS.size());
    LotFacts facts =
        new LotFacts(
            FOODS.get(food),
            NAMES.get(food),
            "hot",
            SIZES.get(random.nextInt(SIZES.size())),
            Optional.of(packed),
            Optional.of(UseBy.after(packed, UseBy.USUAL_MONTHS).date()),
            shelf(),
            "garden",
            "lids of spring",
            "",
            true);
    Required required = new Required(25, Optional.empty(), false);
    entries.add(Entry.of(time, code, new Planned(facts, jars, List.of(jars), required), ""));
    Outcome sound = new Outcome(1, true, Liquid.NONE, "", new Verdict.Shelf(), List.of());
    entries.add(Entry.of(time, code, JarNumbers.range(1, jars), sound, ""));
    for (int step = 2; step < events - jars / 2; step++) {
      JarNumbers one = JarNumbers.of(1 + random.nextInt(jars));
      entries.add(Entry.of(time, code, one, JarStep.moved(shelf()), ""));
    }
    for (int jar = 1; jar <= jars / 2; jar++) {
      OffsetDateTime later = time.plusDays(9L * jar);
      entries.add(Entry.of(later, code, JarNumbers.of(jar), JarStep.taken(""), ""));
    }
  }

  private String shelf() {
    return "cellar " + (char) ('A' + random.nextInt(6)) + (1 + random.nextInt(5));
  }
}
