package jarwright.files;

import jarwright.pantry.LedgerEvent;
import java.util.List;

/**
 * What an append brought onto the disk.
 *
 * @param events in the order given, with their numbers
 * @param remarks what had to be mended first, one sentence each
 */
public record Appended(List<LedgerEvent> events, List<String> remarks) {
  static final Appended NOTHING = new Appended(List.of(), List.of());

  public Appended {
    events = List.copyOf(events);
    remarks = List.copyOf(remarks);
  }
}
