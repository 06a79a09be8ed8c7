package jarwright.cli;

/** The command line is wrong; the message says what would be right. */
final class Usage extends Exception {
  private static final long serialVersionUID = 1L;

  Usage(String message) {
    super(message);
  }
}
