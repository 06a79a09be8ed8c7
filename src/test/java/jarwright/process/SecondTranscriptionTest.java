package jarwright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.quantity.GaugePressure;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * The tables against a second transcription, typed from other publications (older editions and
 * state extension sheets, each named in its row) without a look at the first. Cells that differ are
 * listed with their explanation; a difference without one fails, and so does an explanation that
 * nothing needs.
 */
class SecondTranscriptionTest {
  private static final String FOLDER = "/jarwright/";

  @Test
  void everyCellAgreesOrIsExplained() throws IOException {
    Set<String> explained = new HashSet<>();
    for (CSVRecord row : rows("second-transcription-differences.csv")) {
      assertFalse(row.get("explanation").isBlank(), row.toString());
      int minutes = Integer.parseInt(row.get("table_minutes"));
      assertTrue(
          minutes >= Integer.parseInt(row.get("second_minutes")),
          () -> "the table asks for less: " + row);
      assertEquals(Optional.of(minutes), tableMinutes(row), row.toString());
      assertTrue(explained.add(key(row) + " " + row.get("second_minutes")), row.toString());
    }
    List<String> unexplained = new ArrayList<>();
    Set<String> unneeded = new HashSet<>(explained);
    for (CSVRecord row : rows("second-transcription.csv")) {
      if (!agrees(row)) {
        String difference = key(row) + " " + row.get("minutes");
        unneeded.remove(difference);
        if (!explained.contains(difference)) {
          unexplained.add(difference + " (" + row.get("publication") + ")");
        }
      }
    }
    assertEquals(List.of(), unexplained, "cells that differ without an explanation");
    assertEquals(Set.of(), unneeded, "explanations of cells that agree");
  }

  /** At least 40 products, all six guides, all methods, as the safety case asks. */
  @Test
  void itCoversTheBook() throws IOException {
    Set<String> products = new HashSet<>();
    Set<String> methods = new HashSet<>();
    Set<Integer> guides = new HashSet<>();
    for (CSVRecord row : rows("second-transcription.csv")) {
      assertFalse(row.get("publication").isBlank(), row.toString());
      products.add(row.get("product_id"));
      methods.add(row.get("method"));
      guides.add(Book.product(row.get("product_id")).guide());
    }
    assertTrue(products.size() >= 80, "products: " + products.size());
    assertEquals(Set.copyOf(Method.ids()), methods);
    assertEquals(Set.of(2, 3, 4, 5, 6, 7), guides);
  }

  /** What the table asks for at the top of a cell's band, as the explanation says it does. */
  private static Optional<Integer> tableMinutes(CSVRecord cell) {
    Answer answer =
        Book.ask(
            cell.get("product_id"),
            cell.get("method"),
            cell.get("pack"),
            cell.get("jar"),
            cell.get("alt_max_ft") + " ft");
    return answer.fold(
        found -> found.rows().get(0).process().map(TestedProcess::minutes),
        closed -> Optional.empty(),
        gap -> Optional.empty());
  }

  /** Whether each pack that the cell is for has a row with the same band, minutes and pressure. */
  private static boolean agrees(CSVRecord cell) {
    return packs(cell.get("pack")).stream()
        .allMatch(
            pack ->
                Book.get().rows(cell.get("product_id")).stream()
                    .anyMatch(row -> row.pack().covers(pack) && isSame(row, cell)));
  }

  private static List<Pack> packs(String word) {
    Pack pack = Pack.named(word).orElseThrow();
    return pack == Pack.RAW_OR_HOT ? List.of(Pack.RAW, Pack.HOT) : List.of(pack);
  }

  private static boolean isSame(TableRow row, CSVRecord cell) {
    AltitudeBand band =
        new AltitudeBand(
            Integer.parseInt(cell.get("alt_min_ft")),
            cell.get("alt_max_ft").isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(Integer.parseInt(cell.get("alt_max_ft"))));
    Optional<GaugePressure> pressure =
        Optional.of(cell.get("psi"))
            .filter(psi -> !psi.isEmpty())
            .map(psi -> GaugePressure.psi(Integer.parseInt(psi)));
    TestedProcess process = new TestedProcess(Integer.parseInt(cell.get("minutes")), pressure);
    return row.method().id().equals(cell.get("method"))
        && row.jar().id().equals(cell.get("jar"))
        && row.band().equals(band)
        && row.process().equals(Optional.of(process));
  }

  private static String key(CSVRecord row) {
    return String.join(
        " ",
        row.get("product_id"),
        row.get("method"),
        row.get("pack"),
        row.get("jar"),
        row.get("alt_min_ft") + "-" + row.get("alt_max_ft"),
        row.get("psi"));
  }

  private static List<CSVRecord> rows(String file) throws IOException {
    try (InputStream in = SecondTranscriptionTest.class.getResourceAsStream(FOLDER + file)) {
      String table = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      CSVFormat form = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      return CSVParser.parse(table, form).getRecords();
    }
  }
}
