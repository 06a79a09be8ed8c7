package jarwright.pantry;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How long it really took from the end of one load's clock to the start of the next one's, as the
 * household recorded it: to rest, lift out, top up, load and heat again.
 */
public final class RealGaps {
  /** A longer gap was a pause, or another batch between. */
  private static final Duration LONGEST = Duration.ofHours(4);

  private RealGaps() {}

  /**
   * Minutes of every gap between two loads of one lot that follow each other.
   *
   * @param pressure whether of pressure canners; else of boiling water
   */
  public static List<Integer> minutes(Pantry pantry, boolean pressure) {
    List<Integer> gaps = new ArrayList<>();
    for (Lot lot : pantry.lots()) {
      for (LoadRun run : lot.loads()) {
        if (run.required().pressure().isPresent() == pressure) {
          between(run, lot.load(run.load() + 1)).ifPresent(gaps::add);
        }
      }
    }
    return List.copyOf(gaps);
  }

  private static Optional<Integer> between(LoadRun run, Optional<LoadRun> next) {
    Optional<OffsetDateTime> end = run.seen().end();
    Optional<OffsetDateTime> start = next.flatMap(n -> n.seen().start());
    if (end.isEmpty() || start.isEmpty()) {
      return Optional.empty();
    }
    Duration gap = Duration.between(end.get(), start.get());
    boolean plain = !gap.isNegative() && gap.compareTo(LONGEST) <= 0;
    return plain ? Optional.of((int) gap.toMinutes()) : Optional.empty();
  }

  /** The middle one; of two in the middle the longer. Empty where there is none. */
  public static OptionalInt median(List<Integer> minutes) {
    int[] sorted = minutes.stream().mapToInt(Integer::intValue).sorted().toArray();
    return sorted.length == 0 ? OptionalInt.empty() : OptionalInt.of(sorted[sorted.length / 2]);
  }
}
