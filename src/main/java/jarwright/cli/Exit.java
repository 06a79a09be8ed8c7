package jarwright.cli;

/** How a run ended, as the exit status says it. */
enum Exit {
  DONE(0),
  /** The input was refused: plan, table or ledger. */
  REFUSED(1),
  /** The command line was wrong. */
  USAGE(2),
  /** A file could not be read or written. */
  FILE(3);

  private final int status;

  Exit(int status) {
    this.status = status;
  }

  int status() {
    return status;
  }
}
