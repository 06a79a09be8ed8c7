package jarwright.files;

import jarwright.day.DayBook;
import jarwright.day.TaskKind;
import jarwright.day.TaskTimes;
import jarwright.problem.Place;
import jarwright.problem.Problems;
import jarwright.problem.Refused;
import jarwright.process.JarSize;
import jarwright.quantity.Fraction;
import jarwright.water.CirclePacking;
import jarwright.water.GuideLoads;
import jarwright.water.JarBook;
import jarwright.water.JarDimensions;
import jarwright.water.Rack;
import jarwright.water.Range;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Reads the program's own figures of jars, canners and hand work, whole and checked. */
public final class DayTables {
  private static final String JARS = "/jarwright/water/jar-dimensions.csv";
  private static final String CIRCLES = "/jarwright/water/circle-packing.csv";
  private static final String LOADS = "/jarwright/water/guide-loads.csv";
  private static final String TIMES = "/jarwright/day/task-times.csv";

  private static final String HEIGHT = "height-mm";
  private static final String DIAMETER = "diameter-mm";
  private static final String EMPTY = "empty-g";
  private static final List<String> MEASURES = List.of(HEIGHT, DIAMETER, EMPTY);

  private final Problems faults = new Problems();

  private DayTables() {}

  /**
   * The figures that are part of the program.
   *
   * @throws Refused with every fault found in them, worded as the program's own
   * @throws IOException where the program's own file is damaged
   */
  public static DayBook read() throws IOException, Refused {
    DayTables tables = new DayTables();
    Optional<JarBook> jars = tables.jars();
    Optional<CirclePacking> packing = tables.packing();
    Optional<GuideLoads> loads = tables.loads();
    Optional<TaskTimes> times = tables.times();
    tables.faults.refuse();
    return new DayBook(
        jars.orElseThrow(), packing.orElseThrow(), loads.orElseThrow(), times.orElseThrow());
  }

  /**
   * What tells how many jars a canner holds, without the rest.
   *
   * @throws Refused with every fault found in it
   */
  static Rack rack() throws IOException, Refused {
    DayTables tables = new DayTables();
    Optional<JarBook> jars = tables.jars();
    Optional<CirclePacking> packing = tables.packing();
    Optional<GuideLoads> loads = tables.loads();
    tables.faults.refuse();
    return new Rack(jars.orElseThrow(), packing.orElseThrow(), loads.orElseThrow());
  }

  private TableText table(String file, String... columns) throws IOException {
    return new TableText(file, OwnText.of(file), List.of(columns), faults);
  }

  private Optional<JarBook> jars() throws IOException {
    TableText table = table(JARS, "jar", "measure", "low", "high", "source");
    record Measure(JarSize jar, String name, Range range) {}
    List<Measure> measures =
        table.read(
            row ->
                new Measure(
                    row.word("jar", JarSize::named, JarSize.ids()),
                    row.word("measure", m -> Optional.of(m).filter(MEASURES::contains), MEASURES),
                    new Range(decimal(row, "low"), decimal(row, "high"))));
    return whole(
        JARS,
        () -> {
          List<JarDimensions> jars = new ArrayList<>();
          for (JarSize jar : JarSize.values()) {
            Function<String, Optional<Range>> of =
                name ->
                    measures.stream()
                        .filter(m -> m.jar() == jar && m.name().equals(name))
                        .map(Measure::range)
                        .findFirst();
            if (measures.stream().anyMatch(m -> m.jar() == jar)) {
              jars.add(
                  new JarDimensions(
                      jar,
                      of.apply(HEIGHT).orElseThrow(() -> missing(jar, HEIGHT)),
                      of.apply(DIAMETER).orElseThrow(() -> missing(jar, DIAMETER)),
                      of.apply(EMPTY)));
            }
          }
          return new JarBook(jars);
        });
  }

  private static IllegalArgumentException missing(JarSize jar, String measure) {
    return new IllegalArgumentException(jar + " has no " + measure);
  }

  private Optional<CirclePacking> packing() throws IOException {
    TableText table = table(CIRCLES, "circles", "ratio", "source");
    List<Double> ratios = new ArrayList<>();
    table.read(
        row -> {
          if (row.number("circles") != ratios.size() + 1) {
            throw new IllegalArgumentException("circles count up from 1");
          }
          return ratios.add(decimal(row, "ratio"));
        });
    return whole(CIRCLES, () -> new CirclePacking(ratios));
  }

  private Optional<GuideLoads> loads() throws IOException {
    TableText table = table(LOADS, "jar", "layer", "layers", "source");
    List<GuideLoads.Load> loads =
        table.read(
            row ->
                new GuideLoads.Load(
                    row.word("jar", JarSize::named, JarSize.ids()),
                    row.number("layer"),
                    row.number("layers")));
    return whole(LOADS, () -> new GuideLoads(loads));
  }

  private Optional<TaskTimes> times() throws IOException {
    TableText table =
        table(
            TIMES,
            "task",
            "of",
            "fixed_low",
            "fixed_high",
            "each_low",
            "each_high",
            "by",
            "hands",
            "pots",
            "makes",
            "pot_from",
            "source");
    List<TaskTimes.Row> rows =
        table.read(
            row ->
                new TaskTimes.Row(
                    word(row, "task", TaskKind.values(), TaskKind::id),
                    row.get("of"),
                    span(row, "fixed"),
                    span(row, "each"),
                    word(row, "by", TaskTimes.Each.values(), DayTables::lower),
                    row.number("hands"),
                    row.number("pots"),
                    word(row, "makes", TaskTimes.Makes.values(), DayTables::lower),
                    Fraction.parse(row.get("pot_from")),
                    false));
    return whole(TIMES, () -> new TaskTimes(rows));
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }

  private static <T> T word(TableText.Row row, String column, T[] all, Function<T, String> id) {
    return row.word(
        column,
        word -> Arrays.stream(all).filter(a -> id.apply(a).equals(word)).findFirst(),
        Arrays.stream(all).map(id).toList());
  }

  private static TaskTimes.Span span(TableText.Row row, String name) {
    return new TaskTimes.Span(
        Fraction.parse(row.get(name + "_low")), Fraction.parse(row.get(name + "_high")));
  }

  private static double decimal(TableText.Row row, String column) {
    String cell = row.get(column);
    if (!cell.matches("\\d{1,4}(\\.\\d{1,6})?")) {
      throw new IllegalArgumentException(column + " \"" + cell + "\" is no number");
    }
    return Double.parseDouble(cell);
  }

  /** What the rows come to together, or a fault of the file. */
  private <T> Optional<T> whole(String file, Supplier<T> maker) {
    if (!faults.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(maker.get());
    } catch (IllegalArgumentException e) {
      faults.add(Place.wholeFile(file), "the program's own table is faulty: " + e.getMessage(), "");
      return Optional.empty();
    }
  }
}
