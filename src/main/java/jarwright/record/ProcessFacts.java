package jarwright.record;

import jarwright.batch.Batch;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.process.Headspace;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How a batch is processed, as lines of name and value. */
final class ProcessFacts {
  private final Batch batch;
  private final Wording words;
  private final Style style;
  private final List<Map<String, Object>> facts = new ArrayList<>();

  ProcessFacts(Batch batch, Wording words) {
    this.batch = batch;
    this.words = words;
    this.style = UnitWords.style(batch.kitchen().units(), words);
  }

  List<Map<String, Object>> lines() {
    add("method", words.text("method." + batch.method()));
    add("minutes", minutes(batch.process().minutes()));
    batch.process().pressure().ifPresent(p -> add("pressure", p.text(style)));
    add("altitude", batch.kitchen().altitude().text(style));
    batch.sterilise().ifPresent(m -> add("sterile", minutes(m)));
    batch
        .acid()
        .ifPresent(
            a ->
                add(
                    "acid",
                    words.text(
                        "record.acid-dose",
                        Map.of(
                            "dose", a.each().text(style, Rounding.UP),
                            "acid", words.text("acid." + a.kind().name())))));
    batch.salt().ifPresent(s -> add("salt", s.text(style, Rounding.NEAREST)));
    batch.plan().cover().ifPresent(c -> add("cover", words.text("cover." + c.id())));
    add(
        "headspace",
        batch.headspace().stream().map(this::headspace).collect(Collectors.joining(", ")));
    add("source", batch.row().source().place());
    return List.copyOf(facts);
  }

  private void add(String key, String value) {
    facts.add(line(words.text("record.fact." + key), value));
  }

  static Map<String, Object> line(String name, String value) {
    Map<String, Object> line = new LinkedHashMap<>();
    line.put("name", name);
    line.put("value", value);
    return line;
  }

  private String minutes(int minutes) {
    return words.text("figure.minutes", Map.of("n", minutes));
  }

  private String headspace(Headspace space) {
    return space.depth().text(style, Rounding.NEAREST);
  }
}
