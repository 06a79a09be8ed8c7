package jarwright.cli;

import jarwright.files.FoodTables;
import jarwright.files.VerdictTable;
import jarwright.lot.LotCode;
import jarwright.pantry.Entry;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Lot;
import jarwright.pantry.Origin;
import jarwright.pantry.Ticked;
import jarwright.pantry.ToldProcess;
import jarwright.pantry.Vouched;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Option;

/** Lots from elsewhere that somebody vouches for. */
final class VouchedLots {
  static final String BY = "vouched-by";
  static final String SOURCE = "source";
  private static final String ACID = "acid";

  private final Call call;
  private final Books books;

  VouchedLots(Call call, Books books) {
    this.call = call;
    this.books = books;
  }

  static Option byOption() {
    return CommonOptions.withValue(
        null, BY, "NAME", "who says by which tested process these jars from elsewhere were made");
  }

  static Option sourceOption() {
    return CommonOptions.withValue(
        null, SOURCE, "TEXT", "that process, as: USDA guide 2015, p. 2-8");
  }

  static Option acidOption() {
    return CommonOptions.withValue(null, ACID, "yes|no", "every jar got its measured acid");
  }

  /** The word that the options give; empty where they give none. */
  static Optional<Vouched> of(Call call) throws Usage {
    if (call.has(BY) != call.has(SOURCE)) {
      throw new Usage(
          "--vouched-by and --source go together: who says it, and which tested process");
    }
    if (!call.has(BY)) {
      return Optional.empty();
    }
    ToldProcess nothing = ToldProcess.NOTHING;
    ToldProcess told =
        new ToldProcess(
            nothing.method(),
            nothing.minutes(),
            nothing.pressure(),
            nothing.altitude(),
            acid(call));
    try {
      return Optional.of(new Vouched(call.text(BY), call.text(SOURCE), told));
    } catch (IllegalArgumentException e) {
      throw new Usage("--vouched-by and --source: " + e.getMessage());
    }
  }

  private static Ticked acid(Call call) throws Usage {
    try {
      return Ticked.parse(call.text(ACID));
    } catch (IllegalArgumentException e) {
      throw new Usage("--acid takes yes or no: " + e.getMessage());
    }
  }

  /** Records it of lots named whole, or refuses what it cannot make safe. */
  void record(NamedJars named) throws Usage, Refused, IOException {
    Vouched vouched = of(call).orElseThrow();
    if (named.codes().values().stream().anyMatch(Optional::isPresent)) {
      throw new Usage("--vouched-by speaks for whole lots, as in: jarwright trace 000101A-E");
    }
    JarText text = new JarText(new VerdictText(Units.BOTH), VerdictTable.read(), books.now());
    List<LedgerEvent> events =
        books.record(
            pantry -> {
              Problems problems = new Problems();
              List<Entry> entries = new ArrayList<>();
              for (LotCode code : named.codes().keySet()) {
                Lot lot = Books.lot(pantry, code);
                check(lot, vouched, text, problems);
                entries.add(Entry.of(books.now(), code, vouched, books.by()));
              }
              problems.refuse();
              return entries;
            });
    call.tell(Events.recorded(events));
  }

  /**
   * Whether the word makes the jars of the lot fit to be eaten.
   *
   * @throws Refused where it does not
   */
  static void check(Lot lot, Vouched vouched, JarText text) throws Refused {
    Problems problems = new Problems();
    check(lot, vouched, text, problems);
    problems.refuse();
  }

  private static void check(Lot lot, Vouched vouched, JarText text, Problems problems) {
    Place where = Place.wholeFile(lot.code().toString());
    String food = JarText.food(lot.facts()) + ": ";
    Origin origin = vouched.of(lot, FoodTables.own());
    if (origin instanceof Origin.MadeHere) {
      problems.add(
          where,
          food + "it was made with this program, so its process is on record",
          "jarwright trace " + lot.code() + " shows it");
    } else if (!(origin instanceof Origin.ByWord)) {
      problems.add(where, food + text.origin(origin), remedy(origin, lot));
    }
  }

  private static String remedy(Origin origin, Lot lot) {
    if (origin.equals(new Origin.Unsafe(Origin.Lack.ACID))) {
      return "If every jar got it, add --acid yes. If not, throw it away";
    }
    if (origin.equals(new Origin.Unsafe(Origin.Lack.PROCESS_NOT_TOLD))) {
      return "Fill in the columns size, method, minutes, pressure, altitude, vouched-by and source"
          + " of its list, and import the list again. If they are not known, throw it away";
    }
    if (origin.equals(new Origin.Unsafe(Origin.Lack.FOOD_NOT_KNOWN))) {
      return "If the tables know it by another name, undo the import and import it by that name:"
          + " jarwright process WORD. If not, throw it away";
    }
    return "No word makes it safe. Throw it away, then: jarwright toss "
        + lot.code()
        + "/all --why TEXT";
  }
}
