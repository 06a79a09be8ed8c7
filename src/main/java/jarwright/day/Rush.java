package jarwright.day;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * A stretch in which two or more pairs of hands are needed at once.
 *
 * @param pairs the most that are needed in it
 */
public record Rush(int start, int end, int pairs) {

  /** The stretches of a day, in order. */
  static List<Rush> of(List<Task> tasks) {
    TreeMap<Integer, Integer> steps = new TreeMap<>();
    for (Task task : tasks) {
      steps.merge(task.start(), task.hands().size(), Integer::sum);
      steps.merge(task.end(), -task.hands().size(), Integer::sum);
    }
    List<Rush> rushes = new ArrayList<>();
    int busy = 0;
    int since = 0;
    int most = 0;
    for (int at : steps.keySet()) {
      int next = busy + steps.get(at);
      if (busy < 2 && next >= 2) {
        since = at;
        most = 0;
      }
      if (busy >= 2 && next < 2) {
        rushes.add(new Rush(since, at, most));
      }
      most = Math.max(most, next);
      busy = next;
    }
    return List.copyOf(rushes);
  }
}
