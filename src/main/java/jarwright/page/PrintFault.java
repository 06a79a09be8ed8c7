package jarwright.page;

/**
 * A sheet that cannot be printed, in words for the user: unchecked, because it can arise anywhere
 * in a template, and always caught by the program's outermost layer.
 */
public abstract class PrintFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  PrintFault(String message) {
    super(message);
  }
}
