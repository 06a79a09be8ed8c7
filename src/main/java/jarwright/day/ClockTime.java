package jarwright.day;

import jarwright.page.Wording;
import jarwright.plan.ClockHours;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Map;

/** Times of day as a household reads its clock, in the words of a print-out. */
public record ClockTime(ClockHours hours, Wording words) {
  private static final DateTimeFormatter TWELVE = DateTimeFormatter.ofPattern("h:mm", Locale.ROOT);
  private static final DateTimeFormatter TWENTY_FOUR =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /** {@code 1:42 PM}, or {@code 13:42}; noon and midnight by their names where 12 is meant. */
  public String of(LocalTime time) {
    LocalTime minute = time.truncatedTo(ChronoUnit.MINUTES);
    if (hours == ClockHours.TWENTY_FOUR) {
      return TWENTY_FOUR.format(minute);
    }
    if (minute.equals(LocalTime.NOON)) {
      return words.text("clock.noon");
    }
    if (minute.equals(LocalTime.MIDNIGHT)) {
      return words.text("clock.midnight");
    }
    String key = minute.isBefore(LocalTime.NOON) ? "clock.am" : "clock.pm";
    return words.text(key, Map.of("time", TWELVE.format(minute)));
  }

  public String of(ZonedDateTime time) {
    return of(time.toLocalTime());
  }

  /** With its day before it where that is not the one that the reader thinks of. */
  public String of(ZonedDateTime time, LocalDate known) {
    LocalDate on = time.toLocalDate();
    return on.equals(known) ? of(time) : words.date("day", on) + ", " + of(time);
  }

  /** From when on seals are looked at: in the morning, where the rule's time ends at night. */
  public String seals(PlannedLoad load, LocalDate known) {
    return load.isTestedInTheMorning()
        ? words.text(
            load.testFrom().toLocalDate().isAfter(known.plusDays(1))
                ? "clock.morning-after"
                : "clock.next-morning")
        : of(load.testFrom(), known);
  }
}
