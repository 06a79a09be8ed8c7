package jarwright.record;

import jarwright.page.PaperSize;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import jarwright.pantry.Advice;
import jarwright.pantry.Jar;
import jarwright.pantry.LotFacts;
import jarwright.pantry.Pantry;
import jarwright.pantry.VerdictRule;
import jarwright.quantity.Units;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/** The record pages of a household, as of one moment. */
public final class RecordPages {
  private static final String LOT = "record.html.ftl";
  private static final String JAR = "jar.html.ftl";
  private static final String INDEX = "index.html.ftl";

  private final Wording words;
  private final Manner manner;
  private final OffsetDateTime now;
  private final Headlines headlines;
  private final LotView lots;

  /**
   * How a household's pages are written.
   *
   * @param household its name; may be empty
   * @param productName the name of a lot's product in the pages' language
   * @param rules a rule for verdicts, by the name that the ledger remembers
   */
  public record Manner(
      String household,
      Units units,
      Function<LotFacts, String> productName,
      Function<String, Optional<VerdictRule>> rules) {}

  public RecordPages(Wording words, Manner manner, OffsetDateTime now) {
    this.words = words;
    this.manner = manner;
    this.now = now;
    this.headlines = new Headlines(words, now);
    this.lots = new LotView(words, manner.productName());
  }

  /** The page of a lot: its jars by what is to be said of them, and how it was made. */
  public Sheet lot(LotRecord record, Links links) {
    String title = words.text("record.title", Map.of("lot", record.lot().code().toString()));
    Map<String, Object> view = lotView(record, title, links);
    Predicate<Jar> all = jar -> true;
    List<JarGroup> groups = JarGroup.of(record.lot(), all, headlines, Jar::shelf);
    view.put("jars", record.lot().jars().size());
    view.put("groups", groups.stream().map(g -> group(g, links)).toList());
    view.put("loads", new LoadLines(words, manner.units()).of(record.lot()));
    view.put("history", new HistoryLines(words).of(record));
    return sheet(LOT, view, title);
  }

  /** The page of a jar. */
  public Sheet jar(LotRecord record, Jar jar, Links links) {
    String title =
        words.text(
            "record.jar-title",
            Map.of("product", lots.product(record.lot()), "jar", jar.id().toString()));
    Map<String, Object> view = lotView(record, title, links);
    Reasons reasons = new Reasons(words, manner.rules());
    view.put("id", jar.id().toString());
    view.put("useBy", jar.useBy().map(LocalDate::toString).orElse(""));
    view.put("lotHref", links.lot(record.lot().code()));
    view.put("headline", headlines.of(jar).view());
    view.put("reasons", reasons.of(Advice.of(jar, now)).stream().map(Reasons.Told::view).toList());
    view.put("shelf", jar.shelf());
    view.put("outcome", reasons.outcome(jar));
    view.put("loads", load(record, jar));
    view.put("history", new HistoryLines(words).of(record, jar.id().number()));
    return sheet(JAR, view, title);
  }

  /** The list of all jars and lots. */
  public Sheet index(Pantry pantry, Links links) {
    String title = words.text("record.index");
    IndexView index = new IndexView(pantry, headlines, words, lots, links);
    Map<String, Object> view = common(title);
    view.put("urgent", index.urgent());
    view.put("places", index.places());
    view.put("months", index.months());
    view.put("lots", index.lots(pantry));
    return sheet(INDEX, view, title);
  }

  private Map<String, Object> lotView(LotRecord record, String title, Links links) {
    Map<String, Object> view = common(title);
    view.putAll(lots.facts(record.lot()));
    view.put("indexHref", links.index());
    view.put("facts", ProcessFacts.of(record, words, manner.units()));
    return view;
  }

  private Map<String, Object> common(String title) {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("title", title);
    view.put("household", manner.household());
    view.put("asOf", now.toLocalDate().toString());
    return view;
  }

  private static Map<String, Object> group(JarGroup group, Links links) {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("headline", group.headline().view());
    view.put("place", group.place());
    view.put("numbers", group.numbers(links));
    return view;
  }

  /** The one load that the jar was in; none before that is known. */
  private List<Map<String, Object>> load(LotRecord record, Jar jar) {
    LoadLines lines = new LoadLines(words, manner.units());
    return jar.outcome().map(o -> List.of(lines.load(record.lot(), o.load()))).orElse(List.of());
  }

  private Sheet sheet(String template, Map<String, Object> view, String title) {
    return new Sheet(
        template,
        view,
        PaperSize.A4,
        words,
        new Sheet.About(title, "", List.of(), now.toLocalDate()));
  }
}
