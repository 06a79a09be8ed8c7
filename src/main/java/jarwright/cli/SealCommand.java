package jarwright.cli;

import jarwright.files.HouseholdFolder;
import jarwright.files.KeyedOutcome;
import jarwright.files.OutcomeReader;
import jarwright.files.VerdictTable;
import jarwright.lot.LotCode;
import jarwright.pantry.Judge;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.LoadReport;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.Planned;
import jarwright.pantry.Sealed;
import jarwright.pantry.Sealing;
import jarwright.plan.Kitchen;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.cli.Options;

/** Keys in what happened in the canner and after; gives each jar its verdict. */
final class SealCommand implements Command {
  private static final String FROM = "from";
  private static final String EXAMPLE =
      "jarwright seal 260824A-T --start 10:42 --end 11:27 --kept yes --cloudy no --sealed all";

  @Override
  public String name() {
    return "seal";
  }

  @Override
  public String arguments() {
    return "LOT  or  seal --from FILE";
  }

  @Override
  public String summary() {
    return "key in what happened; get each jar's verdict";
  }

  @Override
  public Options options() {
    Options options =
        new Options()
            .addOption(
                CommonOptions.withValue(null, FROM, "FILE", "a CSV of the whole day, all lots"))
            .addOption(Books.byOption())
            .addOption(
                CommonOptions.withValue(null, PlanRun.KITCHEN, "FILE", "the kitchen's file"));
    SealOptions.addTo(options);
    return options;
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    checkUse(call);
    Books books = Books.open(call);
    Pantry pantry = books.pantry();
    Optional<Keyboard> keyboard = asks(call) ? Keyboard.of(call) : Optional.empty();
    List<LoadReport> reports = reports(call, books, pantry, keyboard);
    Judge judge = new Judge(VerdictTable.read());
    Sealed sealed = judged(reports, books, pantry, judge);
    if (sealed.entries().isEmpty()) {
      call.out().println("All of it is recorded already; nothing was added.");
      return;
    }
    Units units = books.kitchen().map(Kitchen::units).orElse(Units.BOTH);
    String text = new SealText(pantry, units).of(sealed);
    if (keyboard.isPresent()) {
      call.out().print(text);
      if (!keyboard.get().confirm("Write this into the ledger?")) {
        throw new Refused(Place.wholeFile("seal"), "nothing was recorded", "");
      }
    }
    List<LedgerEvent> events = record(books, reports, judge, sealed);
    if (keyboard.isEmpty()) {
      call.out().print(text);
    }
    call.out().println(Help.CAUTION);
    call.tell(Events.recorded(events));
  }

  private static boolean asks(Call call) {
    return !call.has(FROM) && !SealOptions.areIn(call);
  }

  private static void checkUse(Call call) throws Usage {
    boolean from = call.has(FROM);
    int lots = call.arguments().size();
    if (from && (lots > 0 || SealOptions.areIn(call))) {
      throw new Usage("seal --from FILE takes lots and all else from the file; leave them out");
    }
    if (!from && lots != 1) {
      throw new Usage("seal needs one lot, as in: " + EXAMPLE);
    }
    if (asks(call) && call.surroundings().keyboard().isEmpty()) {
      throw new Usage(
          "seal needs to be told what happened, as in: "
              + EXAMPLE
              + "; at a terminal it asks; --from FILE takes a file");
    }
  }

  private static List<LoadReport> reports(
      Call call, Books books, Pantry pantry, Optional<Keyboard> keyboard)
      throws Usage, Refused, IOException {
    Optional<Path> from = call.path(FROM);
    if (from.isPresent()) {
      return OutcomeReader.read(from.get(), pantry, books.zone());
    }
    Lot lot = Books.lot(pantry, Books.code(call.arguments().get(0)));
    Planned planned = planned(lot);
    List<Map<String, String>> rows =
        keyboard.isPresent()
            ? asked(keyboard.get(), lot, planned, books)
            : SealOptions.rows(call, lot, planned);
    return KeyedOutcome.read("seal " + lot.code(), rows, pantry, books.zone());
  }

  private static Planned planned(Lot lot) throws Refused {
    if (lot.planned().isEmpty()) {
      throw new Refused(
          Place.wholeFile(lot.code().toString()),
          "this lot came from an old list: nothing says how it had to be processed",
          "only what was planned here can be sealed");
    }
    return lot.planned().get();
  }

  private static List<Map<String, String>> asked(
      Keyboard keyboard, Lot lot, Planned planned, Books books) throws Refused, IOException {
    List<Map<String, String>> rows = new ArrayList<>();
    SealQuestions questions = new SealQuestions(keyboard, lot, planned);
    for (int load = 1; load <= planned.loads().size(); load++) {
      if (lot.load(load).isEmpty()) {
        rows.add(questions.of(load));
      }
    }
    if (rows.isEmpty()) {
      throw new Refused(new RecordedLoads(books.events(), lot.code()).all());
    }
    return rows;
  }

  /** The reports judged; a refusal also says what is recorded of the same loads. */
  private static Sealed judged(List<LoadReport> reports, Books books, Pantry pantry, Judge judge)
      throws Refused, IOException {
    try {
      return Sealing.of(reports, pantry, judge, books.now(), books.by());
    } catch (Refused refused) {
      List<Problem> problems = new ArrayList<>(refused.problems());
      TreeSet<LotCode> lots = new TreeSet<>();
      reports.stream()
          .filter(r -> pantry.lot(r.lot()).flatMap(l -> l.load(r.load())).isPresent())
          .forEach(r -> lots.add(r.lot()));
      for (LotCode lot : lots) {
        problems.addAll(new RecordedLoads(books.events(), lot).all());
      }
      throw new Refused(problems);
    }
  }

  /** Nobody can change the lots' plans meanwhile, and what is written is what was shown. */
  private static List<LedgerEvent> record(
      Books books, List<LoadReport> reports, Judge judge, Sealed shown)
      throws Refused, IOException {
    HouseholdFolder.Registration held = books.house().register();
    try {
      return books.record(
          current -> {
            Sealed now = Sealing.of(reports, current, judge, books.now(), books.by());
            if (!now.equals(shown)) {
              throw new Refused(
                  Place.wholeFile("ledger"),
                  "these lots were changed meanwhile; nothing was recorded",
                  "look what is recorded, and seal again");
            }
            return now.entries();
          });
    } finally {
      held.close();
    }
  }
}
