package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.process.ProcessBook;
import jarwright.process.Product;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class ProcessTablesTest {
  private static final CSVFormat FORM =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  @Test
  void everyRowOfTheTablesLoads() throws Exception {
    ProcessBook book = ProcessTables.ofProgram().book();
    assertEquals(List.of(161, 1_590), List.of(book.products().size(), book.rows().size()));
    assertEquals(
        records(ProcessTables.RECIPES).size(),
        book.products().stream()
            .flatMap(p -> book.formulas(p.id()).stream())
            .mapToInt(f -> f.lines().size())
            .sum());
  }

  /** What the book lists is what the table says, line by line, in the table's own spelling. */
  @Test
  void theBookGivesTheTimesTableBack() throws Exception {
    String listed = ProcessListing.csv(ProcessTables.ofProgram().book().rows());
    try (CSVParser parser = CSVParser.parse(listed, FORM)) {
      List<String> columns = parser.getHeaderNames();
      List<CSVRecord> table = records(ProcessTables.TIMES);
      List<CSVRecord> own = parser.getRecords();
      assertEquals(table.size(), own.size());
      for (int i = 0; i < own.size(); i++) {
        CSVRecord printed = table.get(i);
        assertEquals(columns.stream().map(printed::get).toList(), own.get(i).toList());
      }
    }
  }

  @Test
  void aPartOfTheTablesIsReadAsTheWholeWouldBe() throws Exception {
    ProcessBook whole = ProcessTables.ofProgram().book();
    for (Product product : whole.products()) {
      ProcessBook part = ProcessTables.ofProgram().bookOf(Set.of(product.id()));
      assertEquals(List.of(product), part.products());
      assertEquals(whole.rows(product.id()), part.rows(product.id()));
      assertEquals(whole.formulas(product.id()), part.formulas(product.id()));
    }
  }

  @Test
  void theProductsAloneAreReadAsWithTheirTimes() throws Exception {
    ProcessTables tables = ProcessTables.ofProgram();
    assertEquals(tables.book().products(), tables.products());
    assertTrue(tables.bookOf(Set.of()).products().isEmpty());
  }

  @Test
  void aNameThatIsNoProductIsLeftOut() throws Exception {
    assertTrue(ProcessTables.ofProgram().bookOf(Set.of("no-such-thing")).products().isEmpty());
  }

  private static List<CSVRecord> records(String file) throws Exception {
    try (CSVParser parser = CSVParser.parse(ProcessTables.resource(file), FORM)) {
      return parser.getRecords();
    }
  }
}
