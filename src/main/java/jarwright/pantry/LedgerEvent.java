package jarwright.pantry;

import jarwright.lot.LotCode;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * One line of the ledger.
 *
 * @param number from 1, without gaps: the order of events, whatever their clocks said
 */
public record LedgerEvent(long number, Entry entry) {
  public OffsetDateTime when() {
    return entry.when();
  }

  public Optional<LotCode> lot() {
    return entry.lot();
  }

  public JarNumbers jars() {
    return entry.jars();
  }

  public Happening what() {
    return entry.what();
  }

  public String by() {
    return entry.by();
  }
}
