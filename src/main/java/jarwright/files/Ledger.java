package jarwright.files;

import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Pantry;
import jarwright.pantry.PantryFold;
import jarwright.problem.Place;
import jarwright.problem.Refused;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A ledger as it stood when it was read and found whole; events added since are not seen. */
public final class Ledger {
  private final Path file;
  private final LedgerScan.Found found;
  private final List<String> remarks;

  Ledger(Path file, LedgerScan.Found found, List<String> remarks) {
    this.file = file;
    this.found = found;
    this.remarks = List.copyOf(remarks);
  }

  /** Number of the last event; 0 for an empty ledger. */
  public long last() {
    return found.last();
  }

  /** The mark that tells the household's ledger from others; empty for an empty ledger. */
  public String household() {
    return found.mark();
  }

  /** What had to be mended so that the ledger could be read, one sentence each. */
  public List<String> remarks() {
    return remarks;
  }

  /**
   * Gives every event to the taker, in order, without keeping it.
   *
   * @throws Refused where a line is good but not known to this program
   */
  public void each(Consumer<LedgerEvent> taker) throws IOException, Refused {
    if (found.last() == 0) {
      return;
    }
    try (Reader in = new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8)) {
      read(in, true, taker);
    }
  }

  private void read(Reader in, boolean hasHeader, Consumer<LedgerEvent> taker)
      throws IOException, Refused {
    LedgerText text = new LedgerText();
    long number = 0;
    try (CSVParser parser = LedgerText.FORMAT.parse(in)) {
      Iterator<CSVRecord> lines = parser.iterator();
      if (hasHeader) {
        lines.next();
      }
      // What stands after the last good line is not looked at.
      while (number < found.last() && lines.hasNext()) {
        CSVRecord line = lines.next();
        LedgerEvent event = event(text, line, parser.getCurrentLineNumber());
        number = event.number();
        taker.accept(event);
      }
    } catch (UncheckedIOException e) {
      if (e.getCause() instanceof CSVException) {
        throw unknown(number + 2, "the line cannot be cut into cells");
      }
      throw e.getCause();
    }
  }

  private LedgerEvent event(LedgerText text, CSVRecord line, long lineNumber) throws Refused {
    try {
      return text.read(line);
    } catch (IllegalArgumentException e) {
      throw unknown(lineNumber, e.getMessage());
    }
  }

  private Refused unknown(long lineNumber, String what) {
    return new Refused(
        new Place(file.getFileName().toString(), (int) lineNumber, 0, ""),
        what,
        "the line is whole, so it was written by another version of jarwright: use that one");
  }

  /** All events, in order. */
  public List<LedgerEvent> events() throws IOException, Refused {
    List<LedgerEvent> events = new ArrayList<>();
    each(events::add);
    return events;
  }

  /** The stock that the events add up to. */
  public Pantry pantry() throws IOException, Refused {
    List<LedgerEvent> undoes = new ArrayList<>();
    for (String line : found.undoes()) {
      read(new StringReader(line), false, undoes::add);
    }
    PantryFold fold = new PantryFold(undoes, FoodTables::own);
    each(fold::add);
    return fold.pantry();
  }
}
