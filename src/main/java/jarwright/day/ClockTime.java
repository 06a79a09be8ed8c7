package jarwright.day;

import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** A time of day as the kitchen clock shows it: hours to 24 and minutes. */
public final class ClockTime {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private ClockTime() {}

  public static String of(LocalTime time) {
    return CLOCK.format(time.truncatedTo(ChronoUnit.MINUTES));
  }

  public static String of(ZonedDateTime time) {
    return of(time.toLocalTime());
  }
}
