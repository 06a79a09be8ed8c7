package jarwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jarwright.batch.Batch;
import jarwright.batch.BatchRecord;
import jarwright.lot.LotCode;
import jarwright.problem.Refused;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatchRecordFileTest {
  private static final Path GOLDEN = Path.of("src/test/resources/batch-record.yaml");
  private static final List<LocalTime> TIMES = List.of(LocalTime.of(9, 5), LocalTime.of(10, 0));

  @Test
  void everyProductsRecordIsReadBackAsItWas() throws Exception {
    List<Batch> batches = EveryProduct.batches();
    assertEquals(158, batches.size());
    for (Batch batch : batches) {
      BatchRecord record = BatchRecord.of(batch, List.of(batch.jars() - 2, 2), TIMES);
      assertEquals(record, read(RecordText.of(record), batch.lot()));
      BatchRecord untimed = BatchRecord.of(batch, List.of(batch.jars()), List.of());
      assertEquals(untimed, read(RecordText.of(untimed), batch.lot()));
    }
  }

  @Test
  void itIsTextForPeople() throws Exception {
    Batch tomatoes =
        EveryProduct.batches().stream()
            .filter(b -> b.product().id().equals("tomatoes-whole-in-water"))
            .findFirst()
            .orElseThrow();
    assertEquals(
        Files.readString(GOLDEN), RecordText.of(BatchRecord.of(tomatoes, List.of(7, 2), TIMES)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "minutes: 45~minutes: 4S~minutes: takes a whole number",
        "minutes: 45~min: 45~has no key",
        "minutes: 45~# 45~minutes: is missing",
        "loads: [7, 2]~loads: [7, 3]~do not make 9 jars",
        "lot: 260824R-W~lot: 260824R-X~its check character does not fit",
        "packed: 2026-08-24~packed: 2026-08-32~there is no day",
        "acid: ~azid: ~has no key \"azid\"",
        "1001-3000 ft~1001 ft~no band of altitude",
        "jar: pint~- jar: pint~this is not well-formed YAML",
      })
  void aChangedRecordIsFound(String from, String to, String message) throws Exception {
    String sound = Files.readString(GOLDEN);
    LotCode lot =
        LotCode.parse(
            sound.lines().filter(l -> l.startsWith("lot: ")).toList().get(0).substring(5));
    assertTrue(sound.contains(from), from);
    String changed = sound.replaceFirst(java.util.regex.Pattern.quote(from), to == null ? "" : to);
    String told = assertThrows(Refused.class, () -> read(changed, lot)).getMessage();
    assertTrue(told.contains(message), told);
  }

  private static BatchRecord read(String text, LotCode lot) throws Refused {
    return RecordReader.read(
        TextFile.of("record.yaml", text.getBytes(StandardCharsets.UTF_8)), lot);
  }
}
