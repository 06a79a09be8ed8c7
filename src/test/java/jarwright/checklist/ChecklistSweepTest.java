package jarwright.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.PlannedBatch;
import jarwright.page.PaperSize;
import jarwright.process.AcidKind;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.PrintedRow;
import jarwright.quantity.Fraction;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * Prints a checklist for rows of the process table, reads the paper back with another library and
 * compares it with the text of the tables, which is cut up here once more by plain means. The
 * kitchens stand in turn on the lowest and the highest foot and metre of the row's band, and take
 * the product's acids in turn.
 */
class ChecklistSweepTest {
  private static final int SHEETS_IN_A_PDF = 40;
  private static final int ROWS = 1_571;

  /** Every so many rows are printed; the profile {@code sweep} prints all. */
  private static final int STEP = Integer.getInteger("sweep.sheets", 8);

  /** Far enough up for any open band. */
  private static final int TOP = 12_000;

  /** AIB 539 (2015) Guide 1, p. 1-22: the sizes whose time serves another that is not listed. */
  private static final Map<String, String> SERVES =
      Map.of("pint", "half-pint", "quart", "1-1/2-pint");

  /** AIB 539 (2015) p. 5-12: its canner routine is for quart jars. */
  private static final String SERVES_NO_OTHER = "fish-in-quart-jars";

  private static final Map<String, CSVRecord> PRODUCTS = products();

  private static final String AMOUNT = "((?:[0-9\u2044 ]+ (?:tsp|Tbsp|cups?)(?: \\+ )?)+)";
  private static final Pattern CLOCK =
      Pattern.compile("Start the timer[^0-9]*(?:(\\d+) psi \\d+ kPa )?(\\d+) min ");
  private static final Pattern ACID =
      Pattern.compile("Put ([a-z ]+)(?: \\(5%\\))? into every empty jar first " + AMOUNT);
  private static final Pattern ACID_IN_ALL =
      Pattern.compile("Set out (citric acid|bottled lemon juice|vinegar) " + AMOUNT);
  private static final Pattern HEADSPACE =
      Pattern.compile(
          "Leave headspace (?:actual size: hold this behind the jar )?(.*?) (?:Slide|Wipe)");
  private static final Pattern DEPTH = Pattern.compile("([0-9\u2044 ]*[0-9]) in ");
  private static final Pattern ONE_AMOUNT = Pattern.compile("([0-9/\u2044 ]+) (tsp|Tbsp|cup)");

  /** A row of the table, asked for one of the packs that it serves, in a kitchen of its band. */
  private record Sheet(PrintedRow row, Pack pack, String jar, int turn) {
    PlannedBatch batch() {
      PlannedBatch batch =
          PlannedBatch.of(
                  row.product(),
                  Method.named(row.method()).orElseThrow(),
                  pack,
                  JarSize.named(jar).orElseThrow())
              .at(altitude())
              .pressure(row.pressure());
      return acid().map(a -> batch.acid(AcidKind.named(a.kind()).orElseThrow())).orElse(batch);
    }

    /** A metre is 1250/381 feet; a kitchen between two feet belongs to the higher. */
    String altitude() {
      int highest = row.to() == Integer.MAX_VALUE ? TOP : row.to();
      return switch (turn % 4) {
        case 0 -> row.from() + " ft";
        case 1 -> highest + " ft";
        case 2 -> (row.from() == 0 ? 0 : (row.from() - 1) * 381 / 1_250 + 1) + " m";
        default -> highest * 381 / 1_250 + " m";
      };
    }

    /** One of the acids of the table, in turn. */
    Optional<Dose> acid() {
      List<Dose> doses = doses(row.product(), jar);
      return doses.isEmpty() ? Optional.empty() : Optional.of(doses.get(turn % doses.size()));
    }

    int jars() {
      return jar.equals("quart") || jar.equals("1-1/2-pint") || jar.equals("half-gallon") ? 7 : 9;
    }

