package jarwright.checklist;

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

  static List<Map<String, String>> of(Wording words, Units units) {
    return Stream.of("unsealed", "low", "spoiled", "ask")
        .map(
            key ->
                Map.of(
                    "title", words.text("doubt." + key),
                    "text",
                        MeasuredText.parse(words.text("doubt." + key + ".text"))
                            .text(UnitWords.style(units, words), Map.of())))
        .toList();
  }
}
