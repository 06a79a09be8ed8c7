package jarwright.checklist;

import jarwright.batch.Batch;
import jarwright.day.ClockTime;
import jarwright.day.FoodName;
import jarwright.day.Section;
import jarwright.day.SectionTimes;
import jarwright.page.Wording;
import jarwright.quantity.Units;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/** What the checklist's template may show of one batch. */
public final class BatchView {
  /** As the tables name a part of the guide. */
  private static final String GUIDE = "Guide";

  private final Batch batch;
  private final Wording words;
  private final Map<String, Object> view = new LinkedHashMap<>();

  /**
   * @param product the product's name in the language of the print-out
   * @param named that language's words for an English ingredient or note of a formula
   */
  public BatchView(Batch batch, String product, Wording words, UnaryOperator<String> named) {
    this.batch = batch;
    this.words = words;
    Units units = batch.kitchen().units();
    view.put("product", product);
    String name = FoodName.brief(product);
    view.put("name", name);
    view.put("kinds", product.substring(name.length()).strip());
    view.put("pack", words.text("head.pack." + batch.pack()));
    view.put("jars", batch.jars());
    view.put("jarsOfSize", words.count("jar." + batch.jar(), batch.jars()));
    view.put("method", words.text("method." + batch.method()));
    view.put("pressure", batch.process().isPressure());
    view.put(
        "altitude",
        new AltitudeView(batch.row().band(), batch.kitchen().altitude(), words, units).view());
    view.put("source", batch.row().source().place().replace(GUIDE, words.text("head.guide")));
    view.put("notes", ClockNotes.of(batch, words));
    view.put("doubts", DoubtView.of(words, units));
    view.put(
        "formula",
        batch
            .formula()
            .map(f -> new FormulaView(batch, f, words, named).view())
            .orElse(Map.of("lines", List.of())));
    view.put("dated", false);
    view.put("times", Map.of("due", Map.of(), "starts", List.of(), "ends", List.of()));
  }

  /**
   * Adds the date, the lot and the planned clock times, for a sheet that is used once.
   *
   * @param times of the batch's sections
   */
  public BatchView dated(SectionTimes times) {
    ClockTime clock = new ClockTime(batch.kitchen().clock(), words);
    view.put("times", new TimesView(times, batch.plan().date(), clock).view());
    view.put("dated", true);
    view.put("lot", batch.lot().toString());
    view.put("date", words.date("long", batch.plan().date()));
    view.put("useBy", words.date("long", batch.useBy().date()));
    return this;
  }

  /** The view with its sections. */
  public Map<String, Object> with(List<Section> sections) {
    view.put("loads", StepView.loads(sections));
    List<Map<String, Object>> views = new ArrayList<>();
    Set<String> begun = new HashSet<>();
    for (Section section : sections) {
      Map<String, Object> one = StepView.section(section);
      one.put("begins", begun.add(section.id()));
      views.add(one);
    }
    view.put("sections", views);
    return view;
  }
}