    @Override
    public String toString() {
      return row + " " + pack + " " + jar + " at " + altitude();
    }
  }

  /** A dose of an acid in teaspoons. */
  private record Dose(String kind, Fraction teaspoons) {}

  @Test
  void theRowsOfTheTableAreOnPaperAsTheyArePrinted() {
    List<Sheet> sheets = sheets();
    assertEquals((ROWS + STEP - 1) / STEP, sheets.stream().map(Sheet::row).distinct().count());
    for (int from = 0; from < sheets.size(); from += SHEETS_IN_A_PDF) {
      List<Sheet> some = sheets.subList(from, Math.min(from + SHEETS_IN_A_PDF, sheets.size()));
      PlannedBatch[] batches = some.stream().map(Sheet::batch).toArray(PlannedBatch[]::new);
      List<String> papers = papers(Printed.pdf(PaperSize.LETTER, false, batches));
      assertEquals(some.size(), papers.size());
      for (int i = 0; i < some.size(); i++) {
        compare(some.get(i), papers.get(i));
      }
    }
    System.out.println("checklists read back: " + sheets.size());
  }

  /** Every row for each of its packs, and the lowest bands for the jars that they serve. */
  private static List<Sheet> sheets() {
    List<PrintedRow> rows = PrintedRow.all();
    List<PrintedRow> tested = rows.stream().filter(PrintedRow::isTested).toList();
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < tested.size(); i += STEP) {
      PrintedRow row = tested.get(i);
      String served = SERVES.getOrDefault(row.jar(), row.jar());
      boolean listed =
          rows.stream().anyMatch(r -> r.product().equals(row.product()) && r.jar().equals(served));
      for (Pack pack : List.of(Pack.RAW, Pack.HOT)) {
        if (row.isFor(pack.id())) {
          sheets.add(new Sheet(row, pack, row.jar(), sheets.size()));
          if (!listed && row.from() == 0 && !row.product().equals(SERVES_NO_OTHER)) {
            sheets.add(new Sheet(row, pack, served, sheets.size()));
          }
        }
      }
    }
    return sheets;
  }

  /** The words of each batch's sides together. */
  private static List<String> papers(byte[] pdf) {
    List<String> papers = new ArrayList<>();
    for (String side : Printed.sides(pdf)) {
      if (side.contains("Side 1 of ")) {
        papers.add(side);
      } else {
        papers.set(papers.size() - 1, papers.get(papers.size() - 1) + " " + side);
      }
    }
    return papers;
  }

  private static void compare(Sheet sheet, String paper) {
    Matcher clock = CLOCK.matcher(paper);
    assertTrue(clock.find(), () -> sheet + " has no clock: " + paper);
    assertEquals(String.valueOf(sheet.row().minutes()), clock.group(2), sheet::toString);
    assertEquals(
        sheet.row().pressure().map(p -> p.inPsi().toString()).orElse(null),
        clock.group(1),
        sheet::toString);
    assertTrue(paper.contains(band(sheet.row())), () -> sheet + " names no band: " + paper);
    assertEquals(
        !sheet.jar().equals(sheet.row().jar()),
        paper.contains("time is used (AIB 539 Guide 1)."),
        () -> sheet + " served by another size: " + paper);
    assertEquals(sheet.acid(), dose(ACID.matcher(paper)), sheet::toString);
    assertEquals(
        sheet.acid().map(a -> new Dose(a.kind(), a.teaspoons().times(sheet.jars()))),
        dose(ACID_IN_ALL.matcher(paper)),
        () -> sheet + " in all: " + paper);
    Matcher gauge = HEADSPACE.matcher(paper);
    assertTrue(gauge.find(), () -> sheet + " has no headspace: " + paper);
    List<String> depths =
        DEPTH.matcher(gauge.group(1) + " ").results().map(r -> r.group(1).strip()).toList();
    assertEquals(headspace(sheet), depths, sheet::toString);
  }

  private static String band(PrintedRow row) {
    return row.to() == Integer.MAX_VALUE
        ? String.format(Locale.ROOT, "above %,d ft", Math.max(0, row.from() - 1))
        : String.format(Locale.ROOT, "%,d to %,d ft", row.from(), row.to());
  }

  private static Optional<Dose> dose(Matcher acid) {
    if (!acid.find()) {
      return Optional.empty();
    }
    return Optional.of(new Dose(kind(acid.group(1)), teaspoons(acid.group(2))));
  }

  /** {@code 1 cup + 1 1/2 Tbsp} in teaspoons. */
  private static Fraction teaspoons(String amount) {
    Map<String, Integer> size = Map.of("tsp", 1, "Tbsp", 3, "cup", 48);
    Matcher parts = ONE_AMOUNT.matcher(amount);
    Fraction sum = Fraction.ZERO;
    while (parts.find()) {
      sum = sum.plus(number(parts.group(1)).times(size.get(parts.group(2))));
    }
    return sum;
  }

  /** {@code 4}, {@code 1/2} or {@code 1 1/2}. */
  private static Fraction number(String text) {
    Fraction sum = Fraction.ZERO;
    for (String part : text.strip().split(" ")) {
      String[] ends = part.split("[/\u2044]");
      long over = ends.length == 1 ? 1 : Long.parseLong(ends[1]);
      sum = sum.plus(Fraction.of(Long.parseLong(ends[0]), over));
    }
    return sum;
  }

  /**
   * The acids of the table for a jar; where its size is not printed, in proportion to its content.
   */
  private static List<Dose> doses(String id, String jar) {
    CSVRecord product = PRODUCTS.get(id);
    Fraction pints = JarSize.named(jar).orElseThrow().pints();
    Map<String, Fraction> doses = new LinkedHashMap<>();
    if (!jar.equals("quart")) {
      printed(product.get("acid_per_pint"), pints, doses);
    }
    printed(product.get("acid_per_quart"), pints.times(Fraction.of(1, 2)), doses);
    return doses.entrySet().stream().map(d -> new Dose(d.getKey(), d.getValue())).toList();
  }

  private static void printed(String cell, Fraction times, Map<String, Fraction> doses) {
    for (String one : cell.split(" \\| ", -1)) {
      Matcher dose = Pattern.compile("([0-9/]+ (?:tsp|Tbsp)) (.+)").matcher(one);
      if (dose.matches()) {
        doses.putIfAbsent(kind(dose.group(2)), teaspoons(dose.group(1)).times(times));
      }
    }
  }

  /** An acid as plans name it; juice is always bottled. */
  private static String kind(String printed) {
    return switch (printed) {
      case "lemon juice" -> "bottled lemon juice";
      case "vinegar", "vinegar (5%)" -> "vinegar 5%";
      default -> printed;
    };
  }

  private static List<String> headspace(Sheet sheet) {
    String printed = PRODUCTS.get(sheet.row().product()).get("headspace_in");
    if (printed.startsWith("hot:1;raw-pint:1;")) {
      boolean rawQuart = sheet.pack() == Pack.RAW && sheet.row().jar().equals("quart");
      return rawQuart ? List.of(set("1-1/2"), set("1-1/4")) : List.of("1");
    }
    return Stream.of(printed.split(";", -1))
        .map(h -> set(h.substring(h.indexOf(':') + 1)))
        .toList();
  }

  /** {@code 1-1/2} as a typeset fraction reads. */
  private static String set(String fraction) {
    return fraction.replace('-', ' ').replace('/', '\u2044');
  }

  private static Map<String, CSVRecord> products() {
    try (InputStream in =
        ChecklistSweepTest.class.getResourceAsStream("/jarwright/process/products.csv")) {
      Map<String, CSVRecord> products = new LinkedHashMap<>();
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(new InputStreamReader(in, StandardCharsets.UTF_8))
          .forEach(r -> products.put(r.get("product_id"), r));
      return products;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
