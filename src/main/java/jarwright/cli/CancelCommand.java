package jarwright.cli;

import jarwright.lot.LotCode;
import jarwright.pantry.Cancelled;
import jarwright.pantry.Entry;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Lot;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Options;

/** Planned lots that were never made: they count nowhere, and their labels say nothing any more. */
final class CancelCommand implements Command {
  private static final String WHY = "why";

  @Override
  public String name() {
    return "cancel";
  }

  @Override
  public String arguments() {
    return "LOT… [--why TEXT]";
  }

  @Override
  public String summary() {
    return "record that a planned batch was never made";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.withValue(null, WHY, "TEXT", "why it was not made"))
        .addOption(Books.byOption());
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    NamedJars named = NamedJars.of(call.arguments().stream().map(CancelCommand::whole).toList());
    boolean some = named.codes().values().stream().anyMatch(Optional::isPresent);
    if (named.codes().isEmpty() || !named.words().isEmpty() || some) {
      throw new Usage(
          "cancel needs whole lots by their codes, as in: jarwright cancel 260824A-T. For single"
              + " jars that were never filled: jarwright seal LOT --unfilled");
    }
    Books books = Books.open(call);
    Cancelled cancelled = new Cancelled(call.text(WHY));
    List<Lot> lots = new ArrayList<>();
    List<LedgerEvent> events =
        books.record(
            pantry -> {
              Problems problems = new Problems();
              List<Entry> entries = new ArrayList<>();
              for (LotCode code : named.codes().keySet()) {
                Lot lot = Books.lot(pantry, code);
                lots.add(lot);
                Cancelled.hindrance(lot)
                    .ifPresent(
                        h ->
                            problems.add(
                                Place.wholeFile(code.toString()),
                                JarText.food(lot.facts()) + ": it " + h,
                                "jarwright trace " + code + " shows what is recorded of it"));
                entries.add(Entry.of(books.now(), code, cancelled, books.by()));
              }
              problems.refuse();
              return entries;
            });
    for (Lot lot : lots) {
      call.out()
          .println(
              lot.code()
                  + "  "
                  + JarText.food(lot.facts())
                  + ": cancelled. If its labels are printed, throw them away.");
    }
    call.tell(Events.recorded(events));
  }

  /** A lot alone means all its jars. */
  private static String whole(String argument) {
    return argument.matches("\\s*[0-9][^/]*") ? argument.strip() + "/all" : argument;
  }
}
