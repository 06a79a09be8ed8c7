package jarwright.problem;

/**
 * One thing wrong with an input.
 *
 * @param what what is wrong, naming what came in; no full stop
 * @param remedy what would be right; may be empty where nothing can be said; no full stop
 */
public record Problem(Place where, String what, String remedy) {
  private static final int LONGEST_LINE = 120;

  /** {@code file:line:column: what. remedy.} and, where known, the line with a caret below. */
  public String text() {
    StringBuilder out = new StringBuilder();
    out.append(where).append(": ").append(sentence(what));
    if (!remedy.isEmpty()) {
      out.append(' ').append(sentence(remedy));
    }
    if (where.column() > 0 && !where.text().isEmpty() && where.text().length() <= LONGEST_LINE) {
      out.append("\n  ").append(where.text().replace('\t', ' '));
      out.append("\n  ").append(" ".repeat(where.column() - 1)).append('^');
    }
    return out.toString();
  }

  private static String sentence(String words) {
    boolean closed = words.endsWith(".") || words.endsWith("?") || words.endsWith("!");
    return closed ? words : words + ".";
  }
}
