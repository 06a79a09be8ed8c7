package jarwright.pantry;

import java.util.Collections;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A year of one food in one size of jar. It accounts for every jar: those from before and those put
 * up are the eaten, the lost, those canned again, in stock, in doubt and to throw away.
 *
 * @param facts of its latest lot, which say what it is
 * @param before jars of earlier years, or of unknown age, that were left when it began
 * @param putUp jars packed in the year that were filled
 * @param eaten jars taken in the year
 * @param lost jars thrown away or not found, by why; the reason is empty where none was said
 * @param recanned jars whose food went into other jars
 * @param stock jars in the house at the end of it that may be eaten
 * @param doubtful jars in the house that are to be looked over, canned again or vouched for first
 * @param toThrowAway jars in the house that are to be thrown away
 * @param keeping those of them whose use-by date comes after the end of the year
 * @param pace empty where too little is recorded to tell
 */
public record FoodYear(
    LotFacts facts,
    int before,
    int putUp,
    int eaten,
    SortedMap<String, Integer> lost,
    int recanned,
    int stock,
    int doubtful,
    int toThrowAway,
    int keeping,
    Optional<Pace> pace) {
  public FoodYear {
    lost = Collections.unmodifiableSortedMap(new TreeMap<>(lost));
  }

  /** Jars lost, whatever the reason. */
  public int lostInAll() {
    return lost.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** Whole weeks that the stock lasts at the pace. */
  public OptionalInt weeks() {
    return pace.isEmpty() ? OptionalInt.empty() : OptionalInt.of(pace.get().weeks(stock));
  }

  /**
   * Jars to put up next year: as many as are eaten in a year, less those in stock that keep beyond
   * the end of this one.
   */
  public OptionalInt toPutUp() {
    return pace.isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of(Math.max(0, pace.get().jarsInYear() - keeping));
  }
}
