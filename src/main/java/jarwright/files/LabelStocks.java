package jarwright.files;

import jarwright.page.LabelStock;
import jarwright.plan.Kitchen;
import jarwright.plan.Paper;
import jarwright.problem.Nearest;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The label stocks there are: the program's own and those that the household has measured. */
public final class LabelStocks {
  /** The household's file of stocks, in its folder. */
  public static final String FILE = "label-stock.yaml";

  private static final String BUILT_IN = "label-sheets.csv";
  private static final Map<Paper, String> USUAL =
      Map.of(Paper.LETTER, "letter-30up", Paper.A4, "a4-21up");

  private final Map<String, LabelStock> byId;

  private LabelStocks(Map<String, LabelStock> byId) {
    this.byId = Collections.unmodifiableMap(byId);
  }

  /**
   * The program's stocks, then the household's, each in the order of its file.
   *
   * @param household its folder; it need not have a {@value #FILE}
   * @throws Refused with every problem in the household's file, or every fault of the program's own
   * @throws IOException where a file cannot be read
   */
  public static LabelStocks read(Path household) throws IOException, Refused {
    Path file = household.resolve(FILE);
    LabelStocks own = builtIn();
    if (!Files.exists(file)) {
      return own;
    }
    Problems problems = new Problems();
    Map<String, LabelStock> all = new LinkedHashMap<>(own.byId);
    LabelStockReader.read(TextFile.read(file), all, problems);
    problems.refuse();
    return new LabelStocks(all);
  }

  /** The program's stocks alone. */
  public static LabelStocks builtIn() throws IOException, Refused {
    try (InputStream in = LabelStock.class.getResourceAsStream(BUILT_IN)) {
      if (in == null) {
        throw new FileNotFoundException("the program's own table " + BUILT_IN + " is missing");
      }
      return builtIn(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  static LabelStocks builtIn(String table) throws Refused {
    Problems faults = new Problems();
    Map<String, LabelStock> byId = new LinkedHashMap<>();
    TableText text = new TableText(BUILT_IN, table, LabelStockRow.COLUMNS, faults);
    for (LabelStock stock : text.read(LabelStockRow::read)) {
      if (byId.put(stock.id(), stock) != null) {
        faults.add(
            Place.wholeFile(BUILT_IN), "the stock " + stock.id() + " stands there twice", "");
      }
    }
    faults.refuse();
    return new LabelStocks(byId);
  }

  /** All of them. */
  public List<LabelStock> all() {
    return List.copyOf(byId.values());
  }

  /**
   * The stock of that id.
   *
   * @throws Refused naming the ids there are
   */
  public LabelStock named(String id) throws Refused {
    LabelStock stock = byId.get(Fields.plain(id));
    if (stock == null) {
      throw new Refused(
          Place.wholeFile("label stock"),
          "there is no stock \"" + Fields.shown(id) + "\"",
          Nearest.remedy(id, byId.keySet()));
    }
    return stock;
  }

  /**
   * The stock that the kitchen names, else the usual one of its paper.
   *
   * @throws Refused where the kitchen names one that there is not
   */
  public LabelStock forKitchen(Kitchen kitchen) throws Refused {
    Optional<String> own = kitchen.labelStock();
    return own.isPresent() ? named(own.get()) : usual(kitchen.paper());
  }

  /** The stock that is used where none is named. */
  public LabelStock usual(Paper paper) throws Refused {
    return named(USUAL.get(paper));
  }
}
