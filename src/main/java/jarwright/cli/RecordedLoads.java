package jarwright.cli;

import jarwright.lot.LotCode;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.LoadRun;
import jarwright.pantry.Outcome;
import jarwright.pantry.Undone;
import jarwright.problem.Place;
import jarwright.problem.Problem;
import jarwright.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What the ledger has of a lot's loads already, told to someone who would record it again. */
final class RecordedLoads {
  private final List<LedgerEvent> events;
  private final LotCode lot;

  RecordedLoads(List<LedgerEvent> events, LotCode lot) {
    this.events = events;
    this.lot = lot;
  }

  /** A line for each event, and how all of them are taken back. */
  List<Problem> all() {
    VerdictText words = new VerdictText(Units.BOTH);
    Set<Long> undone = Undone.numbers(events);
    List<LedgerEvent> own =
        events.stream()
            .filter(e -> e.lot().filter(lot::equals).isPresent())
            .filter(
                e ->
                    e.what() instanceof LoadRun
                        || e.what() instanceof Outcome
                        || e.what() instanceof JarStep)
            .filter(e -> !undone.contains(e.number()))
            .toList();
    List<Problem> problems = new ArrayList<>();
    Place place = Place.wholeFile(lot.toString());
    own.forEach(e -> problems.add(new Problem(place, "recorded as " + Events.line(e, words), "")));
    problems.add(
        new Problem(
            place,
            "what is recorded stays",
            "if it is wrong: jarwright undo "
                + own.stream().map(e -> String.valueOf(e.number())).collect(Collectors.joining(" "))
                + ", then seal again"));
    return problems;
  }
}
