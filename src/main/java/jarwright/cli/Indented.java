package jarwright.cli;

/** Text broken into lines of a terminal, each indented. */
final class Indented {
  private static final int WIDTH = 96;

  private Indented() {}

  /**
   * The lines, each ended.
   *
   * @param first what stands before the first line
   * @param more what stands before all others
   */
  static String of(String first, String more, String text) {
    StringBuilder out = new StringBuilder();
    StringBuilder line = new StringBuilder(first);
    int words = 0;
    for (String word : text.split(" ")) {
      if (words > 0 && line.length() + 1 + word.length() > WIDTH) {
        out.append(line).append('\n');
        line.setLength(0);
        line.append(more);
        words = 0;
      }
      line.append(words == 0 ? "" : " ").append(word);
      words++;
    }
    return out.append(line).append('\n').toString();
  }
}
