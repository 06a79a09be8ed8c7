package jarwright.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.day.PlannedBatch;
import jarwright.page.PaperSize;
import jarwright.process.JarSize;
import jarwright.process.Method;
import jarwright.process.Pack;
import jarwright.process.PrintedRow;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * Prints a checklist for rows of the process table, reads the paper back with another library and
 * compares it with the text of the tables, which is cut up here once more by plain means.
 */
class ChecklistSweepTest {
  private static final int SHEETS_IN_A_PDF = 40;
  private static final int ROWS = 1_571;

  /** Every so many rows are printed; the profile {@code sweep} prints all. */
  private static final int STEP = Integer.getInteger("sweep.sheets", 8);

  private static final Map<String, CSVRecord> PRODUCTS = products();

  private static final Pattern CLOCK =
      Pattern.compile("Start the clock[^0-9]*(?:(\\d+) psi \\d+ kPa )?(\\d+) min ");
  private static final Pattern ACID =
      Pattern.compile(
          "Put ([a-z ]+(?:\\(5 %\\))?) into every empty jar first ([0-9\u2044 ]+ \\w+)");
  private static final Pattern HEADSPACE =
      Pattern.compile("hold it behind the jar (.*?) (?:Slide|Wipe)");
  private static final Pattern DEPTH = Pattern.compile("([0-9\u2044 ]*[0-9]) in ");

  /** A row of the table, asked for one of the packs that it serves. */
  private record Sheet(PrintedRow row, Pack pack) {
    PlannedBatch batch() {
      return PlannedBatch.of(
              row.product(),
              Method.named(row.method()).orElseThrow(),
              pack,
              JarSize.named(row.jar()).orElseThrow())
          .at((row.to() == Integer.MAX_VALUE ? row.from() + 500 : row.to()) + " ft")
          .pressure(row.pressure());
    }

    @Override
    public String toString() {
      return row + " " + pack;
    }
  }

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
  }

  private static List<Sheet> sheets() {
    List<PrintedRow> tested = PrintedRow.all().stream().filter(PrintedRow::isTested).toList();
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < tested.size(); i += STEP) {
      PrintedRow row = tested.get(i);
      Stream.of(Pack.RAW, Pack.HOT)
          .filter(p -> row.isFor(p.id()))
          .forEach(p -> sheets.add(new Sheet(row, p)));
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
    assertEquals(acid(sheet), onPaper(ACID.matcher(paper)), sheet::toString);
    Matcher gauge = HEADSPACE.matcher(paper);
    assertTrue(gauge.find(), () -> sheet + " has no headspace: " + paper);
    List<String> depths =
        DEPTH.matcher(gauge.group(1) + " ").results().map(r -> r.group(1).strip()).toList();
    assertEquals(headspace(sheet), depths, sheet::toString);
  }

  private static String onPaper(Matcher acid) {
    return acid.find() ? acid.group(1) + " " + acid.group(2) : "none";
  }

  /** The first acid of the table, as {@code citric acid 1/4 tsp}, halved for a half-pint. */
  private static String acid(Sheet sheet) {
    CSVRecord product = PRODUCTS.get(sheet.row().product());
    boolean quart = sheet.row().jar().equals("quart");
    String first = product.get(quart ? "acid_per_quart" : "acid_per_pint").split(" \\| ", -1)[0];
    Matcher dose = Pattern.compile("([0-9/]+) (tsp|Tbsp) (.+)").matcher(first);
    if (!dose.matches()) {
      return "none";
    }
    String amount = dose.group(1);
    if (sheet.row().jar().equals("half-pint")) {
      amount = Map.of("1", "1/2", "4", "2", "1/4", "1/8").get(amount);
    }
    return dose.group(3) + " " + set(amount) + " " + dose.group(2);
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
