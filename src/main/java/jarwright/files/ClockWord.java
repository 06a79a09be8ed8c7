package jarwright.files;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Understands dates and times of day. */
final class ClockWord {
  private static final Pattern ISO_DATE = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");
  private static final Pattern DOTTED_DATE = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");
  private static final Pattern TIME = Pattern.compile("(\\d{1,2}):(\\d{2})(?::00)?");
  private static final int FIRST_YEAR = 2000;
  private static final int LAST_YEAR = 2099;

  private ClockWord() {}

  /** A date of ISO 8601, of this century. */
  static Optional<LocalDate> date(Fields fields, String key) {
    Optional<String> word = fields.plainWord(key);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    Matcher iso = ISO_DATE.matcher(word.get());
    if (!iso.matches()) {
      fields.problem(
          key,
          "\"" + fields.said(key) + "\" is not a date as year-month-day",
          dotted(word.get())
              .map(d -> "did you mean " + d + "?")
              .orElse("write it like 2026-08-24"));
      return Optional.empty();
    }
    Optional<LocalDate> date = date(iso.group(1), iso.group(2), iso.group(3));
    if (date.isEmpty()) {
      fields.problem(key, "there is no day " + word.get() + " in the calendar", "check the day");
    } else if (date.get().getYear() < FIRST_YEAR || date.get().getYear() > LAST_YEAR) {
      fields.problem(
          key,
          date.get() + " is not in the years " + FIRST_YEAR + " to " + LAST_YEAR,
          "check the year");
      return Optional.empty();
    }
    return date;
  }

  private static Optional<LocalDate> dotted(String word) {
    Matcher dotted = DOTTED_DATE.matcher(word);
    return dotted.matches()
        ? date(dotted.group(3), dotted.group(2), dotted.group(1))
        : Optional.empty();
  }

  private static Optional<LocalDate> date(String year, String month, String day) {
    try {
      return Optional.of(
          LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** A time of the 24-hour day; 8:30 and 08:30 are the same. */
  static Optional<LocalTime> time(Fields fields, String key) {
    Optional<String> word = fields.plainWord(key);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    Matcher time = TIME.matcher(word.get());
    try {
      if (time.matches()) {
        return Optional.of(
            LocalTime.of(Integer.parseInt(time.group(1)), Integer.parseInt(time.group(2))));
      }
    } catch (DateTimeException e) {
      // told below, as any other text that is no time
    }
    fields.problem(
        key,
        "\"" + fields.said(key) + "\" is not a time of the 24-hour day",
        "write it like 08:30 or 17:45");
    return Optional.empty();
  }
}
