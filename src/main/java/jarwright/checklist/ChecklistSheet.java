package jarwright.checklist;

import jarwright.page.PaperSize;
import jarwright.page.Sheet;
import jarwright.page.Wording;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All checklists of a kit as one document; each begins on a new sheet side. */
public final class ChecklistSheet {
  private static final String TEMPLATE = "checklist.ftl";

  private ChecklistSheet() {}

  /**
   * The document.
   *
   * @param batches views of one batch each, from {@link BatchView}
   * @param made the day that the document carries inside, from the plan
   * @param large whether the type is for eyes that need it larger
   */
  public static Sheet of(
      List<Map<String, Object>> batches,
      PaperSize paper,
      Wording words,
      LocalDate made,
      boolean large) {
    Map<String, Object> view = new LinkedHashMap<>();
    view.put("batches", batches);
    view.put("large", large);
    view.put("paper", Map.of("w", paper.width(), "h", paper.height()));
    List<String> products =
        batches.stream().map(b -> (String) b.get("product")).distinct().toList();
    Sheet.About about =
        new Sheet.About(words.text("checklist.title"), String.join(", ", products), products, made);
    return new Sheet(TEMPLATE, view, paper, words, about);
  }
}
