package jarwright.checklist;

import jarwright.batch.Batch;
import jarwright.batch.FormulaMultiple;
import jarwright.day.Caution;
import jarwright.day.Section;
import jarwright.day.Step;
import jarwright.page.UnitWords;
import jarwright.page.Wording;
import jarwright.process.AltitudeBand;
import jarwright.process.FormulaLine;
import jarwright.process.Headspace;
import jarwright.process.TableRow;
import jarwright.quantity.Altitude;
import jarwright.quantity.Rounding;
import jarwright.quantity.Style;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What the checklist's template may show of one batch. */
public final class BatchView {
  private final Batch batch;
  private final Wording words;
  private final Style style;
  private final Map<String, Object> view = new LinkedHashMap<>();

  /**
   * @param words in the language of the print-out
   * @param product the product's name in that language
   */
  public BatchView(Batch batch, String product, Wording words) {
    this.batch = batch;
    this.words = words;
    this.style = UnitWords.style(batch.kitchen().units(), words);
    view.put("product", product);
    view.put("pack", words.text("pack." + batch.pack()));
    view.put("jar", words.count("jar." + batch.jar(), 1));
    view.put("jars", batch.jars());
    view.put("jarsOfSize", words.count("jar." + batch.jar(), batch.jars()));
    view.put("method", words.text("method." + batch.method()));
    view.put("pressure", batch.process().isPressure());
    view.put("minutes", batch.process().minutes());
    view.put("psi", batch.process().pressure().map(p -> p.text(style)).orElse(""));
    view.put("altitude", batch.kitchen().altitude().text(style));
    view.put("band", band(batch.row().band()));
    view.put("source", batch.row().source().place());
    view.put("household", batch.kitchen().household());
    view.put("acid", acid());
    view.put("headspace", headspace());
    view.put("servedBy", batch.printedFor().map(j -> words.count("jar." + j, 1)).orElse(""));
    view.put("offered", offered());
    view.put("formula", formula());
    view.put("dated", false);
  }

  /** Adds the date and lot, for a sheet that is used once. */
  public BatchView dated() {
    view.put("dated", true);
    view.put("lot", batch.lot().toString());
    view.put("date", words.date("long", batch.plan().date()));
    view.put("useBy", words.date("long", batch.useBy().date()));
    return this;
  }

  /** The view with its sections. */
  public Map<String, Object> with(List<Section> sections) {
    view.put("sections", sections.stream().map(BatchView::section).toList());
    return view;
  }

  private String band(AltitudeBand band) {
    String from = Altitude.feet(band.fromFeet()).text(style);
    if (band.toFeet().isEmpty()) {
      return words.text(
          "band.above", Map.of("from", Altitude.feet(band.fromFeet() - 1L).text(style)));
    }
    String to = Altitude.feet(band.toFeet().getAsInt()).text(style);
    return words.text("band.between", Map.of("from", from, "to", to));
  }

  private String acid() {
    return batch
        .acid()
        .map(
            a ->
                words.text(
                    "acid.per-jar",
                    Map.of(
                        "dose", a.each().text(style, Rounding.UP),
                        "acid", words.text("acid." + a.kind().name()))))
        .orElse("");
  }

  private List<Map<String, Object>> headspace() {
    List<Map<String, Object>> all = new ArrayList<>();
    for (Headspace space : batch.headspace()) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("of", space.of());
      one.put("text", space.depth().text(style, Rounding.NEAREST));
      one.put(
          "mm",
          space.depth().inMillimetres().numerator().doubleValue()
              / space.depth().inMillimetres().denominator().doubleValue());
      all.add(one);
    }
    return all;
  }

  /** The other time and pressure pairs that the table offers. */
  private List<String> offered() {
    return batch.offered().stream().filter(r -> !r.equals(batch.row())).map(this::pair).toList();
  }

  private String pair(TableRow row) {
    return words.text(
        "offered.pair",
        Map.of(
            "psi", row.process().orElseThrow().pressure().map(p -> p.text(style)).orElse(""),
            "n", row.process().orElseThrow().minutes()));
  }

  private Map<String, Object> formula() {
    Optional<FormulaMultiple> multiple = batch.formula();
    Map<String, Object> formula = new LinkedHashMap<>();
    formula.put("times", multiple.map(m -> m.times().orElse(0)).orElse(0));
    formula.put(
        "lines", multiple.map(m -> m.lines().stream().map(this::line).toList()).orElse(List.of()));
    return formula;
  }

  private Map<String, Object> line(FormulaLine line) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("ingredient", line.ingredient());
    one.put("amount", amount(line));
    one.put("note", line.note());
    return one;
  }

  /** As printed; empty where the ingredient is used to taste. */
  private String amount(FormulaLine line) {
    if (line.isToTaste()) {
      return "";
    }
    String amount =
        line.least().equals(line.most())
            ? line.most().toString()
            : line.least() + " " + style.word().apply("to") + " " + line.most();
    return amount + " " + style.word().apply(line.unit());
  }

  private static Map<String, Object> section(Section section) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("id", section.id());
    one.put("title", section.title());
    one.put("steps", section.steps().stream().map(BatchView::step).toList());
    return one;
  }

  private static Map<String, Object> step(Step step) {
    Map<String, Object> one = new LinkedHashMap<>();
    one.put("kind", step.kind().name().toLowerCase(Locale.ROOT));
    one.put("text", step.text());
    one.put("figure", step.figure().orElse(""));
    one.put("caution", step.caution().map(Caution::text).orElse(""));
    one.put("tally", step.tally());
    one.put("fields", step.fields());
    one.put("loads", step instanceof Step.Clock clock ? clock.loads() : 1);
    return one;
  }
}
