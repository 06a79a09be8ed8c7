package jarwright.day;

import java.util.List;

/**
 * Minutes in which work of one kind goes on, as the timetable sees it.
 *
 * @param hands pairs of hands at it; 0 where time passes by itself
 * @param pots burners that it takes
 */
record Stretch(int minutes, int hands, int pots) {
  Stretch {
    if (minutes < 0 || hands < 0 || pots < 0) {
      throw new IllegalArgumentException("a stretch takes no less than nothing");
    }
  }

  static int minutes(List<Stretch> stretches) {
    return stretches.stream().mapToInt(Stretch::minutes).sum();
  }

  static int mostHands(List<Stretch> stretches) {
    return stretches.stream().mapToInt(Stretch::hands).max().orElse(0);
  }

  static int mostPots(List<Stretch> stretches) {
    return stretches.stream().mapToInt(Stretch::pots).max().orElse(0);
  }
}
