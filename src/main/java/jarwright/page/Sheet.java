package jarwright.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One print-out before it is printed: which template, what it shows, on which paper, in whose
 * words.
 *
 * @param template the template's file name, as {@code labels.ftl}; a name that ends in {@code
 *     .html.ftl} gives a web page, any other a PDF
 * @param view what the template may show: text, numbers, yes/no, lists and maps of these
 * @param paper the paper of a PDF
 * @param words the words, which also name the document's language
 * @param about title and other facts about the document
 */
public record Sheet(
    String template, Map<String, Object> view, PaperSize paper, Wording words, About about) {

  /**
   * Facts about a document that a reader program shows.
   *
   * @param title the title in the window
   * @param subject one line what it is about; may be empty
   * @param keywords words to find it by
   * @param created the day it is made for; taken from the plan, since the same plan must give the
   *     same bytes
   */
  public record About(String title, String subject, List<String> keywords, LocalDate created) {

    /**
     * Checks the title and copies the keywords.
     *
     * @throws IllegalArgumentException if the title is blank
     */
    public About {
      keywords = List.copyOf(keywords);
      if (title.isBlank()) {
        throw new IllegalArgumentException("a sheet needs a title");
      }
    }
  }

  /**
   * Copies the view.
   *
   * @throws IllegalArgumentException naming the value that a template could not show
   */
  public Sheet {
    view = copy("view", view);
  }

  /** Whether this sheet is a web page rather than a PDF. */
  public boolean isHtml() {
    return template.endsWith(".html.ftl");
  }

  static Map<String, Object> copy(String path, Map<?, ?> map) {
    Map<String, Object> copy = new LinkedHashMap<>();
    map.forEach(
        (key, value) -> {
          String inner = path + "." + key;
          if (!(key instanceof String name)) {
            throw new IllegalArgumentException(inner + ": a key must be text");
          }
          copy.put(name, value(inner, value));
        });
    return Collections.unmodifiableMap(copy);
  }

  private static Object value(String path, Object value) {
    if (value instanceof Map<?, ?> map) {
      return copy(path, map);
    }
    if (value instanceof Series series) {
      return series.checked(path);
    }
    if (value instanceof List<?> list) {
      List<Object> copy = new ArrayList<>(list.size());
      for (int i = 0; i < list.size(); i++) {
        copy.add(value(path + "[" + i + "]", list.get(i)));
      }
      return Collections.unmodifiableList(copy);
    }
    if (value instanceof String
        || value instanceof Boolean
        || value instanceof Integer
        || value instanceof Long
        || value instanceof Double
        || value instanceof BigDecimal) {
      return value;
    }
    throw new IllegalArgumentException(
        path
            + ": a template shows text, numbers, yes/no, lists and maps, not "
            + (value == null ? "nothing" : value.getClass().getName()));
  }
}
