package jarwright.cli;

import jarwright.pantry.Entry;
import jarwright.pantry.Imported;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Planned;
import jarwright.pantry.Undone;
import jarwright.problem.Place;
import jarwright.problem.Refused;
import jarwright.quantity.Units;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.apache.commons.cli.Options;

/** Takes events of the ledger back; they stay in it, and so does the taking back. */
final class UndoCommand implements Command {
  private static final String WHY = "why";
  private static final Pattern RUN = Pattern.compile("(\\d{1,9})(?:(?:\\.\\.|-)(\\d{1,9}))?");
  private static final int MOST = 1_000;

  @Override
  public String name() {
    return "undo";
  }

  @Override
  public String arguments() {
    return "[EVENT…]";
  }

  @Override
  public String summary() {
    return "take the last event back, or those of these numbers";
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(CommonOptions.withValue(null, WHY, "TEXT", "why it was wrong"))
        .addOption(Books.byOption());
  }

  @Override
  public void run(Call call) throws Usage, Refused, IOException {
    List<Long> wanted = numbers(call.arguments());
    Books books = Books.open(call);
    String why = call.text(WHY);
    List<LedgerEvent> taken = new ArrayList<>();
    List<LedgerEvent> events =
        books.correct(
            ledger -> {
              List<LedgerEvent> known = new ArrayList<>(ledger);
              List<Entry> entries = new ArrayList<>();
              for (long number : wanted.isEmpty() ? List.of(last(ledger)) : wanted) {
                check(number, known, why);
                taken.add(known.get(Math.toIntExact(number - 1)));
                Entry entry = Entry.undo(books.now(), number, why, books.by());
                known.add(new LedgerEvent(known.size() + 1L, entry));
                entries.add(entry);
              }
              return entries;
            });
    VerdictText words = new VerdictText(Units.BOTH);
    taken.forEach(e -> call.out().println("taken back: " + Events.line(e, words)));
    call.tell(Events.recorded(events));
  }

  /** The last first: what builds on an event is taken back before it. */
  private static List<Long> numbers(List<String> arguments) throws Usage {
    TreeSet<Long> numbers = new TreeSet<>(Collections.reverseOrder());
    for (String argument : arguments) {
      Matcher run = RUN.matcher(argument.strip());
      long first = run.matches() ? Long.parseLong(run.group(1)) : 0;
      long last = run.matches() && run.group(2) != null ? Long.parseLong(run.group(2)) : first;
      if (first < 1 || last < first || last - first >= MOST) {
        throw new Usage(
            "undo takes numbers of events, as the ledger and the commands give them: jarwright undo"
                + " 12, or 12..14; not \""
                + NamedJars.shown(argument)
                + "\"");
      }
      LongStream.rangeClosed(first, last).forEach(numbers::add);
    }
    return List.copyOf(numbers);
  }

  private static long last(List<LedgerEvent> ledger) throws Refused {
    Optional<LedgerEvent> last = Undone.last(ledger);
    if (last.isEmpty()) {
      throw new Refused(Place.wholeFile("undo"), "there is nothing to take back", "");
    }
    LedgerEvent event = last.get();
    if (event.what() instanceof Planned || event.what() instanceof Imported) {
      throw new Refused(
          Place.wholeFile("undo"),
          "the last thing recorded is that lot "
              + event.lot().orElseThrow()
              + " was "
              + (event.what() instanceof Planned ? "planned" : "brought in"),
          "if that is to be taken back, say so: jarwright undo " + event.number());
    }
    return event.number();
  }

  /** What lifts a doubt is said twice: by its number, and with a reason that stays on the jars. */
  private static void check(long number, List<LedgerEvent> known, String why) throws Refused {
    Optional<String> hindrance = Undone.hindrance(number, known);
    if (hindrance.isPresent()) {
      throw new Refused(
          Place.wholeFile("undo " + number), hindrance.get(), "nothing was taken back");
    }
    LedgerEvent event = known.get(Math.toIntExact(number - 1));
    if (Undone.needsWhy(event.what()) && why.isEmpty()) {
      throw new Refused(
          Place.wholeFile("undo " + number),
          "event "
              + number
              + " says that jar "
              + event.lot().orElseThrow()
              + "/"
              + event.jars()
              + " was spoiled, and keeps the other jars of the lot from being eaten",
          "if it was recorded by mistake, say what was wrong with it: jarwright undo "
              + number
              + " --why TEXT. It stays to be read on every jar of the lot");
    }
  }
}
