package jarwright.files;

import jarwright.page.Language;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.Pack;
import jarwright.process.PreparationStep;
import jarwright.process.Product;
import jarwright.quantity.MeasuredText;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads the preparation steps of products, in the language of the print-outs. */
public final class StepTables {
  static final List<String> COLUMNS =
      List.of("product_id", "pack", "stage", "kind", "text", "caution");
  private static final String ANY = "any";
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
    String file = file(product.guide(), language);
    Problems faults = new Problems();
    TableText table =
        new TableText(
            file, ProcessTables.resource(file), COLUMNS, faults, id -> id.equals(product.id()));
    List<PreparationStep> steps = table.read(StepTables::step);
    faults.refuse();
    return steps;
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
    PreparationStep.Kind kind = word(row, "kind", PreparationStep.Kind.values());
    if (row.get("text").isBlank() != (kind == PreparationStep.Kind.BUBBLES)) {
      throw new IllegalArgumentException("every step has its text, and only bubbles have none");
    }
    return new PreparationStep(
        row.get("product_id"),
        row.get("pack").equals(ANY)
            ? Optional.empty()
            : Optional.of(row.word("pack", Pack::named, Pack.choices())),
        word(row, "stage", PreparationStep.Stage.values()),
        kind,
        text(row.get("text")),
        Optional.of(row.get("caution")).filter(c -> !c.isEmpty()).map(StepTables::text));
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
