package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jarwright.pantry.AnyHappening;
import jarwright.pantry.Entry;
import jarwright.pantry.LedgerEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

class LedgerTextProperties {
  @Provide
  Arbitrary<Entry> entries() {
    return AnyHappening.entry();
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void everyEventIsOneLineAndComesBackAsItWas(@ForAll("entries") Entry entry) throws IOException {
    LedgerEvent event = new LedgerEvent(41, entry);
    String line = LedgerText.write(event) + ",check";
    assertEquals(1, line.lines().count());
    byte[] onDisk = line.getBytes(StandardCharsets.UTF_8);
    try (CSVParser parser =
        CSVParser.parse(new String(onDisk, StandardCharsets.UTF_8), LedgerText.FORMAT)) {
      List<CSVRecord> records = parser.getRecords();
      assertEquals(1, records.size());
      assertEquals(event, new LedgerText().read(records.get(0)));
    }
  }
}
