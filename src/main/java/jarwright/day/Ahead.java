package jarwright.day;

import jarwright.lot.LotCode;
import java.time.LocalTime;
import java.time.ZonedDateTime;

/**
 * Work of an earlier day and the wait that follows it: a soak, a chill, a ferment.
 *
 * @param start when hands begin
 * @param waits when they are done, and the wait begins
 * @param until when the wait is over
 * @param step place of the waiting step among all steps of the product, whose words tell of it
 */
public record Ahead(
    LotCode lot, ZonedDateTime start, ZonedDateTime waits, ZonedDateTime until, int step) {
  /** Common practice, no source: hours at which nobody works in a kitchen. */
  private static final LocalTime MORNING = LocalTime.of(6, 0);

  private static final LocalTime NIGHT = LocalTime.of(21, 30);

  /** Whether hands would be wanted at night. */
  public boolean isAtNight() {
    boolean sameDay = start.toLocalDate().equals(waits.toLocalDate());
    return !sameDay || start.toLocalTime().isBefore(MORNING) || waits.toLocalTime().isAfter(NIGHT);
  }
}
