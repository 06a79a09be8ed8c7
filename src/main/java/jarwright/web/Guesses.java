package jarwright.web;

import java.net.InetAddress;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Looks at typed codes, and at none for a while after a few wrong ones from one address, or some
 * from all together: to try half of all codes would take a lifetime.
 */
final class Guesses {
  static final int FROM_ONE = 5;
  static final int FROM_ALL = 20;
  static final Duration WHILE = Duration.ofMinutes(10);

  private final HouseholdCode code;
  private final Deque<Guess> wrong = new ArrayDeque<>();

  private record Guess(Instant when, InetAddress from) {}

  /** What came of a try. */
  enum Outcome {
    RIGHT,
    WRONG,
    /** It was not looked at. */
    LATER
  }

  Guesses(HouseholdCode code) {
    this.code = code;
  }

  /** One at a time, so that many at once are no way around the limit. */
  synchronized Outcome look(String typed, InetAddress from, Instant now) {
    while (!wrong.isEmpty() && !wrong.peekFirst().when().plus(WHILE).isAfter(now)) {
      wrong.removeFirst();
    }
    long fromThere = wrong.stream().filter(g -> g.from().equals(from)).count();
    if (wrong.size() >= FROM_ALL || fromThere >= FROM_ONE) {
      return Outcome.LATER;
    }
    if (code.is(typed)) {
      return Outcome.RIGHT;
    }
    wrong.addLast(new Guess(now, from));
    return Outcome.WRONG;
  }
}
