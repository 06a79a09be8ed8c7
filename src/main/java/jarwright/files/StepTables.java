package jarwright.files;

import jarwright.page.Language;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.Pack;
import jarwright.process.PreparationStep;
import jarwright.process.Product;
import jarwright.process.Source;
import jarwright.quantity.MeasuredText;
import jarwright.quantity.TimeSpan;
import java.io.IOException;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads the preparation steps of products, in the language of the print-outs. */
public final class StepTables {
  static final List<String> TRANSLATED =
      List.of("product_id", "pack", "stage", "kind", "text", "caution");

  /** Waits and ways stand in the English table alone; the others follow it row by row. */
  static final List<String> COLUMNS =
      Stream.concat(TRANSLATED.stream(), Stream.of("wait", "wait_source", "way")).toList();

  private static final String ANY = "any";
  private static final String WAIT = "wait";
  private static final String WAIT_IN_TEXT = "{" + WAIT + "}";
  private static final List<String> NAMES = List.of("liquid", "gel");

  private StepTables() {}

  /**
   * A product's steps in working order, for all its packs.
   *
   * @param language {@code en} or {@code es}
   * @throws Refused with every fault found in the product's rows
   * @throws IOException where the program has no table of steps in that language
   */
  public static List<PreparationStep> read(Product product, String language)
      throws IOException, Refused {
    Problems faults = new Problems();
    TableText table =
        table(file(product.guide(), Language.ENGLISH.tag()), COLUMNS, product, faults);
    List<PreparationStep> steps = table.read(StepTables::step);
    if (!Language.isOfTables(language)) {
      String file = file(product.guide(), language);
      steps = translated(steps, table(file, TRANSLATED, product, faults), faults);
    }
    faults.refuse();
    return steps;
  }

  private static TableText table(
      String file, List<String> columns, Product product, Problems faults) throws IOException {
    return new TableText(
        file, ProcessTables.resource(file), columns, faults, id -> id.equals(product.id()));
  }

  /** The same steps in other words, row by row. */
  private static List<PreparationStep> translated(
      List<PreparationStep> steps, TableText table, Problems faults) {
    Iterator<PreparationStep> english = steps.iterator();
    List<PreparationStep> translated =
        table.read(
            row -> {
              if (!english.hasNext()) {
                throw new IllegalArgumentException("the English table has no such row");
              }
              PreparationStep step = english.next();
              return words(row, step.waiting(), step.way());
            });
    if (english.hasNext() && faults.isEmpty()) {
      faults.add(
          Place.wholeFile(table.file()),
          "the program's own table is faulty: rows of " + steps.get(0).productId() + " are missing",
          "");
    }
    return translated;
  }

  /** The table of a chapter of the guide. */
  static String file(int guide, String language) {
    return "steps-" + guide + (Language.isOfTables(language) ? "" : "_" + language) + ".csv";
  }

  /** Every step of a table, for those who want to look through all. */
  static List<PreparationStep> readAll(String file, String text) throws Refused {
    Problems faults = new Problems();
    List<PreparationStep> steps = new TableText(file, text, COLUMNS, faults).read(StepTables::step);
    faults.refuse();
    return steps;
  }

  private static PreparationStep step(TableText.Row row) {
    return words(row, wait(row), Optional.of(row.get("way")).filter(way -> !way.isEmpty()));
  }

  private static PreparationStep words(
      TableText.Row row, Optional<PreparationStep.Wait> wait, Optional<String> way) {
    PreparationStep.Kind kind = word(row, "kind", PreparationStep.Kind.values());
    if (row.get("text").isBlank() != (kind == PreparationStep.Kind.BUBBLES)) {
      throw new IllegalArgumentException("every step has its text, and only bubbles have none");
    }
    if (kind == PreparationStep.Kind.WAIT && wait.isEmpty()) {
      throw new IllegalArgumentException("a wait has its length");
    }
    return new PreparationStep(
        row.get("product_id"),
        row.get("pack").equals(ANY)
            ? Optional.empty()
            : Optional.of(row.word("pack", Pack::named, Pack.choices())),
        word(row, "stage", PreparationStep.Stage.values()),
        kind,
        text(row.get("text"), wait),
        Optional.of(row.get("caution")).filter(c -> !c.isEmpty()).map(c -> text(c, wait)),
        wait,
        way);
  }

  private static Optional<PreparationStep.Wait> wait(TableText.Row row) {
    String cell = row.get(WAIT);
    if (cell.isEmpty() != row.get("wait_source").isEmpty()) {
      throw new IllegalArgumentException("a wait has its length and its source");
    }
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    List<TimeSpan> spans = MeasuredText.parse("{" + cell + "}").times();
    if (spans.size() != 1) {
      throw new IllegalArgumentException("\"" + cell + "\" is no stretch of time");
    }
    return Optional.of(new PreparationStep.Wait(spans.get(0), new Source(row.get("wait_source"))));
  }

  /** A text prints the length of its step's wait, which stands in its own column. */
  private static MeasuredText text(String cell, Optional<PreparationStep.Wait> wait) {
    return text(wait.map(w -> cell.replace(WAIT_IN_TEXT, "{" + w.span() + "}")).orElse(cell));
  }

  private static MeasuredText text(String cell) {
    MeasuredText text = MeasuredText.parse(cell);
    if (!NAMES.containsAll(text.names())) {
      throw new IllegalArgumentException(text.names() + " are not all among " + NAMES);
    }
    return text;
  }

  private static <E extends Enum<E>> E word(TableText.Row row, String column, E[] values) {
    return row.word(
        column,
        cell -> Arrays.stream(values).filter(v -> id(v).equals(cell)).findFirst(),
        Arrays.stream(values).map(StepTables::id).toList());
  }

  private static String id(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
