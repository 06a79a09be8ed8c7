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

  /** A time of day in whole minutes; 8:30, 08:30, 20:30 and 8:30 PM. */
  static Optional<LocalTime> time(Fields fields, String key) {
    Optional<String> word = fields.text(key);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    try {
      LocalTime time = RecordWords.timeOfDay(word.get());
      if (time.getSecond() == 0) {
        return Optional.of(time);
      }
    } catch (IllegalArgumentException e) {
      // told below, as a time with seconds
    }
    fields.problem(
        key,
        "\"" + fields.said(key) + "\" is not a time of day in whole minutes",
        "write it like 08:30, 17:45 or 5:45 PM");
    return Optional.empty();
  }
}
