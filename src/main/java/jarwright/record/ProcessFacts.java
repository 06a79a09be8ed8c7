package jarwright.record;

import jarwright.batch.BatchRecord;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.pantry.AcidNeed;
import jarwright.pantry.Required;
import jarwright.process.AltitudeBand;
import jarwright.process.Headspace;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import jarwright.quantity.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How a batch is to be processed, as lines of name and value. */
final class ProcessFacts {
  private final Wording words;
  private final Style style;
  private final List<Map<String, Object>> facts = new ArrayList<>();

  private ProcessFacts(Wording words, Units units) {
    this.words = words;
    this.style = UnitWords.style(units, words);
  }

  /** From the batch record where there is one, else what the ledger itself holds. */
  static List<Map<String, Object>> of(LotRecord lot, Wording words, Units units) {
    ProcessFacts facts = new ProcessFacts(words, units);
    lot.planned()
        .ifPresentOrElse(
            facts::add, () -> lot.lot().planned().ifPresent(p -> facts.add(p.required())));
    return List.copyOf(facts.facts);
  }

  private void add(Required required) {
    add("minutes", minutes(required.minutes()));
    required.pressure().ifPresent(p -> add("pressure", p.text(style)));
    if (required.acid() == AcidNeed.EACH_JAR) {
      add("acid", words.text("record.acid-needed"));
    }
  }

  private void add(BatchRecord record) {
    BatchRecord.Processing process = record.processing();
    add("method", words.text("method." + process.method()));
    add("minutes", minutes(process.tested().minutes()));
    process.tested().pressure().ifPresent(p -> add("pressure", p.text(style)));
    add("altitude", process.altitude().text(style));
    add("band", band(process.band()));
    process.printedFor().ifPresent(j -> add("printed-for", words.count("jar." + j, 1)));
    process.sterilise().ifPresent(m -> add("sterile", minutes(m)));
    BatchRecord.Additions additions = record.additions();
    additions
        .acid()
        .ifPresent(
            a ->
                add(
                    "acid",
                    words.text(
                        "record.acid-each",
                        Map.of(
                            "dose", a.each().text(style, Rounding.UP),
                            "acid", words.text("acid." + a.kind().name())))));
    additions.salt().ifPresent(s -> add("salt", each(s.text(style, Rounding.NEAREST))));
    additions.syrup().ifPresent(s -> add("cover", words.text("cover." + s.id())));
    add(
        "headspace",
        additions.headspace().stream().map(this::headspace).collect(Collectors.joining(", ")));
    add("canner", record.jars().canner());
    add("source", process.source().place());
  }

  private void add(String key, String value) {
    if (!value.isEmpty()) {
      facts.add(new Line(words.text("record.fact." + key), value).view());
    }
  }

  private String each(String amount) {
    return words.text("record.each", Map.of("amount", amount));
  }

  private String minutes(int minutes) {
    return words.text("record.minutes", Map.of("n", minutes));
  }

  /** In feet alone, as the table prints it. */
  private String band(AltitudeBand band) {
    String from = words.number(band.fromFeet());
    return band.toFeet().isPresent()
        ? words.text(
            "record.band.between",
            Map.of("from", from, "to", words.number(band.toFeet().getAsInt())))
        : words.text("record.band.above", Map.of("from", from));
  }

  private String headspace(Headspace space) {
    String depth = space.depth().text(style, Rounding.NEAREST);
    return space.of().isEmpty()
        ? depth
        : words.text(
            "record.headspace-of",
            Map.of("depth", depth, "of", words.text("headspace." + space.of())));
  }
}
