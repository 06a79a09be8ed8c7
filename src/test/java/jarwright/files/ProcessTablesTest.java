package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.process.ProcessBook;
import org.junit.jupiter.api.Test;

class ProcessTablesTest {
  @Test
  void everyRowOfTheTablesLoads() throws Exception {
    ProcessBook book = ProcessTables.ofProgram().book();
    assertEquals(161, book.products().size());
  }
}
