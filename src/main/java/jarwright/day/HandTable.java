package jarwright.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Gives out numbered places: pairs of hands to tasks, burners to pots. */
final class HandTable {
  private final int[] freeFrom;
  private final TaskKind.Where[] lastAt;
  private final int[] lastLoad;

  HandTable(int places) {
    freeFrom = new int[places];
    lastAt = new TaskKind.Where[places];
    lastLoad = new int[places];
    Arrays.fill(freeFrom, Integer.MIN_VALUE);
  }

  /**
   * Takes so many free places, first those that were last used at the same load and spot. Asked in
   * the order of start, there always are enough where no minute needs more than there are.
   *
   * @return their numbers from 1, rising
   */
  List<Integer> take(int count, int from, int until, TaskKind.Where where, int load) {
    List<Integer> free = new ArrayList<>();
    for (int i = 0; i < freeFrom.length; i++) {
      if (freeFrom[i] <= from) {
        free.add(i);
      }
    }
    free.sort(
        (a, b) -> {
          int nearer = Integer.compare(walk(a, where, load), walk(b, where, load));
          return nearer != 0 ? nearer : Integer.compare(a, b);
        });
    List<Integer> taken = new ArrayList<>(free.subList(0, count));
    taken.sort(null);
    for (int i : taken) {
      freeFrom[i] = until;
      lastAt[i] = where;
      lastLoad[i] = load;
    }
    return taken.stream().map(i -> i + 1).toList();
  }

  private int walk(int place, TaskKind.Where where, int load) {
    return (lastAt[place] == where ? 0 : 2) + (lastLoad[place] == load ? 0 : 1);
  }
}
