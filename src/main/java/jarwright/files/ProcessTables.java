package jarwright.files;

import jarwright.plan.Plan;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.AcidRule;
import jarwright.process.Formula;
import jarwright.process.ProcessBook;
import jarwright.process.Product;
import jarwright.process.Syrup;
import jarwright.process.SyrupRow;
import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Reads the program's own tables into the process book, checked, or not at all. The tests read them
 * whole, so that a run of the program may read only what its plan needs.
 */
public final class ProcessTables {
  static final String TIMES = "process-times.csv";
  static final String PRODUCTS = "products.csv";
  static final String RECIPES = "recipes.csv";
  static final String SYRUPS = "syrups.csv";
  private static final String FOLDER = "/jarwright/process/";
  private static final String FORMULA_ELSEWHERE = "formula comes with the pectin package";

  private final Map<String, String> texts;
  private final Map<Optional<Set<String>>, ProcessBook> read = new HashMap<>();
  private List<Product> products = List.of();

  private ProcessTables(Map<String, String> texts) {
    this.texts = texts;
  }

  /**
   * The tables that are part of the program.
   *
   * @throws IOException where the program's own file is damaged
   */
  public static ProcessTables ofProgram() throws IOException {
    Map<String, String> texts = new TreeMap<>();
    for (String file : List.of(TIMES, PRODUCTS, RECIPES, SYRUPS)) {
      texts.put(file, resource(file));
    }
    return new ProcessTables(texts);
  }

  /** The given tables, by file name. */
  static ProcessTables of(Map<String, String> texts) {
    return new ProcessTables(texts);
  }

  /**
   * The book of all products.
   *
   * @throws Refused with every fault found in the tables, worded as the program's own
   */
  public ProcessBook book() throws Refused {
    return cached(Optional.empty());
  }

  /**
   * The book of the products of a plan, for which a small part of the tables is read.
   *
   * @throws Refused with every fault found in that part
   */
  public ProcessBook bookFor(Plan plan) throws Refused {
    return bookOf(plan.batches().stream().map(b -> b.product().id()).collect(Collectors.toSet()));
  }

  /** The book of the named products; a name that is no product is left out. */
  public ProcessBook bookOf(Set<String> products) throws Refused {
    return cached(Optional.of(products));
  }

  /**
   * Every product in the guide's order, for which the times need not be read.
   *
   * @throws Refused with every fault found in the table of products
   */
  public List<Product> products() throws Refused {
    if (products.isEmpty()) {
      products = new Reading(Optional.empty()).products();
    }
    return products;
  }

  private ProcessBook cached(Optional<Set<String>> products) throws Refused {
    ProcessBook book = read.get(products);
    if (book == null) {
      book = new Reading(products).book();
      read.put(products, book);
    }
    return book;
  }

  static String resource(String file) throws IOException {
    return OwnText.of(FOLDER + file);
  }

  /** One reading of the products that are named, or of all. */
  private final class Reading {
    private final Optional<Set<String>> wanted;
    private final Problems faults = new Problems();

    private Reading(Optional<Set<String>> wanted) {
      this.wanted = wanted;
    }

    private List<Product> products() throws Refused {
      TableText table = table(PRODUCTS, ProductRows.COLUMNS);
      List<Product> read = List.copyOf(table.read(ProductRows::product));
      checkIds(table);
      faults.refuse();
      return read;
    }

    private ProcessBook book() throws Refused {
      TableText productTable = table(PRODUCTS, ProductRows.COLUMNS);
      List<Product> products = productTable.read(ProductRows::product);
      TableText timesTable = table(TIMES, ProcessRows.COLUMNS);
      List<ProcessChecks.Read> times =
          timesTable.read(r -> new ProcessChecks.Read(r, ProcessRows.row(r)));
      new ProcessChecks(timesTable).check(times);
      TableText recipeTable = table(RECIPES, FormulaRows.COLUMNS);
      List<Formula> formulas = FormulaRows.formulas(recipeTable);
      List<SyrupRow> syrups = syrups();

      Set<String> ids = checkIds(productTable);
      checkKnown(timesTable, ids);
      checkKnown(recipeTable, ids);
      checkComplete(productTable, products, times, formulas);
      faults.refuse();
      return new ProcessBook(
          products, times.stream().map(ProcessChecks.Read::row).toList(), formulas, syrups);
    }

    private TableText table(String file, List<String> columns) {
      return new TableText(
          file,
          texts.get(file),
          columns,
          faults,
          first -> file.equals(SYRUPS) || wanted.map(w -> w.contains(first)).orElse(true));
    }

    private List<SyrupRow> syrups() {
      TableText table = table(SYRUPS, SyrupRows.COLUMNS);
      List<SyrupRow> syrups = table.read(SyrupRows::syrup);
      Set<String> loads = new HashSet<>();
      for (TableText.Row row : table.rows()) {
        if (!loads.add(row.get("syrup") + " " + row.get("load"))) {
          table.fault(row, "the same load twice", "one row for each syrup and load");
        }
      }
      for (TableText.Row row : table.rows()) {
        if (loads.size() != Syrup.values().length * 2) {
          table.fault(row, loads.size() + " loads in all", "9 pints and 7 quarts of every syrup");
          break;
        }
      }
      return syrups;
    }
  }

  private static Set<String> checkIds(TableText table) {
    Set<String> ids = new HashSet<>();
    for (TableText.Row row : table.rows()) {
      if (!ids.add(row.get("product_id"))) {
        table.fault(row, "the same product twice", "one row for each product_id");
      }
    }
    return ids;
  }

  private static void checkKnown(TableText table, Set<String> ids) {
    for (TableText.Row row : table.rows()) {
      if (!ids.contains(row.get("product_id"))) {
        table.fault(
            row, "a product that " + PRODUCTS + " does not have", "a product_id from there");
      }
    }
  }

  private static void checkComplete(
      TableText table,
      List<Product> products,
      List<ProcessChecks.Read> times,
      List<Formula> formulas) {
    Map<String, Product> byId =
        products.stream().collect(Collectors.toMap(Product::id, p -> p, (a, b) -> a));
    Set<String> timed = times.stream().map(t -> t.row().productId()).collect(Collectors.toSet());
    Set<String> composed = formulas.stream().map(Formula::productId).collect(Collectors.toSet());
    for (TableText.Row row : table.rows()) {
      Product product = byId.get(row.get("product_id"));
      if (product == null) {
        continue;
      }
      if (!timed.contains(product.id())) {
        table.fault(row, "a product that " + TIMES + " does not have", "one row there or more");
      }
      if (needsFormula(product) && !composed.contains(product.id())) {
        table.fault(row, "its formula is not in " + RECIPES, "the rows of the formula there");
      }
    }
  }

  private static boolean needsFormula(Product product) {
    boolean inFormula = product.acid() instanceof AcidRule.InFormula || product.salt().isFixed();
    return inFormula && !product.note().contains(FORMULA_ELSEWHERE);
  }
}
