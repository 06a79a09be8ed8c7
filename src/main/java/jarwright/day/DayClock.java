package jarwright.day;

import jarwright.batch.Batch;
import jarwright.plan.BatchPlan;
import jarwright.problem.Problems;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Where the day's minutes stand on the clock: from a start, or back from a finish. */
final class DayClock {
  /** Planned with where a plan says neither when to start nor when to be done. */
  private static final LocalTime USUAL_START = LocalTime.of(8, 30);

  private static final LocalTime LATEST_USUAL_START = LocalTime.of(14, 0);
  private static final Duration PUT_OFF = Duration.ofMinutes(30);

  private final List<Batch> batches;
  private final LocalDate date;
  private final ZoneId zone;

  /**
   * Takes the batches of one date.
   *
   * @param elsewise the zone where the kitchen names none
   */
  DayClock(List<Batch> batches, ZoneId elsewise) {
    this.batches = List.copyOf(batches);
    this.date = batches.get(0).plan().date();
    this.zone = batches.get(0).kitchen().zone().orElse(elsewise);
  }

  /** Tells every batch that is to be done before it starts, or whose times do not exist. */
  void check(Problems problems) {
    for (Batch batch : batches) {
      BatchPlan plan = batch.plan();
      plan.start().ifPresent(time -> checkExists(plan, "start", time, problems));
      plan.finish().ifPresent(time -> checkExists(plan, "finish", time, problems));
      if (plan.start().isPresent()
          && plan.finish().isPresent()
          && !plan.finish().get().isAfter(plan.start().get())) {
        problems.add(
            plan.placeOf("finish"),
            "the batch is to be done by "
                + plan.finish().get()
                + " and starts at "
                + plan.start().get(),
            "give a later finish, or only one of the two: work that runs past midnight is planned"
                + " from its start alone");
      }
    }
  }

  /** Where the clocks are put forward, the hour between is on no clock. */
  private void checkExists(BatchPlan plan, String key, LocalTime time, Problems problems) {
    ZoneOffsetTransition change = zone.getRules().getTransition(date.atTime(time));
    if (change != null && change.isGap()) {
      LocalTime before = change.getDateTimeBefore().toLocalTime();
      LocalTime after = change.getDateTimeAfter().toLocalTime();
      problems.add(
          plan.placeOf(key),
          key
              + ": "
              + time
              + " does not exist on "
              + date
              + ": the clocks go forward from "
              + before
              + " to "
              + after
              + " ("
              + zone
              + ")",
          "write " + before.minusMinutes(1) + " or earlier, or " + after + " or later");
    }
  }

  /** Minutes of the day before which a batch may not start. */
  int release(Batch batch) {
    Optional<ZonedDateTime> first = firstStart();
    return batch.plan().start().isPresent() && first.isPresent()
        ? minutes(first.get(), on(batch.plan().start().get()))
        : 0;
  }

  /**
   * The clock at minute 0: as asked for; else a usual start, put off where work of days before
   * would fall into the night.
   *
   * @param ends for each batch, in order, the minute at which its last jar is out
   * @param suits whether nothing before a start falls into the night
   */
  ZonedDateTime start(List<Integer> ends, Predicate<ZonedDateTime> suits) {
    Optional<ZonedDateTime> first = firstStart();
    if (first.isPresent()) {
      return first.get();
    }
    ZonedDateTime latest = null;
    for (int i = 0; i < batches.size(); i++) {
      Optional<LocalTime> finish = batches.get(i).plan().finish();
      if (finish.isPresent()) {
        ZonedDateTime start = on(finish.get()).minusMinutes(ends.get(i));
        latest = latest == null || start.isBefore(latest) ? start : latest;
      }
    }
    return latest == null ? usualStart(suits) : latest;
  }

  private ZonedDateTime usualStart(Predicate<ZonedDateTime> suits) {
    for (LocalTime at = USUAL_START; !at.isAfter(LATEST_USUAL_START); at = at.plus(PUT_OFF)) {
      if (suits.test(on(at))) {
        return on(at);
      }
    }
    return on(USUAL_START);
  }

  /** What the clock has to say to the cook. */
  List<Notice> notices(ZonedDateTime start, List<Integer> ends) {
    List<Notice> notices = new ArrayList<>();
    boolean asked =
        batches.stream()
            .anyMatch(b -> b.plan().start().isPresent() || b.plan().finish().isPresent());
    if (!asked) {
      notices.add(ofDay(Notice.Kind.USUAL_START, start.toLocalTime()));
    }
    if (start.toLocalDate().isBefore(date)) {
      notices.add(ofDay(Notice.Kind.STARTS_DAY_BEFORE, start.toLocalDate()));
    }
    int last = ends.stream().mapToInt(e -> e).max().orElse(0);
    ZonedDateTime end = start.plusMinutes(last);
    if (end.toLocalDate().isAfter(date)) {
      notices.add(ofDay(Notice.Kind.OVER_MIDNIGHT, end.toLocalDate()));
    }
    ZoneOffsetTransition change = zone.getRules().nextTransition(start.toInstant());
    if (change != null && change.getInstant().isBefore(end.toInstant())) {
      notices.add(
          ofDay(
              Notice.Kind.CLOCKS_CHANGE,
              change.getDateTimeBefore().toLocalTime(),
              change.getDateTimeAfter().toLocalTime()));
    }
    for (int i = 0; i < batches.size(); i++) {
      Optional<LocalTime> finish = batches.get(i).plan().finish();
      ZonedDateTime done = start.plusMinutes(ends.get(i));
      if (finish.isPresent() && done.isAfter(on(finish.get()))) {
        notices.add(
            new Notice(
                Notice.Kind.LATE,
                Optional.of(batches.get(i).lot()),
                List.of(finish.get(), done.toLocalTime())));
      }
    }
    return notices;
  }

  private static Notice ofDay(Notice.Kind kind, Object... details) {
    return new Notice(kind, Optional.empty(), List.of(details));
  }

  private Optional<ZonedDateTime> firstStart() {
    return batches.stream()
        .flatMap(b -> b.plan().start().stream())
        .min(LocalTime::compareTo)
        .map(this::on);
  }

  /** A time that a clock change skips counts from where the clock jumps to. */
  private ZonedDateTime on(LocalTime time) {
    return ZonedDateTime.of(date, time, zone);
  }

  private static int minutes(ZonedDateTime from, ZonedDateTime to) {
    return Math.toIntExact(Duration.between(from, to).toMinutes());
  }
}
