package jarwright.pantry;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** What a message shows: typed text on one line, not too long, and times to the minute. */
final class Shown {
  private static final int LONGEST = 40;

  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private Shown() {}

  /** As in {@code 2026-08-25 00:30}, by the clock it was read from. */
  static String minute(OffsetDateTime time) {
    return MINUTE.format(time);
  }

  static String of(String text) {
    String oneLine = text.strip().replaceAll("\\p{Cntrl}+", " ");
    return oneLine.length() <= LONGEST ? oneLine : oneLine.substring(0, LONGEST) + "…";
  }
}
