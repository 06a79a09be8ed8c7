package jarwright.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What no timetable of a day can undercut. */
final class LowerBound {
  private LowerBound() {}

  /**
   * Work on one resource.
   *
   * @param head minutes before it can start
   * @param minutes that it takes
   * @param amount of the resource that it takes
   * @param tail minutes that must follow it before the day is done
   */
  record Part(int head, int minutes, int amount, int tail) {}

  /**
   * The least finish by one resource: after the earliest head of any group of parts comes at least
   * all their work, shared out evenly, and then the shortest of their tails.
   */
  static int of(List<Part> parts, int capacity) {
    List<Part> latestFirst = new ArrayList<>(parts);
    latestFirst.sort(Comparator.comparingInt(Part::head).reversed());
    int[] tails = parts.stream().mapToInt(Part::tail).distinct().toArray();
    int bound = 0;
    for (int tail : tails) {
      int sum = 0;
      for (Part part : latestFirst) {
        if (part.tail() >= tail) {
          sum += part.minutes() * part.amount();
          int shared = (sum + capacity - 1) / capacity;
          bound = Math.max(bound, part.head() + Math.max(shared, part.minutes()) + tail);
        }
      }
    }
    return bound;
  }
}
