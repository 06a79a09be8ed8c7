package jarwright.cli;

import jarwright.files.KeyedOutcome;
import jarwright.files.OutcomeReader;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.LoadReport;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.Sealed;
import jarwright.problem.Place;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;

/** Keys in what happened in the canner, and how the jars came out; gives each jar its verdict. */
final class SealCommand implements Command {
  private static final String FROM = "from";
  private static final String EXAMPLE =
      "jarwright seal 260824A-T --start 10:42 --end 11:27 --kept yes --cloudy no";
  private static final String NEXT_DAY = "jarwright seal 260824A-T --sealed all --unsealed 3";

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
    return "key in what happened, and the seals next day; get each jar's verdict";
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
    if (asks(call)) {
      Lot lot = named(call, books.pantry());
      new SealDialog(call, books, Keyboard.of(call).orElseThrow(), lot.code()).run();
      return;
    }
    Pantry pantry = books.pantry();
    List<LoadReport> reports = reports(call, books, pantry);
    SealRecording recording = new SealRecording(books);
    Sealed sealed = recording.judged(reports, pantry);
    if (sealed.entries().isEmpty()) {
      call.out().println("All of it is recorded already; nothing was added.");
      return;
    }
    String text = recording.text(sealed);
    List<LedgerEvent> events = recording.record(reports, sealed);
    call.out().print(text);
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
          "tell seal what happened, as in: "
              + EXAMPLE
              + "; and when the jars have cooled: "
              + NEXT_DAY
              + "; at a terminal it asks; --from FILE takes a file");
    }
  }

  private static List<LoadReport> reports(Call call, Books books, Pantry pantry)
      throws Usage, Refused, IOException {
    Optional<Path> from = call.path(FROM);
    if (from.isPresent()) {
      return OutcomeReader.read(from.get(), pantry, books.zone());
    }
    Lot lot = named(call, pantry);
    return KeyedOutcome.read(
        "seal " + lot.code(), SealOptions.rows(call, lot), pantry, books.zone());
  }

  /** The lot that is named, which has to be one that was planned here. */
  private static Lot named(Call call, Pantry pantry) throws Refused {
    Lot lot = Books.lot(pantry, Books.code(call.arguments().get(0)));
    if (lot.planned().isEmpty()) {
      throw new Refused(
          Place.wholeFile(lot.code().toString()),
          "this lot came from an old list: nothing says how it had to be processed",
          "only what was planned here can be sealed");
    }
    return lot;
  }
}
