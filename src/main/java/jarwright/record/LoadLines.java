package jarwright.record;

import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.pantry.AcidNeed;
import jarwright.pantry.Departures;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.LoadRun;
import jarwright.pantry.Lot;
import jarwright.pantry.Observed;
import jarwright.pantry.Planned;
import jarwright.pantry.Ticked;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The canner loads of a lot: as planned, and as they went where that was written down. */
final class LoadLines {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final Wording words;
  private final Style style;

  LoadLines(Wording words, Units units) {
    this.words = words;
    this.style = UnitWords.style(units, words);
  }

  /** Each with {@code name}, {@code jars}, {@code done} and {@code lines}. */
  List<Map<String, Object>> of(Lot lot) {
    TreeSet<Integer> numbers = new TreeSet<>();
    int planned = lot.planned().map(p -> p.loads().size()).orElse(0);
    for (int n = 1; n <= planned; n++) {
      numbers.add(n);
    }
    lot.loads().forEach(l -> numbers.add(l.load()));
    return numbers.stream().map(n -> load(lot, n)).toList();
  }

  Map<String, Object> load(Lot lot, int number) {
    Optional<LoadRun> run = lot.load(number);
    Optional<Planned> planned = lot.planned().filter(p -> number <= p.loads().size());
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("name", words.text("record.load", Map.of("n", number)));
    view.put(
        "jars", planned.map(p -> words.count("record.jars", p.loads().get(number - 1))).orElse(""));
    view.put("done", run.isPresent());
    view.put("lines", run.map(this::lines).orElse(List.of()));
    return view;
  }

  private List<Map<String, Object>> lines(LoadRun run) {
    Observed seen = run.seen();
    List<Map<String, Object>> lines = new ArrayList<>();
    add(lines, "needed", minutes(run.required().minutes()));
    add(lines, "start", clock(seen.start()));
    if (seen.restarts() > 0) {
      add(lines, "restarts", words.number(seen.restarts()));
      add(lines, "last-start", clock(seen.lastStart()));
    }
    add(lines, "end", clock(seen.end()));
    add(lines, "kept", ticked(seen.kept()));
    if (run.required().pressure().isPresent()) {
      add(lines, "lowest", seen.lowest().map(p -> p.text(style)).orElse(unknown()));
      add(lines, "vented", ticked(seen.vented()));
    }
    if (run.required().dial()) {
      add(lines, "gauge", gauge(run));
    }
    if (run.required().acid() != AcidNeed.NONE) {
      String missing = seen.acidMissing().toString();
      add(
          lines,
          missing.isEmpty() ? "acid" : "acid-missing",
          missing.isEmpty() ? ticked(seen.acid()) : missing);
    }
    add(lines, "cloudy", ticked(seen.cloudy()));
    if (!seen.otherwise().isEmpty()) {
      add(lines, "otherwise", otherwise(seen.otherwise()));
    }
    if (!run.note().isEmpty()) {
      add(lines, "note", run.note());
    }
    return lines;
  }

  /** By the kitchen's own word, or as it was answered. */
  private String gauge(LoadRun run) {
    LocalDate day = run.seen().countedFrom().map(OffsetDateTime::toLocalDate).orElse(LocalDate.MIN);
    return run.required().asksForGaugeTest(day)
        ? ticked(run.seen().gaugeTested())
        : words.date("long", run.required().gaugeTested().orElseThrow());
  }

  private String otherwise(Departures departures) {
    return departures.jars().entrySet().stream()
        .map(e -> said(words.text("record.otherwise." + e.getKey().word()), e.getValue()))
        .collect(Collectors.joining("; "));
  }

  private String said(String what, JarNumbers jars) {
    return jars.isEmpty()
        ? what
        : words.text("record.otherwise.jars", Map.of("what", what, "jars", jars.toString()));
  }

  private void add(List<Map<String, Object>> lines, String key, String value) {
    lines.add(new Line(words.text("record.run." + key), value).view());
  }

  private String minutes(int minutes) {
    return words.text("record.minutes", Map.of("n", minutes));
  }

  private String clock(Optional<OffsetDateTime> time) {
    return time.map(CLOCK::format).orElse(unknown());
  }

  private String ticked(Ticked box) {
    return box == Ticked.BLANK ? unknown() : words.text("record." + box.word());
  }

  private String unknown() {
    return words.text("record.not-recorded");
  }
}
