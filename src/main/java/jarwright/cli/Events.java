package jarwright.cli;

import jarwright.pantry.Cancelled;
import jarwright.pantry.Checked;
import jarwright.pantry.Happening;
import jarwright.pantry.Imported;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.LoadRun;
import jarwright.pantry.Outcome;
import jarwright.pantry.Spoiled;
import jarwright.pantry.Undone;
import jarwright.pantry.Vouched;
import jarwright.record.Reasons;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Events of the ledger as a line shows them. */
final class Events {
  private Events() {}

  /** Under which numbers they were written together, and how to take them back. */
  static String recorded(List<LedgerEvent> events) {
    return "recorded as "
        + numbers(events)
        + "; jarwright undo "
        + range(events)
        + " takes it back";
  }

  /** {@code event 3} or {@code events 3 to 5}. */
  private static String numbers(List<LedgerEvent> events) {
    long first = events.get(0).number();
    long last = events.get(events.size() - 1).number();
    return first == last ? "event " + first : "events " + first + " to " + last;
  }

  /** {@code 3} or {@code 3..5}. */
  private static String range(List<LedgerEvent> events) {
    long first = events.get(0).number();
    long last = events.get(events.size() - 1).number();
    return first == last ? String.valueOf(first) : first + ".." + last;
  }

  /** When, what and to which jars. */
  static String line(LedgerEvent event, VerdictText words) {
    String jars =
        event
            .lot()
            .map(l -> " " + l + (event.jars().isEmpty() ? "" : "/" + event.jars()))
            .orElse("");
    String more = particular(event.what(), words);
    return "event "
        + event.number()
        + " of "
        + VerdictText.minute(event.when())
        + ": "
        + words.event(event.what().kind())
        + jars
        + (more.isEmpty() ? "" : ": " + more);
  }

  private static String particular(Happening what, VerdictText words) {
    if (what instanceof LoadRun run) {
      return "load "
          + run.load()
          + ", "
          + time(run.seen().fullRunFrom())
          + " to "
          + time(run.seen().end());
    }
    if (what instanceof Outcome outcome) {
      return words.grade(outcome.verdict().grade());
    }
    if (what instanceof JarStep step) {
      return step.word();
    }
    if (what instanceof Spoiled spoiled) {
      String cause = spoiled.cause().isEmpty() ? "" : "; whole lot: " + spoiled.cause();
      return Reasons.seen(words.wording(), spoiled) + cause;
    }
    if (what instanceof Checked checked) {
      return checked.isClean()
          ? words.wording().text("says.no-sign")
          : Reasons.seen(words.wording(), new Spoiled(checked.signs(), checked.note(), ""));
    }
    if (what instanceof Vouched vouched) {
      return words
          .wording()
          .text("says.by-word", Map.of("who", vouched.who(), "source", vouched.source()));
    }
    if (what instanceof Cancelled cancelled) {
      return cancelled.why();
    }
    if (what instanceof Imported imported) {
      return imported.known();
    }
    if (what instanceof Undone undone) {
      return "event " + undone.event() + (undone.why().isEmpty() ? "" : ", " + undone.why());
    }
    return "";
  }

  private static String time(Optional<OffsetDateTime> time) {
    return time.map(VerdictText::minute).orElse("?");
  }
}
