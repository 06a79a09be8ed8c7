package jarwright.checklist;

import jarwright.day.Line;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.quantity.MeasuredText;
import jarwright.quantity.Units;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What to do with a jar that is in doubt, and whom to ask. */
final class DoubtView {
  private DoubtView() {}

  static List<Map<String, Object>> of(Wording words, Units units) {
    return Stream.of("unsealed", "low", "spoiled", "ask")
        .map(
            key ->
                Map.<String, Object>of(
                    "title", words.text("doubt." + key),
                    "runs", StepView.runs(line("doubt." + key + ".text", words, units))))
        .toList();
  }

  private static Line line(String key, Wording words, Units units) {
    return new Line(
        MeasuredText.parse(words.text(key)).runs(UnitWords.style(units, words), Map.of()));
  }
}
