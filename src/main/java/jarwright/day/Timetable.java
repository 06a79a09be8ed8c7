package jarwright.day;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * When each load is prepared, filled and loaded, in minutes from the start of the day.
 *
 * @param moments one for each load of the day
 */
record Timetable(DayWork work, List<Moments> moments) {
  /** Done sooner first, then less waiting, then less walking about. */
  static final Comparator<Timetable> BETTER =
      Comparator.comparingInt(Timetable::finish)
          .thenComparingInt(Timetable::waiting)
          .thenComparingInt(Timetable::changes);

  Timetable {
    moments = List.copyOf(moments);
  }

  /** The free moments of one load. */
  record Moments(int prepare, int fill, int load) {
    int of(Use.Moment moment) {
      return switch (moment) {
        case PREPARE -> prepare;
        case FILL -> fill;
        case LOAD -> load;
      };
    }
  }

  /** When the last jar stands on the bench. */
  int finish() {
    int finish = 0;
    for (int i = 0; i < moments.size(); i++) {
      finish = Math.max(finish, moments.get(i).load() + work.loads().get(i).inCanner());
    }
    return finish;
  }

  /** The loads in the order in which they go into their canners. */
  List<Integer> order() {
    return IntStream.range(0, moments.size())
        .boxed()
        .sorted(Comparator.comparingInt((Integer i) -> moments.get(i).load()).thenComparing(i -> i))
        .toList();
  }

  /** Minutes that filled loads wait for their canners, all together. */
  int waiting() {
    int waiting = 0;
    for (int i = 0; i < moments.size(); i++) {
      waiting += wait(i);
    }
    return waiting;
  }

  int wait(int load) {
    Moments at = moments.get(load);
    return at.load() - at.fill() - work.loads().get(load).fill();
  }

  /**
   * How often the one who fills turns from one batch to another: the walking about. Loads filled at
   * the same minute count in the order that turns least.
   */
  int changes() {
    Map<Integer, Set<Integer>> batchesAt = new TreeMap<>();
    for (int i = 0; i < moments.size(); i++) {
      batchesAt
          .computeIfAbsent(moments.get(i).fill(), f -> new TreeSet<>())
          .add(work.loads().get(i).batch());
    }
    Map<Integer, Integer> byLast = new TreeMap<>();
    for (Set<Integer> batches : batchesAt.values()) {
      Map<Integer, Integer> next = new TreeMap<>();
      for (int last : batches) {
        int fewest = byLast.isEmpty() ? batches.size() - 1 : Integer.MAX_VALUE;
        for (Map.Entry<Integer, Integer> before : byLast.entrySet()) {
          int turned = before.getValue() + turns(before.getKey(), batches, last);
          fewest = Math.min(fewest, turned);
        }
        next.put(last, fewest);
      }
      byLast = next;
    }
    return byLast.values().stream().mapToInt(c -> c).min().orElse(0);
  }

  /** The fewest turns from a batch through all the given ones to the last of them. */
  private static int turns(int from, Set<Integer> through, int last) {
    boolean stays = through.contains(from) && (from != last || through.size() == 1);
    return through.size() - (stays ? 1 : 0);
  }
}
