package jarwright.pantry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.zone.ZoneRules;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Times of day as moments. The changes of clocks are those of the IANA time zone database: in
 * Chicago 2026-03-08 02:00 to 03:00 and 2026-11-01 02:00 to 01:00, on Lord Howe Island 2026-04-05
 * 02:00 to 01:30.
 */
class LoadClockTest {
  private static final ZoneRules CHICAGO = ZoneId.of("America/Chicago").getRules();
  private static final LocalDate AUTUMN = LocalDate.of(2026, 11, 1);
  private static final LocalDate SPRING = LocalDate.of(2026, 3, 8);

  private static Optional<LocalTime> time(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(LocalTime.parse(text));
  }

  private static LoadClock read(LocalDate day, String start, String again, String end) {
    return LoadClock.read(day, CHICAGO, time(start), time(again), time(end));
  }

  private static long run(LoadClock clock) {
    assertEquals(List.of(), clock.faults());
    OffsetDateTime from = clock.lastStart().or(clock::start).orElseThrow();
    return java.time.Duration.between(from, clock.end().orElseThrow()).toMinutes();
  }

  private static List<String> faults(LoadClock clock) {
    assertEquals(Optional.empty(), clock.start());
    assertEquals(Optional.empty(), clock.end());
    return clock.faults().stream().map(f -> f.which() + ": " + f.what()).toList();
  }

  /** Twenty minutes by the clock may have been eighty; only twenty are shown. */
  @ParameterizedTest
  @CsvSource({
    "00:40, 01:00, 20",
    "01:50, 02:10, 20",
    "00:50, 01:10, 20",
    "01:10, 01:30, 20",
    "00:50, 02:10, 140",
    "01:59:59, 02:00, 0",
    "01:00, 01:00, 0"
  })
  void inTheDoubledHourTheShorterReadingCounts(String start, String end, int minutes) {
    assertEquals(minutes, run(read(AUTUMN, start, "", end)));
  }

  @Test
  void ofTwoEqualReadingsTheEarlierCountsSinceHoursRunFromIt() {
    OffsetDateTime first = OffsetDateTime.parse("2026-11-01T01:30-05:00");
    assertEquals(Optional.of(first), read(AUTUMN, "01:10", "", "01:30").end());
    assertEquals(Optional.of(first), read(AUTUMN, "", "", "01:30").end());
    assertEquals(Optional.of(first), read(AUTUMN, "01:30", "", "").start());
  }

  @Test
  void theLastStartCountsAndNothingLiesBeforeWhatItFollows() {
    LoadClock clock = read(AUTUMN, "00:40", "01:50", "02:10");
    assertEquals(20, run(clock));
    assertEquals(Optional.of(OffsetDateTime.parse("2026-11-01T00:40-05:00")), clock.start());
    assertEquals(Optional.of(OffsetDateTime.parse("2026-11-01T01:50-06:00")), clock.lastStart());
    LoadClock within = read(AUTUMN, "01:40", "01:50", "01:55");
    assertEquals(5, run(within));
    assertTrue(!within.lastStart().get().isBefore(within.start().get()));
  }

  /** Whichever of the two hours is meant, and after any restart. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-11-01 | 01:40 | | 01:20 | END: the end 01:20 lies before the start 01:40",
        "2026-08-24 | 12:30 | | 12:00 | END: the end 12:00 lies before the start 12:30",
        "2026-08-24 | 12:10 | 12:30 | 12:20 | END: the end 12:20 lies before the start 12:30",
        "2026-08-24 | 12:30 | 12:20 | 12:50"
            + "| LAST_START: the last start 12:20 lies before the start 12:30",
        "2026-08-24 | 12:01 | | 00:02 | END: the end 00:02 lies before the start 12:01",
      })
  void anEndBeforeItsStartIsAFault(
      LocalDate day, String start, String again, String end, String fault) {
    LoadClock clock = read(day, start, again == null ? "" : again, end);
    assertEquals(fault, faults(clock).get(0));
  }

  @Test
  void whatIsWrittenByTheOldClockInThatNightIsUnderstood() {
    assertTrue(read(AUTUMN, "01:40", "", "01:20").faults().get(0).remedy().contains("twice"));
    assertEquals(40, run(read(AUTUMN, "01:40", "", "02:20")));
  }

  @Test
  void inTheMissingHourNoClockShowedAnything() {
    String gap = "no clock showed 02:10 on 2026-03-08: it went from 02:00 to 03:00";
    assertEquals(List.of("START: " + gap), faults(read(SPRING, "02:10", "", "03:10")));
    assertEquals(List.of("END: " + gap), faults(read(SPRING, "01:50", "", "02:10")));
    assertEquals(List.of("LAST_START: " + gap), faults(read(SPRING, "01:50", "02:10", "03:10")));
    assertEquals(30, run(read(SPRING, "01:50", "", "03:20")));
    assertEquals(0, run(read(SPRING, "03:00", "", "03:00")));
  }

  @Test
  void midnightMayLieBetween() {
    LoadClock clock = read(LocalDate.of(2026, 8, 24), "23:50", "", "00:20");
    assertEquals(30, run(clock));
    assertEquals(LocalDate.of(2026, 8, 25), clock.end().get().toLocalDate());
    assertEquals(12 * 60, run(read(LocalDate.of(2026, 8, 24), "12:30", "", "00:30")));
    assertEquals(20, run(read(LocalDate.of(2026, 8, 24), "23:00", "00:10", "00:30")));
    // The last night's hour comes twice: ten minutes or seventy.
    assertEquals(10, run(read(LocalDate.of(2026, 10, 31), "23:00", "01:55", "02:05")));
  }

  @Test
  void aClockMayShiftByHalfAnHour() {
    ZoneRules howe = ZoneId.of("Australia/Lord_Howe").getRules();
    LocalDate day = LocalDate.of(2026, 4, 5);
    LoadClock clock = LoadClock.read(day, howe, time("01:50"), time(""), time("02:10"));
    assertEquals(20, run(clock));
  }

  @Test
  void aTimeAloneIsTheNextSuchTime() {
    OffsetDateTime end = OffsetDateTime.parse("2026-08-24T12:30-05:00");
    assertEquals(
        Optional.of(OffsetDateTime.parse("2026-08-24T22:30-05:00")),
        LoadClock.next(LocalTime.of(22, 30), end, CHICAGO));
    assertEquals(
        Optional.of(OffsetDateTime.parse("2026-08-25T08:00-05:00")),
        LoadClock.next(LocalTime.of(8, 0), end, CHICAGO));
    assertEquals(Optional.of(end), LoadClock.next(LocalTime.of(12, 30), end, CHICAGO));
    // Of two the later, so that no jar was cold sooner than it is shown.
    OffsetDateTime night = OffsetDateTime.parse("2026-10-31T23:00-05:00");
    assertEquals(
        Optional.of(OffsetDateTime.parse("2026-11-01T01:30-06:00")),
        LoadClock.next(LocalTime.of(1, 30), night, CHICAGO));
    assertEquals(Optional.empty(), LoadClock.last(SPRING.atTime(2, 30), CHICAGO));
  }
}
