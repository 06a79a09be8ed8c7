package jarwright.record;

import jarwright.batch.BatchRecord;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Lot;
import java.util.List;
import java.util.Optional;

/**
 * All that is known of a lot.
 *
 * @param planned as it was planned; empty for jars from an old list
 * @param events of the ledger that name the lot, and those that take such events back
 */
public record LotRecord(Lot lot, Optional<BatchRecord> planned, List<LedgerEvent> events) {
  public LotRecord {
    events = List.copyOf(events);
  }
}
