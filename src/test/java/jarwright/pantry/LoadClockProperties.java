package jarwright.pantry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Whatever the clock did that night, it never shows more than really passed. */
class LoadClockProperties {
  private static final Instant FROM = Instant.parse("2025-12-31T00:00:00Z");

  @Provide
  Arbitrary<ZoneId> zones() {
    return Arbitraries.of(
            "America/Chicago",
            "Europe/Madrid",
            "America/Mexico_City",
            "Australia/Lord_Howe",
            "America/Santiago",
            "Africa/Casablanca",
            "UTC")
        .map(ZoneId::of);
  }

  /** A moment near a change of the clock, or any where there is none. */
  private static ZonedDateTime near(ZoneId zone, int change, int minutes) {
    Instant at = FROM;
    for (int i = 0; i <= change; i++) {
      ZoneOffsetTransition next = zone.getRules().nextTransition(at);
      at = next == null ? at.plus(Duration.ofDays(100)) : next.getInstant();
    }
    return at.plus(Duration.ofMinutes(minutes)).atZone(zone);
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void noRunIsReadLongerOrLaterThanItWas(
      @ForAll("zones") ZoneId zone,
      @ForAll @IntRange(min = 0, max = 3) int change,
      @ForAll @IntRange(min = -240, max = 240) int minutes,
      @ForAll @IntRange(min = 0, max = 120) int before,
      @ForAll @IntRange(min = 0, max = 240) int length) {
    ZonedDateTime first = near(zone, change, minutes);
    ZonedDateTime again = first.plusMinutes(before);
    ZonedDateTime end = again.plusMinutes(length);
    LoadClock clock =
        LoadClock.read(
            first.toLocalDate(),
            zone.getRules(),
            Optional.of(first.toLocalTime()),
            Optional.of(again.toLocalTime()),
            Optional.of(end.toLocalTime()));
    if (!clock.faults().isEmpty()) {
      // Only where the clock went back between two of them.
      boolean back =
          again.toLocalDateTime().isBefore(first.toLocalDateTime())
              || end.toLocalDateTime().isBefore(again.toLocalDateTime());
      assertTrue(back, first + " " + again + " " + end + " " + clock.faults());
      return;
    }
    Duration read = Duration.between(clock.lastStart().orElseThrow(), clock.end().orElseThrow());
    assertTrue(read.compareTo(Duration.ofMinutes(length)) <= 0, first + " " + read);
    assertTrue(!read.isNegative() && !clock.end().get().isAfter(end.toOffsetDateTime()));
    assertTrue(!clock.lastStart().get().isBefore(clock.start().orElseThrow()));
    assertEquals(end.toLocalTime(), clock.end().get().toLocalTime());
  }
}
