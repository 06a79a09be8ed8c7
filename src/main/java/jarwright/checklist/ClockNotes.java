package jarwright.checklist;

import jarwright.batch.Batch;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.process.HighAltitude;
import jarwright.process.TableRow;
import jarwright.quantity.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What has to be said about where the time on a sheet comes from. */
final class ClockNotes {
  private ClockNotes() {}

  static List<String> of(Batch batch, Wording words) {
    Style style = UnitWords.style(batch.kitchen().units(), words);
    List<String> notes = new ArrayList<>();
    batch
        .printedFor()
        .ifPresent(
            size ->
                notes.add(
                    words.text(
                        "note.served-by",
                        Map.of(
                            "own", words.count("jar." + batch.jar(), 2),
                            "printed", words.count("jar." + size, 1)))));
    List<TableRow> others = batch.offered().stream().filter(r -> !r.equals(batch.row())).toList();
    if (!others.isEmpty()) {
      String pairs =
          others.stream().map(r -> pair(r, words, style)).collect(Collectors.joining("; "));
      notes.add(words.text("note.offered", Map.of("pairs", pairs)));
    }
    HighAltitude.of(batch.method(), batch.kitchen().altitude())
        .ifPresent(
            doubt ->
                notes.add(
                    words.text(
                        "note.high." + doubt.id(),
                        Map.of("altitude", HighAltitude.ABOVE.text(style)))));
    return List.copyOf(notes);
  }

  private static String pair(TableRow row, Wording words, Style style) {
    return words.text(
        "note.pair",
        Map.of(
            "psi", row.process().orElseThrow().pressure().map(p -> p.text(style)).orElse(""),
            "n", row.process().orElseThrow().minutes()));
  }
}
