package jarwright.day;

import java.util.List;
import java.util.OptionalInt;

/**
 * Something that is done to a load, at its time. Minutes count from the start of the day.
 *
 * @param load place of the load in the day's list
 * @param start when it starts
 * @param end when it ends: surely where its minutes are fixed and it starts on time, else probably
 * @param minutes how long it takes, and whether that is a rule or a guess
 * @param hands numbers of the pairs of hands at it, from 1; empty where it needs none
 * @param burners numbers of the burners that it takes, from 1; the canner's own where it is in a
 *     canner
 * @param burnerUntil when those burners are free again; later than the end where a pot is kept hot
 * @param step place of the step whose words tell of it among all steps of the product; empty where
 *     none does
 */
public record Task(
    TaskKind kind,
    int load,
    int start,
    int end,
    Minutes minutes,
    List<Integer> hands,
    List<Integer> burners,
    int burnerUntil,
    OptionalInt step) {
  public Task {
    hands = List.copyOf(hands);
    burners = List.copyOf(burners);
    if (end - start != minutes.planned()) {
      throw new IllegalArgumentException("a task ends when its minutes are over");
    }
    if (burnerUntil < end) {
      throw new IllegalArgumentException("a pot stays on its burner until its task is over");
    }
  }

  /** Whether its length is a published one; else it is an estimate. */
  public boolean isExact() {
    return minutes instanceof Minutes.Fixed
        || (minutes instanceof Minutes.Waited waited && waited.published());
  }
}
