package jarwright.cli;

import jarwright.files.FoodTables;
import jarwright.files.HouseholdFolder;
import jarwright.lot.LotCode;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Lot;
import jarwright.pantry.Pantry;
import jarwright.pantry.Undone;
import jarwright.problem.Refused;
import jarwright.record.LotRecord;
import jarwright.web.Stock;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the household's ledger held when it was read, and its batch records. */
final class FiledStock implements Stock {
  private final HouseholdFolder house;
  private final Pantry pantry;
  private final Map<LotCode, List<LedgerEvent>> byLot = new HashMap<>();

  FiledStock(HouseholdFolder house, List<LedgerEvent> events) {
    this.house = house;
    this.pantry = Pantry.of(events, FoodTables::own);
    Map<Long, LotCode> lots = new HashMap<>();
    for (LedgerEvent event : events) {
      LotCode lot =
          event.what() instanceof Undone undo ? lots.get(undo.event()) : event.lot().orElse(null);
      if (lot != null) {
        lots.put(event.number(), lot);
        byLot.computeIfAbsent(lot, l -> new ArrayList<>()).add(event);
      }
    }
  }

  @Override
  public Pantry pantry() {
    return pantry;
  }

  @Override
  public LotRecord record(Lot lot) throws IOException, Refused {
    return new LotRecord(lot, house.record(lot.code()), byLot.getOrDefault(lot.code(), List.of()));
  }
}
