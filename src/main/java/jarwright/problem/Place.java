package jarwright.problem;

/**
 * A place in an input file.
 *
 * @param file name as the user gave it
 * @param line counted from 1; 0 where the problem is with the whole file
 * @param column counted from 1; 0 where the problem is with the whole line
 * @param text the line itself, without its end; empty where it cannot be shown
 */
public record Place(String file, int line, int column, String text) {
  public static Place wholeFile(String file) {
    return new Place(file, 0, 0, "");
  }

  /** {@code plan.yaml:3:8}, as editors understand it. */
  @Override
  public String toString() {
    if (line == 0) {
      return file;
    }
    return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
  }
}
