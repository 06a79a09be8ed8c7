package jarwright.record;

import jarwright.batch.Batch;
import jarwright.page.PaperSize;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import jarwright.process.Product;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** Record pages of batches that are planned: what will be done, nothing yet of what was. */
public final class PlannedPages {
  private static final String RECORD = "record.html.ftl";
  private static final String INDEX = "index.html.ftl";

  private final Wording words;
  private final Function<Product, String> productName;

  /**
   * @param productName the name of a product in the pages' language
   */
  public PlannedPages(Wording words, Function<Product, String> productName) {
    this.words = words;
    this.productName = productName;
  }

  /**
   * The page of one batch.
   *
   * @param loads jars in each canner load
   */
  public Sheet page(Batch batch, List<Integer> loads) {
    Map<String, Object> view = new LinkedHashMap<>();
    String title = words.text("record.title", Map.of("lot", batch.lot().toString()));
    view.put("title", title);
    view.put("household", batch.kitchen().household());
    view.put("lot", batch.lot().toString());
    view.putAll(what(batch));
    view.put("lids", batch.plan().notes().lids());
    view.put("note", batch.plan().notes().note());
    view.put("from", batch.plan().notes().from());
    view.put("verdict", verdict());
    view.put("facts", new ProcessFacts(batch, words).lines());
    view.put("loads", loads(loads));
    view.put("list", jars(batch));
    return sheet(RECORD, view, title, batch.plan().date());
  }

  /** The list of the batches, in the order given. */
  public Sheet index(List<Batch> batches) {
    Map<String, Object> view = new LinkedHashMap<>();
    String title = words.text("record.index");
    view.put("title", title);
    view.put("household", batches.get(0).kitchen().household());
    List<Object> lots = new ArrayList<>();
    for (Batch batch : batches) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("lot", batch.lot().toString());
      one.put("href", href(batch));
      one.putAll(what(batch));
      lots.add(one);
    }
    view.put("lots", lots);
    return sheet(INDEX, view, title, batches.get(0).plan().date());
  }

  /** The file name of a batch's page. */
  public static String href(Batch batch) {
    return batch.lot() + ".html";
  }

  private Map<String, Object> what(Batch batch) {
    Map<String, Object> what = new LinkedHashMap<>();
    what.put("product", productName.apply(batch.product()));
    what.put("pack", words.text("pack." + batch.pack()));
    what.put("jar", words.count("jar." + batch.jar(), 1));
    what.put("jars", batch.jars());
    what.put("packed", batch.plan().date().toString());
    what.put("useBy", batch.useBy().toString());
    what.put("shelf", batch.plan().notes().shelf());
    return what;
  }

  private Map<String, Object> verdict() {
    Map<String, Object> verdict = new LinkedHashMap<>();
    verdict.put("words", words.text("record.verdict.planned"));
    verdict.put("detail", words.text("record.verdict.planned-detail"));
    verdict.put("stop", false);
    return verdict;
  }

  private List<Map<String, Object>> loads(List<Integer> loads) {
    List<Map<String, Object>> lines = new ArrayList<>();
    for (int i = 0; i < loads.size(); i++) {
      lines.add(
          ProcessFacts.line(
              words.text("record.load", Map.of("n", i + 1)),
              words.count("record.jars", loads.get(i))));
    }
    return lines;
  }

  private List<Map<String, Object>> jars(Batch batch) {
    List<Map<String, Object>> jars = new ArrayList<>();
    for (int number = 1; number <= batch.jars(); number++) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("number", String.format(Locale.ROOT, "%02d", number));
      one.put("id", batch.lot().jar(number).toString());
      one.put("state", words.text("record.state.planned"));
      jars.add(one);
    }
    return jars;
  }

  private Sheet sheet(String template, Map<String, Object> view, String title, LocalDate made) {
    return new Sheet(
        template, view, PaperSize.A4, words, new Sheet.About(title, "", List.of(), made));
  }
}
