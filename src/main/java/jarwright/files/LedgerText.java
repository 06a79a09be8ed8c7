package jarwright.files;

import jarwright.lot.LotCode;
import jarwright.pantry.Detail;
import jarwright.pantry.Entry;
import jarwright.pantry.Happening;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.LedgerEvent;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** An event as a line of the ledger, and back; without the check at the line's end. */
final class LedgerText {
  static final String HEADER = "number,when,lot,jar,event,detail,by,check";

  /** RFC 4180, but for lines that end in a line feed alone. */
  static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setRecordSeparator('\n').setIgnoreEmptyLines(true).get();

  private static final int CELLS = 8;

  /** The same few lots come again and again. */
  private final Map<String, LotCode> lots = new HashMap<>();

  private final WrittenTime times = new WrittenTime();

  static String write(LedgerEvent event) {
    return FORMAT.format(
        event.number(),
        Cell.out(event.when().toString()),
        Cell.out(event.lot().map(LotCode::toString).orElse("")),
        Cell.out(event.jars().toString()),
        Cell.out(event.what().kind()),
        Cell.out(event.what().detail().toString()),
        Cell.out(event.by()));
  }

  /**
   * Reads a line whose check has been found good.
   *
   * @throws IllegalArgumentException where the line says something this program does not know
   */
  LedgerEvent read(CSVRecord line) {
    if (line.size() != CELLS) {
      throw new IllegalArgumentException(
          "the line has " + line.size() + " cells where " + CELLS + " were expected");
    }
    String lot = Cell.in(line.get(2));
    Happening what = Happening.read(Cell.in(line.get(4)), Detail.parse(Cell.in(line.get(5))));
    Entry entry =
        new Entry(
            time(Cell.in(line.get(1))),
            lot.isEmpty()
                ? Optional.empty()
                : Optional.of(lots.computeIfAbsent(lot, LotCode::parse)),
            JarNumbers.parse(Cell.in(line.get(3))),
            what,
            Cell.in(line.get(6)));
    return new LedgerEvent(Long.parseLong(line.get(0)), entry);
  }

  private OffsetDateTime time(String text) {
    try {
      return times.read(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException("\"" + text + "\" is no time", e);
    }
  }
}
