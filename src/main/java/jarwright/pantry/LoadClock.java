package jarwright.pantry;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the kitchen's clock showed at a load, as moments. In the hour that comes twice on an autumn
 * night the shorter of the possible times counts; in the hour that is left out in spring no clock
 * showed anything.
 *
 * @param faults what cannot have been, told of the time that it was seen in; none where the moments
 *     hold
 */
public record LoadClock(
    Optional<OffsetDateTime> start,
    Optional<OffsetDateTime> lastStart,
    Optional<OffsetDateTime> end,
    List<Fault> faults) {
  /** No tested process comes near it: a longer one is a slip in the times. */
  static final Duration LONGEST = Duration.ofHours(12);

  /** Which of the times. */
  public enum Which {
    START,
    LAST_START,
    END
  }

  /** A time that cannot have been. */
  public record Fault(Which which, String what, String remedy) {}

  public LoadClock {
    faults = List.copyOf(faults);
  }

  /**
   * Reads times of day that follow each other, past midnight where they have to.
   *
   * @param day on which the first of them was
   * @param rules of the kitchen's zone
   */
  public static LoadClock read(
      LocalDate day,
      ZoneRules rules,
      Optional<LocalTime> start,
      Optional<LocalTime> lastStart,
      Optional<LocalTime> end) {
    return new Reading(day, rules).of(start, lastStart, end);
  }

  /**
   * The first moment from the given one on at which the clock shows that time; of two in the
   * doubled hour the later. Empty where it shows it on neither of two days.
   */
  public static Optional<OffsetDateTime> next(
      LocalTime time, OffsetDateTime from, ZoneRules rules) {
    LocalDateTime there =
        LocalDateTime.ofInstant(from.toInstant(), rules.getOffset(from.toInstant()));
    return Stream.of(0, 1)
        .map(days -> there.toLocalDate().plusDays(days).atTime(time))
        .flatMap(t -> last(t, rules).stream())
        .filter(t -> !t.isBefore(from))
        .findFirst();
  }

  /** The moment at which the clock shows that; of two the later, empty where it never does. */
  public static Optional<OffsetDateTime> last(LocalDateTime time, ZoneRules rules) {
    List<ZoneOffset> offsets = rules.getValidOffsets(time);
    return offsets.isEmpty()
        ? Optional.empty()
        : Optional.of(time.atOffset(offsets.get(offsets.size() - 1)));
  }

  private static final class Reading {
    private final LocalDate day;
    private final ZoneRules rules;
    private final List<Fault> faults = new ArrayList<>();

    private Reading(LocalDate day, ZoneRules rules) {
      this.day = day;
      this.rules = rules;
    }

    private LoadClock of(
        Optional<LocalTime> start, Optional<LocalTime> lastStart, Optional<LocalTime> end) {
      Optional<LocalDateTime> first = start.map(day::atTime);
      Optional<LocalDateTime> again = after(Which.LAST_START, first, first, lastStart);
      Optional<LocalDateTime> last = after(Which.END, first, again.or(() -> first), end);
      check(Which.START, first);
      check(Which.LAST_START, again);
      check(Which.END, last);
      if (!faults.isEmpty()) {
        return new LoadClock(Optional.empty(), Optional.empty(), Optional.empty(), faults);
      }
      return all(first, again, last).stream().min(SHORTEST).orElseThrow();
    }

    /**
     * A time on the day, or on the next where it would else lie before what came first.
     *
     * @param start from which no process runs for longer than {@link #LONGEST}
     */
    private Optional<LocalDateTime> after(
        Which which,
        Optional<LocalDateTime> start,
        Optional<LocalDateTime> before,
        Optional<LocalTime> time) {
      if (before.isEmpty() || time.isEmpty()) {
        return time.map(day::atTime);
      }
      LocalDateTime sameDay = before.get().toLocalDate().atTime(time.get());
      if (!sameDay.isBefore(before.get())) {
        return Optional.of(sameDay);
      }
      LocalDateTime nextDay = sameDay.plusDays(1);
      if (Duration.between(start.orElse(before.get()), nextDay).compareTo(LONGEST) > 0) {
        String name = which == Which.END ? "the end " : "the last start ";
        faults.add(
            new Fault(
                which,
                name + time.get() + " lies before the start " + before.get().toLocalTime(),
                isDoubled(sameDay)
                    ? "in that night the clock showed this hour twice: write the times as they"
                        + " would be had it not been changed"
                    : "check the times; past midnight the next day is meant"));
      }
      return Optional.of(nextDay);
    }

    private boolean isDoubled(LocalDateTime time) {
      return rules.getValidOffsets(time).size() > 1;
    }

    private void check(Which which, Optional<LocalDateTime> time) {
      time.map(rules::getTransition)
          .filter(ZoneOffsetTransition::isGap)
          .ifPresent(
              gap ->
                  faults.add(
                      new Fault(
                          which,
                          "no clock showed "
                              + time.get().toLocalTime()
                              + " on "
                              + time.get().toLocalDate()
                              + ": it went from "
                              + gap.getDateTimeBefore().toLocalTime()
                              + " to "
                              + gap.getDateTimeAfter().toLocalTime(),
                          "write what the clock showed")));
    }

    /** What the times can have been, none before the one it follows. */
    private List<LoadClock> all(
        Optional<LocalDateTime> first,
        Optional<LocalDateTime> again,
        Optional<LocalDateTime> last) {
      List<LoadClock> all = new ArrayList<>();
      for (Optional<OffsetDateTime> a : moments(first)) {
        for (Optional<OffsetDateTime> b : moments(again)) {
          for (Optional<OffsetDateTime> c : moments(last)) {
            if (follows(a, b) && follows(b, c) && follows(a, c)) {
              all.add(new LoadClock(a, b, c, List.of()));
            }
          }
        }
      }
      return all;
    }

    private List<Optional<OffsetDateTime>> moments(Optional<LocalDateTime> time) {
      if (time.isEmpty()) {
        return List.of(Optional.empty());
      }
      return rules.getValidOffsets(time.get()).stream()
          .map(o -> Optional.of(time.get().atOffset(o)))
          .toList();
    }

    private static boolean follows(Optional<OffsetDateTime> a, Optional<OffsetDateTime> b) {
      return a.isEmpty() || b.isEmpty() || !b.get().isBefore(a.get());
    }
  }

  /** The shorter run first; of equal ones that which ended sooner, since hours count from there. */
  private static final Comparator<LoadClock> SHORTEST =
      Comparator.comparing(LoadClock::run)
          .thenComparing(
              c ->
                  c.end
                      .or(() -> c.lastStart)
                      .or(() -> c.start)
                      .map(OffsetDateTime::toInstant)
                      .orElse(java.time.Instant.MIN));

  private Duration run() {
    return lastStart
        .or(() -> start)
        .flatMap(from -> end.map(to -> Duration.between(from, to)))
        .orElse(Duration.ZERO);
  }
}
