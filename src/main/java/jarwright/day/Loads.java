package jarwright.day;

import java.util.List;
import java.util.stream.Collectors;

final class Loads {
  private Loads() {}

  static String text(List<Integer> loads) {
    return loads.stream().map(String::valueOf).collect(Collectors.joining(" + "));
  }
}
