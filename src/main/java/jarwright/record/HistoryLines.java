package jarwright.record;

import jarwright.page.Wording;
import jarwright.pantry.Cancelled;
import jarwright.pantry.Checked;
import jarwright.pantry.Deed;
import jarwright.pantry.Happening;
import jarwright.pantry.Imported;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.JarStep;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.LoadRun;
import jarwright.pantry.Outcome;
import jarwright.pantry.Spoiled;
import jarwright.pantry.Undone;
import jarwright.pantry.Vouched;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

/** What the ledger noted of a lot or a jar, line by line, nothing left out. */
final class HistoryLines {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final Wording words;

  HistoryLines(Wording words) {
    this.words = words;
  }

  List<Map<String, Object>> of(LotRecord lot) {
    return lot.events().stream().map(this::line).toList();
  }

  /** The events that name the jar, or no jars at all, and those that take such events back. */
  List<Map<String, Object>> of(LotRecord lot, int number) {
    IntPredicate isJar = n -> n == number;
    Set<Long> own =
        lot.events().stream()
            .filter(e -> !(e.what() instanceof Undone))
            .filter(e -> e.jars().isEmpty() || e.jars().stream().anyMatch(isJar))
            .map(LedgerEvent::number)
            .collect(Collectors.toCollection(TreeSet::new));
    lot.events().stream()
        .filter(e -> e.what() instanceof Undone undone && own.contains(undone.event()))
        .forEach(e -> own.add(e.number()));
    return lot.events().stream().filter(e -> own.contains(e.number())).map(this::line).toList();
  }

  /** With {@code when}, {@code number}, {@code what}, {@code jars} and {@code by}. */
  private Map<String, Object> line(LedgerEvent event) {
    Map<String, Object> line = new LinkedHashMap<>();
    line.put("number", String.valueOf(event.number()));
    line.put(
        "when", words.date("iso", event.when().toLocalDate()) + " " + CLOCK.format(event.when()));
    line.put("what", what(event.what()));
    line.put("jars", event.jars().equals(JarNumbers.NONE) ? "" : event.jars().toString());
    line.put("by", event.by());
    return line;
  }

  private String what(Happening happening) {
    String plain = words.text("record.event." + happening.kind());
    String more = particular(happening);
    return more.isEmpty()
        ? plain
        : words.text("record.event-with", Map.of("event", plain, "with", more));
  }

  private String particular(Happening happening) {
    if (happening instanceof JarStep step) {
      return step.deed() == Deed.REFRIGERATED
          ? words.date("long", LocalDate.parse(step.word()))
          : step.word();
    }
    if (happening instanceof Outcome outcome) {
      return words.text("record.verdict." + outcome.verdict().grade().word());
    }
    if (happening instanceof LoadRun run) {
      return words.text("record.load", Map.of("n", run.load()));
    }
    if (happening instanceof Imported imported) {
      return imported.known();
    }
    if (happening instanceof Spoiled spoiled) {
      return Reasons.seen(words, spoiled)
          + (spoiled.cause().isEmpty() ? "" : "; " + spoiled.cause());
    }
    if (happening instanceof Checked checked) {
      return checked.isClean()
          ? words.text("says.no-sign")
          : Reasons.seen(words, new Spoiled(checked.signs(), checked.note(), ""));
    }
    if (happening instanceof Vouched vouched) {
      return words.text("says.by-word", Map.of("who", vouched.who(), "source", vouched.source()));
    }
    if (happening instanceof Cancelled cancelled) {
      return cancelled.why();
    }
    if (happening instanceof Undone undone) {
      return words.text("record.event-number", Map.of("n", String.valueOf(undone.event())))
          + (undone.why().isEmpty() ? "" : ", " + undone.why());
    }
    return "";
  }
}
