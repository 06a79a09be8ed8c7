package jarwright.files;

import jarwright.ask.FoodSearch;
import jarwright.ask.Saying;
import jarwright.page.Language;
import jarwright.plan.Cover;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.AcidKind;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.Product;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** Reads names.csv: what households call foods, jars, methods and packs, in every language. */
public final class SayingRows {
  static final String FILE = "names.csv";
  static final List<String> COLUMNS = List.of("sense", "means", "language", "names", "source");
  private static final List<String> TIMES = List.of("minute", "hour");
  private static final List<String> ALTITUDES = List.of("ft", "m");

  private SayingRows() {}

  /**
   * The search over everything that the program knows by a name.
   *
   * @throws Refused with every fault of the tables
   */
  public static FoodSearch search(ProcessTables tables) throws IOException, Refused {
    return new FoodSearch(tables.products(), read(tables.products()), UntestedRows.read());
  }

  /** Every name, those of the products in other languages than the tables' among them. */
  public static List<Saying> read(List<Product> products) throws IOException, Refused {
    List<Saying> sayings = new ArrayList<>();
    for (String language : Language.tags()) {
      NameTables.products(language)
          .forEach(
              (id, name) ->
                  sayings.add(new Saying(Saying.Sense.NAME, List.of(id), language, name)));
    }
    sayings.addAll(read(ProcessTables.resource(FILE), products));
    return sayings;
  }

  static List<Saying> read(String text, List<Product> products) throws Refused {
    Problems faults = new Problems();
    Set<String> seen = new HashSet<>();
    Set<String> ids = new HashSet<>();
    products.forEach(p -> ids.add(p.id()));
    TableText table = new TableText(FILE, text, COLUMNS, faults);
    List<Saying> sayings = new ArrayList<>();
    table.read(row -> sayings.addAll(row(row, ids)));
    for (TableText.Row row : table.rows()) {
      for (String name : row.get("names").split("\\|", -1)) {
        if (!seen.add(row.get("language") + " " + name)) {
          table.fault(row, "\"" + name + "\" twice", "every name once in a language");
        }
      }
    }
    faults.refuse();
    return sayings;
  }

  private static List<Saying> row(TableText.Row row, Set<String> products) {
    Saying.Sense sense =
        Stream.of(Saying.Sense.values())
            .filter(s -> s.name().toLowerCase(Locale.ROOT).equals(row.get("sense")))
            .findFirst()
            .orElseThrow(
                () -> new IllegalArgumentException("\"" + row.get("sense") + "\" is no sense"));
    List<String> means =
        row.get("means").isEmpty() ? List.of() : List.of(row.get("means").split("\\|", -1));
    for (String one : means) {
      if (!isKnown(sense, one, products)) {
        throw new IllegalArgumentException("\"" + one + "\" is no " + row.get("sense"));
      }
    }
    if (!Language.tags().contains(row.get("language")) || row.get("source").isBlank()) {
      throw new IllegalArgumentException("a name needs its language and its source");
    }
    return Stream.of(row.get("names").split("\\|", -1))
        .map(name -> new Saying(sense, means, row.get("language"), name))
        .toList();
  }

  private static boolean isKnown(Saying.Sense sense, String meaning, Set<String> products) {
    return switch (sense) {
      case NAME, FOOD -> products.contains(meaning);
      case JAR -> JarSize.named(meaning).isPresent();
      case METHOD -> Method.named(meaning).isPresent();
      case PACK -> Pack.choices().contains(meaning);
      case ACID -> AcidKind.named(meaning).isPresent();
      case COVER -> Cover.named(meaning).isPresent();
      case TIME -> TIMES.contains(meaning);
      case ALTITUDE -> ALTITUDES.contains(meaning);
      case NUMBER, NOT, STOP, FILLER -> false;
    };
  }
}
