package jarwright.files;

import jarwright.page.LabelShape;
import jarwright.page.LabelStock;
import jarwright.page.PaperSize;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.quantity.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads one label stock that a household has measured. Every length has its unit. */
final class LabelStockReader {
  private static final String ID = "id";
  private static final String PAPER = "paper";
  private static final String SHEET_WIDTH = "sheet-width";
  private static final String SHEET_HEIGHT = "sheet-height";
  private static final String SHAPE = "shape";
  private static final String COLUMNS = "columns";
  private static final String ROWS = "rows";
  private static final String WIDTH = "label-width";
  private static final String HEIGHT = "label-height";
  private static final String DIAMETER = "diameter";
  private static final String LEFT = "margin-left";
  private static final String TOP = "margin-top";
  private static final String ACROSS = "pitch-across";
  private static final String DOWN = "pitch-down";
  private static final List<String> KEYS =
      List.of(
          ID,
          PAPER,
          SHEET_WIDTH,
          SHEET_HEIGHT,
          SHAPE,
          COLUMNS,
          ROWS,
          WIDTH,
          HEIGHT,
          DIAMETER,
          LEFT,
          TOP,
          ACROSS,
          DOWN);
  private static final String EXAMPLE = "66.7 mm";
  private static final int MOST_STOCKS = 100;
  private static final int MOST_LABELS_IN_A_ROW = 100;
  private static final int LONGEST_ID = 40;
  private static final String ID_FORM = "[a-z0-9][a-z0-9.-]*";

  private final Fields fields;
  private final Problems problems;

  private LabelStockReader(Written.Keys written, Problems problems) {
    this.fields = new Fields(written, "a label stock", KEYS, Map.of(), problems);
    this.problems = problems;
  }

  /**
   * Reads a file that lists stocks.
   *
   * @param all the stocks known so far; gets those of the file
   * @param problems gets everything that is wrong with it
   * @throws Refused where the file as a whole is no list
   */
  static void read(TextFile file, Map<String, LabelStock> all, Problems problems) throws Refused {
    if (file.lines().stream().allMatch(l -> l.isBlank() || l.stripLeading().startsWith("#"))) {
      return;
    }
    Written written = YamlTree.read(file, problems);
    if (!(written instanceof Written.Items list) || list.items().size() > MOST_STOCKS) {
      throw new Refused(
          written.place(),
          "this is no list of at most " + MOST_STOCKS + " label stocks",
          "begin each with - id: at the left margin");
    }
    for (Written item : list.items()) {
      if (item instanceof Written.Keys keys) {
        new LabelStockReader(keys, problems).read(all);
      } else {
        problems.add(item.place(), "a label stock has keys", "write - id: and so on");
      }
    }
  }

  private void read(Map<String, LabelStock> all) {
    Optional<String> id = id(all);
    Optional<PaperSize> paper = paper();
    Optional<LabelShape> shape =
        fields.word(
            SHAPE,
            LabelStockReader::shape,
            Arrays.stream(LabelShape.values()).map(LabelShape::word).toList());
    fields.require(SHAPE, "write rounded-rect, rect, circle or strip");
    boolean round = shape.filter(LabelShape.CIRCLE::equals).isPresent();
    Optional<Double> width = needed(round ? DIAMETER : WIDTH);
    Optional<Double> height = round ? width : needed(HEIGHT);
    superfluous(round ? List.of(WIDTH, HEIGHT) : List.of(DIAMETER), round);
    OptionalInt columns = count(COLUMNS);
    OptionalInt rows = count(ROWS);
    Optional<Double> left = needed(LEFT);
    Optional<Double> top = needed(TOP);
    Optional<Double> across = mm(ACROSS);
    Optional<Double> down = mm(DOWN);
    boolean whole =
        id.isPresent()
            && paper.isPresent()
            && shape.isPresent()
            && width.isPresent()
            && height.isPresent()
            && columns.isPresent()
            && rows.isPresent()
            && left.isPresent()
            && top.isPresent();
    if (!whole) {
      return;
    }
    try {
      LabelStock stock =
          new LabelStock(
              id.get(),
              paper.get(),
              shape.get(),
              columns.getAsInt(),
              rows.getAsInt(),
              width.get(),
              height.get(),
              left.get(),
              top.get(),
              across.orElse(width.get()),
              down.orElse(height.get()));
      all.put(stock.id(), stock);
    } catch (IllegalArgumentException e) {
      problems.add(fields.place(), e.getMessage(), "measure the sheet again");
    }
  }

  private Optional<String> id(Map<String, LabelStock> all) {
    fields.require(ID, "give the stock a name to choose it by, as my-48-round");
    Optional<String> id = fields.plainWord(ID);
    if (id.isEmpty()) {
      return id;
    }
    if (id.get().length() > LONGEST_ID || !id.get().matches(ID_FORM)) {
      fields.problem(
          ID,
          "\"" + Fields.shown(id.get()) + "\" is no plain name",
          "write letters a to z, digits and hyphens, " + LONGEST_ID + " at most");
      return Optional.empty();
    }
    if (all.containsKey(id.get())) {
      fields.problem(ID, "there is already a stock " + id.get(), "choose another name");
      return Optional.empty();
    }
    return id;
  }

  private Optional<PaperSize> paper() {
    List<String> named = PaperSize.NAMED.stream().map(PaperSize::name).toList();
    if (fields.has(PAPER)) {
      superfluous(List.of(SHEET_WIDTH, SHEET_HEIGHT), false);
      return fields.word(PAPER, n -> Optional.of(PaperSize.parse(n)), named);
    }
    if (!fields.has(SHEET_WIDTH) && !fields.has(SHEET_HEIGHT)) {
      fields.require(
          PAPER, "write " + String.join(" or ", named) + ", or sheet-width: and sheet-height:");
      return Optional.empty();
    }
    Optional<Double> width = needed(SHEET_WIDTH);
    Optional<Double> height = needed(SHEET_HEIGHT);
    if (width.isEmpty() || height.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new PaperSize("own", width.get(), height.get()));
    } catch (IllegalArgumentException e) {
      Place where = fields.places().get(SHEET_WIDTH);
      problems.add(where, e.getMessage(), "check number and unit");
      return Optional.empty();
    }
  }

  private void superfluous(List<String> keys, boolean round) {
    for (String key : keys) {
      if (fields.has(key)) {
        fields.problem(
            key,
            "says again, or otherwise, what another key says",
            round ? "a circle has its diameter: alone" : "leave it out");
      }
    }
  }

  private static Optional<LabelShape> shape(String word) {
    return Optional.of(LabelShape.parse(word));
  }

  private OptionalInt count(String key) {
    fields.require(key, "count the labels of one sheet");
    return fields.count(key, 1, MOST_LABELS_IN_A_ROW);
  }

  private Optional<Double> needed(String key) {
    fields.require(key, "measure it and write it with its unit, as " + key + ": " + EXAMPLE);
    return mm(key);
  }

  private Optional<Double> mm(String key) {
    return fields
        .amount(key, Length::parse, EXAMPLE)
        .map(
            l ->
                l.inMillimetres().numerator().doubleValue()
                    / l.inMillimetres().denominator().doubleValue());
  }
}
