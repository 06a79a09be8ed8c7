package jarwright.files;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;

/**
 * Reads times as {@link OffsetDateTime#toString} writes them, as in {@code
 * 2026-08-24T12:00:07.25-05:00}. A large ledger is mostly times: the library's parser alone took a
 * third of the whole reading.
 */
final class WrittenTime {
  private static final int TO_MINUTE = 16;
  private static final int TO_SECOND = 19;
  private static final int MOST_DIGITS = 9;
  private static final int HOURS_AND_MINUTES = 6;

  /** A household has few. */
  private final Map<String, ZoneOffset> offsets = new HashMap<>();

  /**
   * The time; any other form is left to the library.
   *
   * @throws DateTimeException where it is none
   */
  OffsetDateTime read(String text) {
    int offset = offset(text);
    boolean dated =
        offset >= TO_MINUTE
            && text.charAt(4) == '-'
            && text.charAt(7) == '-'
            && text.charAt(10) == 'T'
            && text.charAt(13) == ':';
    int second = offset == TO_MINUTE ? 0 : second(text, offset);
    int nano = offset <= TO_SECOND ? 0 : nano(text, offset);
    int year = dated ? digits(text, 0, 4) : -1;
    int month = dated ? digits(text, 5, 7) : -1;
    int day = dated ? digits(text, 8, 10) : -1;
    int hour = dated ? digits(text, 11, 13) : -1;
    int minute = dated ? digits(text, 14, TO_MINUTE) : -1;
    if (Math.min(Math.min(second, nano), Math.min(year, month)) < 0
        || Math.min(day, Math.min(hour, minute)) < 0) {
      return OffsetDateTime.parse(text);
    }
    return OffsetDateTime.of(
        LocalDate.of(year, month, day),
        LocalTime.of(hour, minute, second, nano),
        offsets.computeIfAbsent(text.substring(offset), ZoneOffset::of));
  }

  /** Where the offset begins; -1 where there is none in its place. */
  private static int offset(String text) {
    for (int i = TO_MINUTE; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == 'Z' || c == '+' || c == '-') {
        return isPlain(text.substring(i)) ? i : -1;
      }
    }
    return -1;
  }

  /** Z, or hours and minutes with a colon: the library's offsets take more forms than its times. */
  private static boolean isPlain(String offset) {
    return offset.equals("Z") || (offset.length() == HOURS_AND_MINUTES && offset.charAt(3) == ':');
  }

  private static int second(String text, int offset) {
    return offset >= TO_SECOND && text.charAt(TO_MINUTE) == ':'
        ? digits(text, TO_MINUTE + 1, TO_SECOND)
        : -1;
  }

  private static int nano(String text, int offset) {
    int length = offset - TO_SECOND - 1;
    if (text.charAt(TO_SECOND) != '.' || length < 1 || length > MOST_DIGITS) {
      return -1;
    }
    int nano = digits(text, TO_SECOND + 1, offset);
    for (int i = length; i < MOST_DIGITS && nano > 0; i++) {
      nano *= 10;
    }
    return nano;
  }

  /** The number that stands there; -1 where it is none. */
  private static int digits(String text, int from, int to) {
    int number = 0;
    for (int i = from; i < to; i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      number = number * 10 + digit;
    }
    return number;
  }
}
