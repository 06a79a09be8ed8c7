package jarwright.pantry;

import jarwright.quantity.GaugePressure;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * How a canner load was processed, as the clock and the gauge were read.
 *
 * @param start when the clock was first started; empty where nobody wrote it down
 * @param lastStart when it was started the last time, where it had to be restarted
 * @param kept whether boil or pressure held from the last start on
 * @param lowest pressure seen on the gauge; empty where not read
 * @param restarts how often boil or pressure was lost and the whole time started again
 * @param cloudy whether the canner's water was cloudy or coloured afterwards
 * @param acid whether the jars got their acid
 * @param acidMissing jars that did not, where the others did
 * @param vented whether the pressure canner was vented for its full time
 * @param gaugeTested whether the dial gauge was tested within a year before the day
 * @param otherwise what else went otherwise than the sheet says
 */
public record Observed(
    Optional<OffsetDateTime> start,
    Optional<OffsetDateTime> lastStart,
    Optional<OffsetDateTime> end,
    Ticked kept,
    Optional<GaugePressure> lowest,
    int restarts,
    Ticked cloudy,
    Ticked acid,
    JarNumbers acidMissing,
    Ticked vented,
    Ticked gaugeTested,
    Departures otherwise) {
  public Observed {
    if (restarts < 0) {
      throw new IllegalArgumentException("restarts are 0 or more, not " + restarts);
    }
    if (!acidMissing.isEmpty() && acid != Ticked.YES) {
      throw new IllegalArgumentException("acid is missing in some jars only where others got it");
    }
    if (!otherwise.signs(true).isEmpty()) {
      throw new IllegalArgumentException("what jars look like is seen once they have cooled");
    }
  }

  /** A load of which nothing else is told. */
  public Observed(
      Optional<OffsetDateTime> start,
      Optional<OffsetDateTime> lastStart,
      Optional<OffsetDateTime> end,
      Ticked kept,
      Optional<GaugePressure> lowest,
      int restarts,
      Ticked cloudy,
      Ticked acid,
      Ticked vented) {
    this(
        start,
        lastStart,
        end,
        kept,
        lowest,
        restarts,
        cloudy,
        acid,
        JarNumbers.NONE,
        vented,
        Ticked.BLANK,
        Departures.NONE);
  }

  /** The same with what is known once the canner is open. */
  Observed with(Ticked nowCloudy, Departures nowOtherwise) {
    return new Observed(
        start,
        lastStart,
        end,
        kept,
        lowest,
        restarts,
        nowCloudy,
        acid,
        acidMissing,
        vented,
        gaugeTested,
        nowOtherwise);
  }

  /** The start of the run that has to be full: the last one; empty where it is not known. */
  public Optional<OffsetDateTime> fullRunFrom() {
    return restarts == 0 ? start : lastStart;
  }

  /** The last unbroken run; empty where its start or end is not known. */
  public Optional<Duration> fullRun() {
    return fullRunFrom().flatMap(from -> end.map(to -> Duration.between(from, to)));
  }

  /**
   * The moment from which hours are counted: the end of the process, or what is known to lie before
   * it.
   */
  public Optional<OffsetDateTime> countedFrom() {
    return end.or(() -> lastStart).or(() -> start);
  }

  /** What speaks against the whole load; what is not recorded counts as not done. */
  public Set<Finding> against(Required required) {
    Set<Finding> found = EnumSet.noneOf(Finding.class);
    Duration needed = Duration.ofMinutes(required.minutes());
    if (fullRun().isEmpty()) {
      found.add(Finding.CLOCK_NOT_RECORDED);
    } else if (fullRun().get().compareTo(needed) < 0) {
      found.add(Finding.MINUTES_SHORT);
    }
    add(found, kept, Finding.HEAT_LOST, Finding.HEAT_NOT_RECORDED);
    if (required.pressure().isPresent()) {
      GaugePressure least = required.pressure().get();
      // After a restart nobody knows in which of the runs the gauge stood lowest.
      if (restarts == 0 && lowest.filter(p -> p.compareTo(least) < 0).isPresent()) {
        found.add(Finding.PRESSURE_LOW);
      }
      add(found, vented, Finding.VENTING_SKIPPED, Finding.VENTING_NOT_RECORDED);
    }
    if (required.asksForGaugeTest(day())) {
      add(found, gaugeTested, Finding.GAUGE_NOT_TESTED, Finding.GAUGE_TEST_NOT_RECORDED);
    }
    if (required.acid() != AcidNeed.NONE) {
      add(found, acid, Finding.ACID_LEFT_OUT, Finding.ACID_NOT_RECORDED);
    }
    otherwise.ofAll().forEach(o -> found.add(o.finding()));
    return found;
  }

  /** What speaks against one jar of the load: all that speaks against the load, and its own. */
  public Set<Finding> against(Required required, int jar) {
    Set<Finding> found = against(required);
    if (required.acid() != AcidNeed.NONE && acidMissing.contains(jar)) {
      found.add(Finding.ACID_LEFT_OUT);
    }
    otherwise.of(jar).forEach(o -> found.add(o.finding()));
    return found;
  }

  /** A gauge whose day is not known counts as tested on none. */
  private LocalDate day() {
    return countedFrom().map(OffsetDateTime::toLocalDate).orElse(LocalDate.MIN);
  }

  private static void add(Set<Finding> found, Ticked done, Finding not, Finding unknown) {
    switch (done) {
      case YES -> {}
      case NO -> found.add(not);
      case BLANK -> found.add(unknown);
    }
  }

  Detail into(Detail detail) {
    return detail
        .with("start", start)
        .with("last-start", lastStart)
        .with("end", end)
        .with("kept", kept.word())
        .with("lowest", lowest)
        .with("restarts", restarts)
        .with("cloudy", cloudy.word())
        .with("acid", acid.word())
        .with("acid-missing", acidMissing)
        .with("vented", vented.word())
        .with("gauge-test", gaugeTested.word())
        .with("otherwise", otherwise);
  }

  static Observed from(Detail detail) {
    return new Observed(
        detail.maybe("start", OffsetDateTime::parse),
        detail.maybe("last-start", OffsetDateTime::parse),
        detail.maybe("end", OffsetDateTime::parse),
        Ticked.parse(detail.text("kept")),
        detail.maybe("lowest", GaugePressure::parse),
        detail.need("restarts", Integer::valueOf),
        Ticked.parse(detail.text("cloudy")),
        Ticked.parse(detail.text("acid")),
        JarNumbers.parse(detail.text("acid-missing")),
        Ticked.parse(detail.text("vented")),
        Ticked.parse(detail.text("gauge-test")),
        Departures.parse(detail.text("otherwise")));
  }
}
