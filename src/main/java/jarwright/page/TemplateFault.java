package jarwright.page;

/** A template that is wrong: which, where and how. */
public final class TemplateFault extends PrintFault {
  private static final long serialVersionUID = 1L;

  private final String template;
  private final int line;
  private final int column;
  private final String what;

  /**
   * A fault at a place.
   *
   * @param template the template's file name
   * @param line from 1; 0 if the fault has no place
   * @param column from 1; 0 if only the line is known
   * @param what one plain sentence, what is wrong and what would be right
   */
  public TemplateFault(String template, int line, int column, String what) {
    super(place(template, line, column) + ": " + what);
    this.template = template;
    this.line = line;
    this.column = column;
    this.what = what;
  }

  private static String place(String template, int line, int column) {
    if (line <= 0) {
      return template;
    }
    return column <= 0 ? template + ":" + line : template + ":" + line + ":" + column;
  }

  /** The template's file name. */
  public String template() {
    return template;
  }

  /** The line, from 1; 0 if the fault has no place. */
  public int line() {
    return line;
  }

  /** The column, from 1; 0 if only the line is known. */
  public int column() {
    return column;
  }

  /** What is wrong, without the place. */
  public String what() {
    return what;
  }
}
