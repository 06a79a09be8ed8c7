package jarwright.files;

import jarwright.page.Language;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the names of products and ingredients in another language than the guide's English. */
public final class NameTables {
  private NameTables() {}

  /**
   * Product names by id; empty for English, which the products carry themselves.
   *
   * @throws Refused with every fault of the table
   */
  public static Map<String, String> products(String language) throws IOException, Refused {
    return read("products_", language, List.of("product_id", "name"));
  }

  /**
   * Words of formulas, ingredients and remarks alike, by their English; empty for English.
   *
   * @throws Refused with every fault of the table
   */
  public static Map<String, String> ingredients(String language) throws IOException, Refused {
    return read("ingredients_", language, List.of(Language.ENGLISH.tag(), language));
  }

  private static Map<String, String> read(String start, String language, List<String> columns)
      throws IOException, Refused {
    if (Language.isOfTables(language)) {
      return Map.of();
    }
    String file = start + language + ".csv";
    Problems faults = new Problems();
    TableText table = new TableText(file, ProcessTables.resource(file), columns, faults);
    Map<String, String> names = new LinkedHashMap<>();
    for (TableText.Row row : table.rows()) {
      String name = row.get(columns.get(1));
      if (name.isBlank() || names.put(row.get(columns.get(0)), name) != null) {
        table.fault(row, "an empty name, or the same thing twice", "one name each");
      }
    }
    faults.refuse();
    return names;
  }
}
