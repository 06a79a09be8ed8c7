package jarwright.day;

import jarwright.batch.Batch;
import jarwright.page.PaperSize;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import jarwright.process.Buying;
import jarwright.process.Product;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * The day by the clock as a print-out. Its first side says all that a kitchen door has to: when to
 * begin, when it is done, what to buy; the picture and a long day's hours follow.
 */
public final class DaySheet {
  private static final String TEMPLATE = "day.ftl";

  /** Minutes that one side of paper shows so large that a block of four has its words. */
  private static final int LONGEST_SIDE = 620;

  private final Wording words;
  private final Function<Product, String> productName;
  private final UnaryOperator<String> ingredient;
  private final StepTexts steps;
  private final Buying buying;

  /**
   * @param productName the name of a product in the sheet's language
   * @param ingredient the sheet's words for an English ingredient of a formula
   * @param steps the words of single steps, in the sheet's language
   */
  public DaySheet(
      Function<Product, String> productName,
      UnaryOperator<String> ingredient,
      Buying buying,
      StepTexts steps) {
    this.words = steps.words();
    this.steps = steps;
    this.productName = productName.andThen(FoodName::brief);
    this.ingredient = ingredient;
    this.buying = buying;
  }

  /** The document of one plan's days, which are of one kitchen. */
  public Sheet of(List<DayPlan> days, PaperSize paper, LocalDate made) {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("household", batches(days.get(0)).get(0).kitchen().household());
    view.put("paper", Map.of("w", paper.width(), "h", paper.height()));
    view.put("days", days.stream().map(this::day).toList());
    List<String> products =
        days.stream()
            .flatMap(d -> batches(d).stream())
            .map(b -> productName.apply(b.product()))
            .distinct()
            .toList();
    Sheet.About about =
        new Sheet.About(words.text("day.title"), String.join(", ", products), products, made);
    return new Sheet(TEMPLATE, view, paper, words, about);
  }

  private static List<Batch> batches(DayPlan day) {
    return day.loads().stream().map(l -> l.load().batch()).distinct().toList();
  }

  private Map<String, Object> day(DayPlan day) {
    DayLanes lanes = new DayLanes(day, steps, productName);
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("date", day.date().toString());
    view.put("start", lanes.dated(day.start()));
    view.put("finish", lanes.dated(day.at(day.finish())));
    view.put(
        "finishRange",
        List.of(
            lanes.dated(day.at(day.finishRange().min())),
            lanes.dated(day.at(day.finishRange().max()))));
    view.put("ahead", ahead(day));
    view.put("foods", foods(day));
    view.put("jars", day.jars());
    view.put("loads", loads(day, lanes));
    view.put("lanes", lanes.heads());
    view.put("sides", lanes.sides(LONGEST_SIDE));
    view.put("tasks", lanes.table());
    view.put(
        "gather",
        new DayGather(batches(day), buying, words, productName, ingredient)
            .items().stream().map(DayGather.Item::view).toList());
    view.put("notices", new NoticeWords(words).of(day));
    return view;
  }

  private List<Map<String, Object>> ahead(DayPlan day) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (AheadWords.Row row : new AheadWords(steps).of(day)) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("when", row.when());
      one.put("food", row.letter());
      one.put("what", runs(row.what()));
      one.put("caution", runs(row.caution()));
      all.add(one);
    }
    return all;
  }

  private static List<Map<String, Object>> runs(Line line) {
    return line.runs().stream()
        .map(r -> Map.<String, Object>of("text", r.text(), "amount", r.amount()))
        .toList();
  }

  private List<Map<String, Object>> foods(DayPlan day) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (Batch batch : batches(day)) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("letter", String.valueOf(batch.lot().letter()));
      one.put("product", productName.apply(batch.product()));
      all.add(one);
    }
    return all;
  }

  private List<Map<String, Object>> loads(DayPlan day, DayLanes lanes) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (int i = 0; i < day.loads().size(); i++) {
      PlannedLoad load = day.loads().get(i);
      Batch batch = load.load().batch();
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("name", lanes.name(i));
      one.put("first", load.load().number() == 1);
      one.put("product", productName.apply(batch.product()));
      one.put("pack", words.text("pack." + batch.pack()));
      one.put(
          "jars", load.load().jars() + " " + words.count("jar." + batch.jar(), load.load().jars()));
      one.put("minutes", batch.process().minutes());
      one.put("canner", batch.canner().name());
      one.put("fill", lanes.start(i, TaskKind.FILL));
      one.put("timer", lanes.start(i, TaskKind.PROCESS));
      one.put("out", lanes.dated(load.out()));
      one.put("testFrom", lanes.seals(load));
      all.add(one);
    }
    return all;
  }
}
