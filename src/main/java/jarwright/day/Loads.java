package jarwright.day;

import java.util.List;
import java.util.stream.Collectors;

/** Writes jars per load: {@code 7 + 7 + 3}, or {@code 19 × 7 + 3} for many. */
final class Loads {
  private static final int MOST_LISTED = 3;

  private Loads() {}

  static String text(List<Integer> loads) {
    if (loads.size() <= MOST_LISTED) {
      return loads.stream().map(String::valueOf).collect(Collectors.joining(" + "));
    }
    StringBuilder out = new StringBuilder();
    for (int from = 0; from < loads.size(); ) {
      int jars = loads.get(from);
      int to = from;
      while (to < loads.size() && loads.get(to) == jars) {
        to++;
      }
      out.append(from == 0 ? "" : " + ");
      out.append(to - from == 1 ? String.valueOf(jars) : to - from + " × " + jars);
      from = to;
    }
    return out.toString();
  }
}
